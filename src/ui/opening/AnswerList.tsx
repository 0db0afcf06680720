import { type ReactNode, useState } from 'react';
import { type ChoiceGroup, findChoices, searchedFrom } from '../../domain/survey/choiceGroups.ts';
import { noSuchChoice } from '../../domain/survey/words.ts';

interface Props {
  readonly groups: readonly ChoiceGroup[];
  readonly stored: string;
  readonly onAnswer: (value: string) => void;
  readonly cannotTell: ReactNode;
}

/** The answers to choose from: in one line when they are two, else one below the other; a long list can be searched. */
export function AnswerList({ groups, stored, onAnswer, cannotTell }: Props) {
  const [typed, setTyped] = useState('');
  const all = groups.flatMap((group) => group.choices);
  const shown = findChoices(groups, typed);
  const only = shown.flatMap((group) => group.choices);
  const button = ({ value, label }: { value: string; label: string }) => (
    <button key={value} type="button" aria-pressed={stored === value} onClick={() => onAnswer(value)}>
      {label}
    </button>
  );
  if (all.length <= 2) {
    return (
      <div className="answer answer-line">
        {all.map(button)}
        {cannotTell}
      </div>
    );
  }
  const long = all.length > searchedFrom;
  return (
    <>
      {long && (
        <div className="answer-find">
          <input
            className="input"
            type="search"
            aria-label="Find in the list"
            placeholder="Find in the list"
            value={typed}
            onChange={(event) => setTyped(event.target.value)}
            onKeyDown={(event) => {
              const first = only[0];
              if (event.key === 'Enter' && only.length === 1 && first) onAnswer(first.value);
            }}
          />
          {cannotTell}
        </div>
      )}
      {long && typed !== '' && (
        <p role="status" className={only.length === 0 ? undefined : 'visually-hidden'}>
          {only.length === 0 ? noSuchChoice(typed) : `${only.length} in the list`}
        </p>
      )}
      <div className="answer-list">
        {shown.map((group) => (
          <div key={group.name} role={group.name ? 'group' : undefined} aria-label={group.name || undefined}>
            {group.name !== '' && <p className="lettering answer-head">{group.name}</p>}
            {group.choices.map(button)}
          </div>
        ))}
        {!long && <div className="answer-last">{cannotTell}</div>}
      </div>
    </>
  );
}
