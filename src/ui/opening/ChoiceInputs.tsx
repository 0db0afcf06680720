import type { ChoiceGroup } from '../../domain/survey/choiceGroups.ts';

interface Props {
  readonly id: string;
  readonly described: string;
  readonly label: string;
  readonly stored: string;
  readonly onText: (text: string) => void;
}

const yesNo = [
  { value: 'yes', label: 'Yes' },
  { value: 'no', label: 'No' },
  { value: '?', label: 'Not known' },
];

/** Three cells in a line; none is inked in as long as nobody was asked. */
export function YesNo({ id, described, label, stored, onText }: Props) {
  return (
    <fieldset className="field" aria-describedby={described}>
      <legend>{label}</legend>
      <div className="answer">
        {yesNo.map((choice) => (
          <label key={choice.value} className="answer-cell">
            <input
              type="radio"
              className="visually-hidden"
              name={id}
              checked={stored === choice.value}
              onChange={() => onText(choice.value)}
            />
            <span>{choice.label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}

export function ChoiceSelect({
  id,
  described,
  label,
  stored,
  onText,
  groups,
}: Props & { readonly groups: readonly ChoiceGroup[] }) {
  const option = ({ value, label: words }: { value: string; label: string }) => (
    <option key={value} value={value}>
      {words}
    </option>
  );
  return (
    <>
      <label htmlFor={id} className="field-label">
        {label}
      </label>
      <select
        id={id}
        className="input"
        aria-describedby={described}
        value={stored}
        onChange={(event) => onText(event.target.value)}
      >
        <option value="">Not surveyed</option>
        {groups.map((group) =>
          group.name === '' ? (
            group.choices.map(option)
          ) : (
            <optgroup key={group.name} label={group.name}>
              {group.choices.map(option)}
            </optgroup>
          ),
        )}
        <option value="?">Not known</option>
      </select>
    </>
  );
}
