import type { Imported } from '../../domain/import/csv.ts';
import {
  chosenMinutes,
  type ChosenWords,
  meaningInWords,
  undecidedInWords,
} from '../../domain/import/words.ts';

interface Props {
  readonly imported: Imported;
  readonly words: ChosenWords;
  readonly onWord: (key: string, minutes: string) => void;
}

/** Words that may mean two things, asked once for the whole file and kept for the next one. */
export function UndecidedWords({ imported, words, onWord }: Props) {
  if (imported.undecided.length === 0) return null;
  return (
    <div className="stack stack-tight">
      <h4>Words to decide</h4>
      {imported.undecided.map((one) => (
        <label key={one.key} className="field">
          <span className="field-label">{undecidedInWords(one)}</span>
          <select
            className="input"
            value={String(chosenMinutes(words, one) ?? '')}
            onChange={(event) => onWord(one.key, event.target.value)}
          >
            <option value="">{meaningInWords(undefined, one)}</option>
            {one.minutes.map((minutes) => (
              <option key={minutes} value={minutes}>
                {meaningInWords(minutes, one)}
              </option>
            ))}
          </select>
        </label>
      ))}
    </div>
  );
}
