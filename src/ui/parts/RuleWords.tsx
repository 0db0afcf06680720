import { linkTo } from '../../app/addresses.ts';
import type { StepWords } from '../../domain/words/steps.ts';

/** One reason: the sentence, then the rule, its section with its edition, and how it was read. */
export function RuleWords({ words }: { words: StepWords }) {
  return (
    <div className="reason">
      <p>{words.sentence}</p>
      <p className="note">
        <RuleLink id={words.ruleId} /> {words.cites.join('; ')} — {words.confidence}
        {words.note ? `. ${words.note}` : ''}
      </p>
    </div>
  );
}

export function ReasonList({ steps }: { steps: readonly StepWords[] }) {
  return (
    <ul className="reasons">
      {steps.map((words) => (
        <li key={`${words.ruleId} ${words.sentence}`}>
          <RuleWords words={words} />
        </li>
      ))}
    </ul>
  );
}

/** The rule's number, leading to its article; nothing where no rule stands behind a sentence. */
export function RuleLink({ id }: { id: string | undefined }) {
  if (id === undefined) return null;
  return (
    <a className="mark rule-link" href={linkTo('rules', id)}>
      {id}
    </a>
  );
}
