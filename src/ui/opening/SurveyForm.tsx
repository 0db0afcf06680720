import { useMemo, useState } from 'react';
import { decisionFor, reportFor } from '../../app/decisions.ts';
import { nextQuestion } from '../../domain/decide/whatMatters.ts';
import type { Fact } from '../../domain/model/fact.ts';
import { type FactKey, fieldInfo, openingFactKeys } from '../../domain/model/fields.ts';
import type { FieldGroup } from '../../domain/model/field.ts';
import type { Opening, Project } from '../../domain/model/project.ts';
import { isRelevant } from '../../domain/survey/relevance.ts';
import { useStore } from '../context.ts';
import { FactField } from './FactField.tsx';

const groups: readonly { group: FieldGroup; name: string }[] = [
  { group: 'door', name: 'Door' },
  { group: 'frame', name: 'Frame' },
  { group: 'latch', name: 'Latch and exit hardware' },
  { group: 'pair', name: 'Pair' },
  { group: 'fire', name: 'Fire and smoke' },
  { group: 'egress', name: 'Egress' },
  { group: 'stair', name: 'Stair and roof' },
  { group: 'use', name: 'Room and use' },
  { group: 'health', name: 'Health care' },
  { group: 'wishes', name: 'What the owner wishes' },
  { group: 'site', name: 'Power, path and surroundings' },
];

/** The survey of one opening: first the question that settles most, then everything, by part of the door. */
export function SurveyForm({ project, opening }: { project: Project; opening: Opening }) {
  const store = useStore();
  const [everything, setEverything] = useState(false);
  const decision = decisionFor(project, opening);
  const report = reportFor(project, opening);
  const next = useMemo(() => nextQuestion(project, opening, decision), [project, opening, decision]);

  const answer = (key: FactKey) => (fact: Fact<string | number | boolean> | null) => {
    const building = fieldInfo(key).scope === 'building';
    const result = store
      .getState()
      .dispatch(`${opening.mark}: ${fieldInfo(key).label}`, [
        building
          ? { kind: 'setBuildingFact', fact: key, value: fact }
          : { kind: 'setFact', id: opening.id, fact: key, value: fact },
      ]);
    return result.ok ? undefined : result.says;
  };
  const findingsAt = (key: FactKey) => report.findings.filter((finding) => finding.field === key);
  const storedFact = (key: FactKey) =>
    (fieldInfo(key).scope === 'building' ? project.building[key] : opening.facts[key]) as
      | Fact<unknown>
      | undefined;

  return (
    <div className="stack">
      <section className="section next-question" aria-label="Next question">
        {next ? (
          <>
            <p className="lettering">
              Asks next{fieldInfo(next).scope === 'building' ? ' — for the whole building' : ''}
            </p>
            <FactField key={next} fact={next} value={storedFact(next)} onAnswer={answer(next)} asQuestion />
          </>
        ) : (
          <p>Nothing more needs to be asked: no further answer can change this decision.</p>
        )}
      </section>
      {groups.map(({ group, name }) => {
        const all = openingFactKeys.filter((key) => fieldInfo(key).group === group);
        const shown = all.filter(
          (key) =>
            everything ||
            isRelevant(key, decision.slots, project.basis, opening.facts[key] !== undefined) ||
            findingsAt(key).length > 0,
        );
        if (shown.length === 0) return null;
        const known = shown.filter(
          (key) => opening.facts[key] !== undefined && opening.facts[key]?.is !== 'unknown',
        );
        return (
          <details
            key={group}
            className="survey-group"
            open={group === 'door' || shown.some((key) => findingsAt(key).length > 0)}
          >
            <summary>
              {name}
              <span className="note row-end">
                {known.length} of {shown.length}
              </span>
            </summary>
            <div className="survey-fields">
              {shown.map((key) => (
                <FactField
                  key={key}
                  fact={key}
                  value={opening.facts[key] as Fact<unknown> | undefined}
                  assumedFrom={opening.facts[key] === undefined ? decision.assumed.get(key) : undefined}
                  findings={findingsAt(key)}
                  onAnswer={answer(key)}
                />
              ))}
            </div>
          </details>
        );
      })}
      <label className="choice">
        <input
          type="checkbox"
          checked={everything}
          onChange={(event) => setEverything(event.target.checked)}
        />
        Show every question, also those that make no sense here
      </label>
    </div>
  );
}
