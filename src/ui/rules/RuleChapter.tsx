import { useEffect } from 'react';
import type { CodeBasis } from '../../domain/codes/basis.ts';
import type { RuleGroup } from '../../domain/manual/ruleGroups.ts';
import type { FiredAt } from '../../domain/manual/whereFired.ts';
import { RuleArticle } from './RuleArticle.tsx';

interface Props {
  readonly group: RuleGroup;
  readonly basis: CodeBasis;
  readonly fired: ReadonlyMap<string, readonly FiredAt[]>;
  /** The rule the address names, when it stands in this chapter. */
  readonly ruleId: string;
}

export function RuleChapter({ group, basis, fired, ruleId }: Props) {
  useEffect(() => {
    if (ruleId === '') return;
    const heading = document.getElementById(`rule-${ruleId}`);
    heading?.scrollIntoView({ block: 'start' });
    heading?.focus({ preventScroll: true });
  }, [ruleId]);
  return (
    <section className="stack stack-wide" aria-label={group.name}>
      <h2 className="chapter-name">{group.name}</h2>
      {group.rules.map((rule) => (
        <RuleArticle
          key={rule.id}
          rule={rule}
          basis={basis}
          fired={fired.get(rule.id) ?? []}
          isNamed={rule.id === ruleId}
        />
      ))}
    </section>
  );
}
