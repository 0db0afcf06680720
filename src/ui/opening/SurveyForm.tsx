import { useMemo, useState } from 'react';
import { reportFor } from '../../app/reports.ts';
import type { Decision } from '../../domain/decide/decision.ts';
import { askedForOrder, asksForOrder, nextQuestion } from '../../domain/survey/nextQuestion.ts';
import { factAt } from '../../domain/model/fact.ts';
import { type FactKey, fieldInfo, openingFactKeys } from '../../domain/model/fields.ts';
import type { FieldGroup } from '../../domain/model/field.ts';
import type { Opening, Project } from '../../domain/model/project.ts';
import { borrowedFor } from '../../domain/survey/answers.ts';
import { surveyGroups } from '../../domain/survey/fieldGroups.ts';
import { isRelevant } from '../../domain/survey/relevance.ts';
import { surveyEnd } from '../../domain/survey/surveyEnd.ts';
import { ConfirmAll } from './ConfirmAll.tsx';
import { FactField } from './FactField.tsx';
import { FindingLinks } from './FindingLinks.tsx';
import { NothingMore } from './NothingMore.tsx';
import { Question } from './Question.tsx';
import { SameAs } from './SameAs.tsx';
import { SameBut } from './SameBut.tsx';
import { TakeOverFacts } from './TakeOverFacts.tsx';
import { useAnswer } from './useAnswer.ts';

interface Props {
  readonly project: Project;
  readonly opening: Opening;
  readonly decision: Decision;
  /** Groups that stand open; kept while going from opening to opening. */
  readonly openGroups: ReadonlySet<FieldGroup>;
  readonly onOpenGroup: (group: FieldGroup, open: boolean) => void;
}

/** The survey of one opening: first the question that settles most, then everything, by part of the door. */
export function SurveyForm({ project, opening, decision, openGroups, onOpenGroup }: Props) {
  const [everything, setEverything] = useState(false);
  const report = reportFor(decision);
  const next = useMemo(() => nextQuestion(project, opening, decision), [project, opening, decision]);
  /** What nobody could tell and is asked once more. */
  const [again, setAgain] = useState<FactKey | null>(null);
  const asked = next ?? again;
  const answer = useAnswer(opening);
  const answerAsked = (key: FactKey) => (fact: Parameters<ReturnType<typeof answer>>[0]) => {
    const says = answer(key)(fact);
    if (says === undefined) setAgain(null);
    return says;
  };
  const findingsAt = (key: FactKey) => report.findings.filter((finding) => finding.field === key);
  const storedFact = (key: FactKey) =>
    factAt(fieldInfo(key).scope === 'building' ? project.building : opening.facts, key);

  return (
    <div className="stack">
      <FindingLinks findings={report.findings} />
      <section className="section next-question" aria-label="Next question">
        {next !== undefined && asksForOrder(decision) && <p className="note">{askedForOrder}</p>}
        {asked ? (
          <Question
            key={asked}
            fact={asked}
            of={opening}
            value={storedFact(asked)}
            onAnswer={answerAsked(asked)}
          />
        ) : (
          <NothingMore end={surveyEnd(project, opening, decision)} onAsk={setAgain} />
        )}
      </section>
      <SameBut project={project} opening={opening} />
      <ConfirmAll opening={opening} />
      <div>
        {surveyGroups.map(({ group, name }) => {
          const shown = openingFactKeys.filter(
            (key) =>
              fieldInfo(key).group === group &&
              (everything ||
                isRelevant(key, decision.slots, project.basis, opening.facts[key] !== undefined) ||
                findingsAt(key).length > 0),
          );
          if (shown.length === 0) return null;
          const known = shown.filter((key) => (opening.facts[key]?.is ?? 'unknown') !== 'unknown');
          const open = openGroups.has(group) || shown.some((key) => findingsAt(key).length > 0);
          return (
            <details
              key={group}
              className="survey-group"
              open={open}
              onToggle={(event) => {
                if (event.currentTarget.open !== open) onOpenGroup(group, event.currentTarget.open);
              }}
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
                    of={opening}
                    value={factAt(opening.facts, key)}
                    borrowed={borrowedFor(key, opening, project, decision)}
                    findings={findingsAt(key)}
                    onAnswer={answer(key)}
                  />
                ))}
              </div>
            </details>
          );
        })}
      </div>
      <label className="choice">
        <input
          type="checkbox"
          checked={everything}
          onChange={(event) => setEverything(event.target.checked)}
        />
        Show every question, including those that do not apply here
      </label>
      <SameAs project={project} opening={opening} goesTo="opening" />
      <TakeOverFacts project={project} opening={opening} />
    </div>
  );
}
