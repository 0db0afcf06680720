import type { FieldDraft } from '../parts/useDraft.ts';

/** The letter of the packet, to be edited before it is printed. */
export function LetterForm({ letter }: { letter: FieldDraft<string> }) {
  return (
    <section className="stack" aria-label="Letter to the authority">
      <h2>Letter to the authority</h2>
      <label className="field">
        <span className="field-label">Text of the letter</span>
        <textarea
          className="input"
          rows={14}
          value={letter.value}
          readOnly={letter.isReadOnly}
          onChange={(event) => letter.type(event.target.value)}
        />
        <span className="field-help">
          It prints first in the packet. What you change stays in this browser, with this project.
        </span>
      </label>
      {letter.isChanged && (
        <button type="button" className="button button-small self-start" onClick={letter.done}>
          Back to the text offered
        </button>
      )}
    </section>
  );
}
