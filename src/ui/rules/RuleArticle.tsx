import { linkTo } from '../../app/addresses.ts';
import { memo, useState } from 'react';
import type { CodeBasis } from '../../domain/codes/basis.ts';
import { counted } from '../../domain/text/counted.ts';
import type { FiredAt } from '../../domain/manual/whereFired.ts';
import { type ManualClause, manualEntry } from '../../domain/manual/ruleManual.ts';
import { ruleById } from '../../domain/rules/all.ts';
import type { Rule } from '../../domain/rules/rule.ts';
import { ConditionList } from './ConditionList.tsx';
import { RuleCases } from './RuleCases.tsx';

interface Props {
  readonly rule: Rule;
  readonly basis: CodeBasis;
  readonly fired: readonly FiredAt[];
  readonly isNamed: boolean;
}

export const RuleArticle = memo(function RuleArticle({ rule, basis, fired, isNamed }: Props) {
  const entry = manualEntry(rule, basis);
  return (
    <article className="section stack rule" data-named={isNamed || undefined}>
      <h3 id={`rule-${entry.id}`} tabIndex={-1} className="rule-name">
        <a className="mark" href={linkTo('rules', entry.id)}>
          {entry.id}
        </a>{' '}
        {entry.title}
      </h3>
      <p>{entry.why}</p>
      <dl className="rule-source">
        <dt>Source</dt>
        {entry.cites.map((cite) => (
          <dd key={cite}>{cite}</dd>
        ))}
        <dt>Confidence</dt>
        <dd>
          {entry.notRead && <span className="tag">Not read in the code’s own text</span>} {entry.confidence}.{' '}
          {entry.note}
        </dd>
      </dl>
      {entry.clauses.map((clause) => (
        <Clause key={`${clause.key} ${clause.says}`} clause={clause} />
      ))}
      <FiredHere fired={fired} />
      {ruleById.has(rule.id) && <RuleCases rule={rule} />}
    </article>
  );
});

function Clause({ clause }: { clause: ManualClause }) {
  return (
    <div className="clause">
      <p>
        <span className="tag">
          {clause.key !== '' && `${clause.key} · `}
          {clause.effect}
        </span>{' '}
        {clause.says}
      </p>
      {clause.names.length > 0 && (
        <ul className="clause-names">
          {clause.names.map((name) => (
            <li key={name}>{name}</li>
          ))}
        </ul>
      )}
      <dl className="clause-when">
        <dt>When</dt>
        <dd>
          <ConditionList said={clause.when} />
        </dd>
        <dt>Of</dt>
        <dd>{clause.of}</dd>
      </dl>
    </div>
  );
}

const firstOnes = 12;

function FiredHere({ fired }: { fired: readonly FiredAt[] }) {
  const [all, setAll] = useState(false);
  if (fired.length === 0) return <p className="note">Not triggered at any opening of this project.</p>;
  const shown = all ? fired : fired.slice(0, firstOnes);
  return (
    <div className="stack stack-tight">
      <h4>Triggered at {counted(fired.length, 'opening')} of this project</h4>
      <ul className="fired">
        {shown.map((one) => (
          <li key={one.openingId}>
            <a className="mark" href={linkTo('opening', one.openingId)}>
              {one.mark}
            </a>{' '}
            <span className="note">{one.how.join(', ')}</span>
          </li>
        ))}
      </ul>
      {fired.length > shown.length && (
        <div className="row">
          <button type="button" className="button button-small" onClick={() => setAll(true)}>
            Show all {fired.length}
          </button>
          <span className="print-only">and {fired.length - shown.length} more</span>
        </div>
      )}
    </div>
  );
}
