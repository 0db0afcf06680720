import { linkTo } from '../../app/addresses.ts';
import { type SubmitEvent, useState } from 'react';
import { randomIds } from '../../app/clock.ts';
import type { Edit } from '../../domain/commands/command.ts';
import type { Opening } from '../../domain/model/project.ts';
import { answersInOrder, type Remark } from '../../domain/model/verdict.ts';
import {
  answerRemark,
  closeRemark,
  newRemark,
  openRemarksInWords,
  remarkProblem,
  remarkState,
  remarksAt,
  remarkWords,
} from '../../domain/project/remarks.ts';
import { useApp, useApplication } from '../context.ts';
import { when } from '../files/when.ts';
import { DraftNote } from '../parts/DraftNote.tsx';
import { useDraft } from '../parts/useDraft.ts';
import { useCommand } from '../project/useCommand.ts';
import { Opened } from '../review/Opened.tsx';

/** Comments and questions at an opening: asked, answered, closed. */
export function Remarks({ opening }: { opening: Opening }) {
  const project = useApp((state) => state.document.project);
  const remarks = remarksAt(project, opening.id);
  const open = openRemarksInWords(remarks);
  return (
    <section aria-label="Comments and questions">
      <Opened
        summary={
          <>
            Comments and questions <span className="note">{open === '' ? 'none open' : open}</span>
          </>
        }
        atFirst={open !== ''}
      >
        <div className="stack">
          {remarks.map((remark) => (
            <OneRemark key={remark.id} opening={opening} remark={remark} />
          ))}
          <NewRemark opening={opening} />
        </div>
      </Opened>
    </section>
  );
}

function useHand() {
  const { clock, preferences } = useApplication();
  return () => ({ id: randomIds(), by: preferences.get('yourName'), at: clock() });
}

const byAt = ({ by, at }: { readonly by: string; readonly at: string }) =>
  `${by === '' ? 'not named' : by}, ${when(at)}`;

function OneRemark({ opening, remark }: { opening: Opening; remark: Remark }) {
  const command = useCommand();
  const hand = useHand();
  const [problem, setProblem] = useState('');
  const word = remarkWords[remark.kind];
  const done = (label: string, edit: Edit) => setProblem(command(`${opening.mark}: ${label}`, [edit]) ?? '');
  return (
    <article className="remark stack stack-tight" aria-label={`${word}: ${remark.text}`}>
      <p>
        <strong>{word}.</strong> {remark.text}
      </p>
      <p className="note">
        {byAt(remark)}; {remarkState(remark)}
      </p>
      {answersInOrder(remark).map((answer) => (
        <div key={answer.id}>
          <p>{answer.text}</p>
          <p className="note">{byAt(answer)}</p>
        </div>
      ))}
      {remark.closed === null ? (
        <>
          <TextForm
            place={`remark/${remark.id}`}
            opening={opening}
            label="Answer"
            button="Keep the answer"
            onKeep={(text) => command(`${opening.mark}: answer`, [answerRemark(remark, text, hand())])}
          />
          <button
            type="button"
            className="button button-quiet button-small self-start"
            onClick={() => done(`${word.toLowerCase()} closed`, closeRemark(remark, hand()))}
          >
            Close this {word.toLowerCase()}
          </button>
        </>
      ) : (
        <button
          type="button"
          className="button button-quiet button-small self-start"
          onClick={() => done(`${word.toLowerCase()} opened again`, closeRemark(remark, null))}
        >
          Open it again
        </button>
      )}
      {problem !== '' && (
        <p role="alert" className="field-error">
          {problem}
        </p>
      )}
    </article>
  );
}

function NewRemark({ opening }: { opening: Opening }) {
  const command = useCommand();
  const hand = useHand();
  const [kind, setKind] = useState<Remark['kind']>('question');
  return (
    <div className="stack stack-tight">
      <fieldset className="field">
        <legend>New</legend>
        <div className="choices">
          {(['question', 'comment'] as const).map((one) => (
            <label key={one} className="choice">
              <input
                type="radio"
                name={`remark-kind-${opening.id}`}
                checked={kind === one}
                onChange={() => setKind(one)}
              />
              {remarkWords[one]}
            </label>
          ))}
        </div>
      </fieldset>
      <TextForm
        place={`remark/new/${opening.id}`}
        opening={opening}
        label={remarkWords[kind]}
        button={`Keep the ${remarkWords[kind].toLowerCase()}`}
        onKeep={(text) =>
          command(`${opening.mark}: ${remarkWords[kind].toLowerCase()}`, [
            newRemark(opening, kind, text, hand()),
          ])
        }
      />
    </div>
  );
}

interface TextProps {
  readonly place: string;
  readonly opening: Opening;
  readonly label: string;
  readonly button: string;
  readonly onKeep: (text: string) => string | undefined;
}

function TextForm({ place, opening, label, button, onKeep }: TextProps) {
  const href = linkTo('opening', opening.id);
  const draft = useDraft<string>({ place, label: `${opening.mark}, ${label.toLowerCase()}`, href }, '');
  const keep = (event: SubmitEvent) => {
    event.preventDefault();
    draft.settle(remarkProblem(draft.value) ?? onKeep(draft.value));
  };
  return (
    <form className="stack stack-tight" onSubmit={keep}>
      <label className="field">
        <span className="field-label">{label}</span>
        <textarea
          className="input"
          rows={2}
          value={draft.value}
          readOnly={draft.isReadOnly}
          onChange={(event) => draft.type(event.target.value)}
        />
      </label>
      <DraftNote draft={draft} />
      <button type="submit" className="button button-small self-start">
        {button}
      </button>
    </form>
  );
}
