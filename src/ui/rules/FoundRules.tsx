import { linkTo } from '../../app/addresses.ts';
import { useState } from 'react';
import { counted } from '../../domain/text/counted.ts';
import { foundInWords, type RuleGroup } from '../../domain/manual/ruleGroups.ts';
import type { FiredAt } from '../../domain/manual/whereFired.ts';

interface Props {
  readonly groups: readonly RuleGroup[];
  readonly shown: number;
  readonly fired: ReadonlyMap<string, readonly FiredAt[]>;
  readonly onOpen: () => void;
}

const atOnce = 12;

/** Rules found, by chapter; a long chapter shows its first and offers the rest. */
export function FoundRules({ groups, shown, fired, onOpen }: Props) {
  return (
    <div className="stack">
      <output className="lead">{foundInWords(shown)}</output>
      {groups.map((group) => (
        <FoundChapter key={group.key} group={group} fired={fired} onOpen={onOpen} />
      ))}
    </div>
  );
}

function FoundChapter({ group, fired, onOpen }: Omit<Props, 'groups' | 'shown'> & { group: RuleGroup }) {
  const [all, setAll] = useState(false);
  const rules = all ? group.rules : group.rules.slice(0, atOnce);
  return (
    <section className="section" aria-label={group.name}>
      <h2>{group.name}</h2>
      <ul className="found-rules">
        {rules.map((rule) => {
          const count = fired.get(rule.id)?.length ?? 0;
          return (
            <li key={rule.id}>
              <a href={linkTo('rules', rule.id)} onClick={onOpen}>
                <span className="mark">{rule.id}</span> <span>{rule.title}</span>
              </a>
              {count > 0 && <span className="note">triggered at {counted(count, 'opening')}</span>}
            </li>
          );
        })}
      </ul>
      {group.rules.length > rules.length && (
        <button type="button" className="button button-small" onClick={() => setAll(true)}>
          Show all {group.rules.length} of {group.name}
        </button>
      )}
    </section>
  );
}
