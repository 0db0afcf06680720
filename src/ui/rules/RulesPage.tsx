import { useDeferredValue, useId, useMemo, useState } from 'react';
import { orderedOpenings } from '../../app/order.ts';
import { basisInWords } from '../../domain/codes/basis.ts';
import { groupOf, type RuleGroup, ruleGroups } from '../../domain/manual/ruleGroups.ts';
import { whereFired } from '../../domain/manual/whereFired.ts';
import { isFound, manualEntry, searchText } from '../../domain/manual/ruleManual.ts';
import { useApp } from '../context.ts';
import { useDecisions } from '../useDecisions.ts';
import { FoundRules } from './FoundRules.tsx';
import { RuleChapter } from './RuleChapter.tsx';
import { useNameInAddress } from '../parts/useNameInAddress.ts';
import './rules.css';

/** The manual: every rule in words, with its cases run as you read, and where it spoke in this project. */
export default function RulesPage() {
  const project = useApp((state) => state.document.project);
  const ruleId = useNameInAddress('rules');
  const id = useId();
  const [wanted, setWanted] = useState('');
  const [firedOnly, setFiredOnly] = useState(false);
  // A chapter that was picked holds until the address names another rule.
  const [picked, setPicked] = useState({ key: '', at: '' });
  const search = useDeferredValue(wanted.trim());

  const groups = useMemo(() => ruleGroups(project.amendments), [project.amendments]);
  const { decisions } = useDecisions();
  const fired = useMemo(() => whereFired(orderedOpenings(project), decisions), [project, decisions]);
  const texts = useMemo(
    () =>
      new Map(
        groups.flatMap((group) =>
          group.rules.map((rule) => [rule.id, searchText(manualEntry(rule, project.basis))] as const),
        ),
      ),
    [groups, project.basis],
  );
  const found = useMemo(
    () =>
      groups.flatMap((group): readonly RuleGroup[] => {
        const rules = group.rules.filter(
          (rule) =>
            (search === '' || isFound(texts.get(rule.id) ?? '', search)) &&
            (!firedOnly || fired.has(rule.id)),
        );
        return rules.length === 0 ? [] : [{ ...group, rules }];
      }),
    [groups, texts, search, firedOnly, fired],
  );

  const total = groups.reduce((sum, group) => sum + group.rules.length, 0);
  const shown = found.reduce((sum, group) => sum + group.rules.length, 0);
  const named = groupOf(groups, ruleId);
  const key = picked.key !== '' && picked.at === ruleId ? picked.key : (named?.key ?? groups[0]?.key);
  const chapter = groups.find((group) => group.key === key);
  const isSearching = search !== '' || firedOnly;

  return (
    <div className="sheet">
      <div className="sheet-body stack">
        <h1>Rules</h1>
        <p className="note">
          {total} rules, judged here under {basisInWords(project.basis)}. Sentences are our own words; the
          code’s text governs.
        </p>
        <div className="toolbar">
          <div className="field rules-search">
            <label htmlFor={`${id}search`}>Search</label>
            <input
              id={`${id}search`}
              type="search"
              className="input"
              placeholder="R-31, fail safe, 1010.2.13 …"
              value={wanted}
              onChange={(event) => setWanted(event.target.value)}
            />
          </div>
          <div className="field rules-chapter">
            <label htmlFor={`${id}chapter`}>Chapter</label>
            <select
              id={`${id}chapter`}
              className="input"
              value={key}
              onChange={(event) => {
                setWanted('');
                setFiredOnly(false);
                setPicked({ key: event.target.value, at: ruleId });
              }}
            >
              {groups.map((group) => (
                <option key={group.key} value={group.key}>
                  {group.name} ({group.rules.length})
                </option>
              ))}
            </select>
          </div>
          <label className="choice rules-fired">
            <input
              type="checkbox"
              checked={firedOnly}
              onChange={(event) => setFiredOnly(event.target.checked)}
            />
            <span>Only those triggered in this project</span>
          </label>
        </div>
        {ruleId !== '' && !named && (
          <p role="alert" className="field-error">
            There is no rule {ruleId} in this version of the rule book.
          </p>
        )}
        {isSearching && (
          <FoundRules
            groups={found}
            shown={shown}
            fired={fired}
            onOpen={() => {
              setWanted('');
              setFiredOnly(false);
            }}
          />
        )}
        {!isSearching && chapter && (
          <RuleChapter
            key={chapter.key}
            group={chapter}
            basis={project.basis}
            fired={fired}
            ruleId={named?.key === chapter.key ? ruleId : ''}
          />
        )}
      </div>
    </div>
  );
}
