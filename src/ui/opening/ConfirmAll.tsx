import type { Opening } from '../../domain/model/project.ts';
import { toConfirm } from '../../domain/survey/answers.ts';
import { confirmAllInWords } from '../../domain/survey/takeOver.ts';
import { useStore } from '../context.ts';

/** What was taken over from another opening becomes known once somebody has looked. */
export function ConfirmAll({ opening }: { opening: Opening }) {
  const store = useStore();
  const assumed = toConfirm(opening);
  if (assumed.length === 0) return null;
  const confirm = () =>
    store.getState().dispatch(
      `${opening.mark}: confirmed at the door`,
      assumed.map(({ key, fact }) => ({ kind: 'setFact', id: opening.id, fact: key, value: fact })),
    );
  return (
    <section className="section stack stack-tight" aria-label="Assumed facts">
      <p>{confirmAllInWords(assumed.length)}</p>
      <button type="button" className="button self-start" onClick={confirm}>
        Confirm all
      </button>
    </section>
  );
}
