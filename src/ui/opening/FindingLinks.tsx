import { linkTo } from '../../app/addresses.ts';
import type { FindingWords } from '../../domain/words/report.ts';
import { type FactKey, fieldInfo } from '../../domain/model/fields.ts';
import { StatusMark } from '../face/Mark.tsx';

/** At the head of the survey: what contradicts itself, each with the way to its field. */
export function FindingLinks({ findings }: { findings: readonly FindingWords[] }) {
  if (findings.length === 0) return null;
  return (
    <section className="section" aria-label="Contradictions">
      <ul className="reasons">
        {findings.map((finding) => (
          <li key={finding.ruleId + finding.sentence} className="stack stack-tight">
            <StatusMark status={finding.refuses ? 'error' : 'caution'}>{finding.fieldLabel}</StatusMark>
            <p>{finding.sentence}</p>
            <FieldLink fact={finding.field} />
          </li>
        ))}
      </ul>
    </section>
  );
}

/** Opens the group in which a field stands and puts the cursor into it. */
function FieldLink({ fact }: { fact: FactKey }) {
  const { label, scope } = fieldInfo(fact);
  if (scope === 'building') {
    return (
      <a className="button button-small self-start" href={linkTo('project')}>
        {label}, under Project
      </a>
    );
  }
  return (
    <button type="button" className="button button-small self-start" onClick={() => focusField(fact)}>
      To “{label}”
    </button>
  );
}

export function focusField(fact: string): boolean {
  const field = document.querySelector<HTMLElement>(`.fact-field[data-fact="${CSS.escape(fact)}"]`);
  if (!field) return false;
  const group = field.closest('details');
  if (group) group.open = true;
  const input =
    field.querySelector<HTMLElement>(':checked:not(option)') ??
    field.querySelector<HTMLElement>('input, select');
  field.scrollIntoView({ block: 'center' });
  input?.focus({ preventScroll: true });
  return true;
}
