import type { Opening } from '../../domain/model/project.ts';
import { isLookedAtApart, toConfirm } from '../../domain/survey/answers.ts';
import { confirmWords, linesToConfirm } from '../../domain/survey/takeOver.ts';
import { useStore } from '../context.ts';

/** What was taken over from another door: shown whole, confirmed by one press, and labels by a press of their own. */
export function ConfirmAll({ opening }: { opening: Opening }) {
  const store = useStore();
  const assumed = toConfirm(opening);
  if (assumed.length === 0) return null;
  const [apart, rest] = [true, false].map((one) => assumed.filter(({ key }) => isLookedAtApart(key) === one));
  const confirm = (facts: typeof assumed) => () =>
    store.getState().dispatch(
      `${opening.mark}: confirmed at the door`,
      facts.map(({ key, fact }) => ({ kind: 'setFact', id: opening.id, fact: key, value: fact })),
    );
  return (
    <section className="section stack stack-tight" aria-label="Assumed facts">
      {rest && rest.length > 0 && (
        <>
          <p>{confirmWords.look(rest.length)}</p>
          <Lines facts={rest} />
          <button type="button" className="button button-main self-start" onClick={confirm(rest)}>
            {confirmWords.confirm}
          </button>
        </>
      )}
      {apart && apart.length > 0 && (
        <>
          <p>{confirmWords.apart}</p>
          <Lines facts={apart} />
          <button type="button" className="button button-main self-start" onClick={confirm(apart)}>
            {confirmWords.confirmApart}
          </button>
        </>
      )}
    </section>
  );
}

function Lines({ facts }: { facts: ReturnType<typeof toConfirm> }) {
  return (
    <dl className="confirm-lines">
      {linesToConfirm(facts).map(({ name, says }) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{says}</dd>
        </div>
      ))}
    </dl>
  );
}
