import { type ConditionWords, conditionLine } from '../../domain/manual/conditionInWords.ts';

/** All, any and not as lists within lists: a nesting that a sentence would hide. */
export function ConditionList({ said }: { said: ConditionWords }) {
  if (said.kind === 'says') return <span>{said.says}</span>;
  return (
    <>
      <span className="condition-head">{said.head}</span>
      <ul className="condition">
        {said.of.map((part) => (
          <li key={conditionLine(part)}>
            <ConditionList said={part} />
          </li>
        ))}
      </ul>
    </>
  );
}
