import { useId } from 'react';
import { needsReason, type VerdictDraft, type VerdictProblems } from '../../domain/review/draft.ts';
import { rolesAreNoSecurity, verdictWords } from '../../domain/review/words.ts';
import { verdictKinds, type VerdictKind } from '../../domain/model/verdict.ts';

interface Props {
  readonly draft: VerdictDraft;
  readonly problems: VerdictProblems;
  readonly onChange: (part: Partial<VerdictDraft>) => void;
  readonly readOnly: boolean;
  /** A withdrawal has no verdict to choose. */
  readonly withdrawing?: boolean;
}

const choices = verdictKinds.filter(
  (kind): kind is Exclude<VerdictKind, 'withdrawn'> => kind !== 'withdrawn',
);

const texts = [
  ['by', 'By (name)', 'name'],
  ['role', 'Role', 'organization-title'],
  ['firm', 'Firm (optional)', 'organization'],
  ['license', 'License (optional)', 'off'],
] as const;

/** The fields of a verdict, each with what is wrong with it beside it. */
export function VerdictFields({ draft, problems, onChange, readOnly, withdrawing = false }: Props) {
  const id = useId();
  const named = (part: keyof VerdictDraft) => ({
    'data-part': part,
    'aria-invalid': problems[part] !== undefined,
    'aria-describedby': problems[part] === undefined ? undefined : `${id}-${part}`,
  });
  const problem = (part: keyof VerdictDraft) =>
    problems[part] === undefined ? null : (
      <span id={`${id}-${part}`} className="field-error">
        {problems[part]}
      </span>
    );
  const text = (part: keyof VerdictDraft, label: string, autoComplete: string) => (
    <label key={part} className="field">
      <span className="field-label">{label}</span>
      <input
        className="input"
        {...named(part)}
        autoComplete={autoComplete}
        readOnly={readOnly}
        value={draft[part]}
        onChange={(event) => onChange({ [part]: event.target.value })}
      />
      {problem(part)}
    </label>
  );
  const area = (part: keyof VerdictDraft, label: string) => (
    <label className="field">
      <span className="field-label">{label}</span>
      <textarea
        className="input"
        rows={2}
        {...named(part)}
        readOnly={readOnly}
        value={draft[part]}
        onChange={(event) => onChange({ [part]: event.target.value })}
      />
      {problem(part)}
    </label>
  );
  return (
    <>
      {!withdrawing && (
        <fieldset className="field">
          <legend>Verdict</legend>
          <div className="choices">
            {choices.map((verdict) => (
              <label key={verdict} className="choice">
                <input
                  type="radio"
                  name={`${id}-verdict`}
                  {...named('verdict')}
                  checked={draft.verdict === verdict}
                  onChange={() => onChange({ verdict })}
                />
                {verdictWords[verdict]}
              </label>
            ))}
          </div>
          {problem('verdict')}
        </fieldset>
      )}
      {draft.verdict === 'approvedWithConditions' && area('conditions', 'Conditions, one to a line')}
      {area('reason', withdrawing || needsReason(draft.verdict) ? 'Reason' : 'Reason (optional)')}
      {!withdrawing && text('reference', 'Document behind it (letter, permit, submittal)', 'off')}
      <div className="review-who">{texts.map(([part, label, fill]) => text(part, label, fill))}</div>
      <p className="field-help">{rolesAreNoSecurity}</p>
      <label className="field">
        <span className="field-label">On</span>
        <input
          className="input"
          type="date"
          {...named('on')}
          readOnly={readOnly}
          value={draft.on}
          onChange={(event) => onChange({ on: event.target.value })}
        />
        {problem('on')}
      </label>
    </>
  );
}
