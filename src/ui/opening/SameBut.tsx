import { useMemo, useState } from 'react';
import { factAt } from '../../domain/model/fact.ts';
import type { Opening, Project } from '../../domain/model/project.ts';
import {
  type ButLine,
  butLines,
  type OtherWay,
  sameButWords,
  templateOf,
} from '../../domain/survey/sameBut.ts';
import { useStore } from '../context.ts';
import { FactField } from './FactField.tsx';
import './sameBut.css';
import { useAnswer } from './useAnswer.ts';

interface Props {
  readonly project: Project;
  readonly opening: Opening;
}

/** "Same as 2-03, but …": at most four lines with what most often differs, each answered where it stands. */
export function SameBut({ project, opening }: Props) {
  const like = templateOf(project, opening);
  const lines = useMemo(() => (like ? butLines(project, like, opening) : []), [project, like, opening]);
  if (!like || lines.length === 0) return null;
  return (
    <section className="section stack stack-tight" aria-label={sameButWords.title(like.mark)}>
      <h2>{sameButWords.title(like.mark)}</h2>
      <p className="note">{sameButWords.look}</p>
      <ul className="but-lines">
        {lines.map((line) => (
          <Line key={line.name} line={line} opening={opening} />
        ))}
      </ul>
    </section>
  );
}

function Line({ line, opening }: { line: ButLine; opening: Opening }) {
  const store = useStore();
  const answer = useAnswer(opening);
  const [open, setOpen] = useState(false);
  const take = ({ facts }: OtherWay) =>
    store.getState().dispatch(
      `${opening.mark}: ${line.name}`,
      facts.map(({ key, fact }) => ({ kind: 'setFact', id: opening.id, fact: key, value: fact })),
    );
  return (
    <li className="stack stack-tight">
      <p>
        <span className="lettering">{line.name}</span> {line.says}
        {line.seen && <span className="note"> · {sameButWords.seen}</span>}
      </p>
      <div className="row">
        {!open &&
          line.others.map((other) => (
            <button
              key={other.says}
              type="button"
              className="button but-other"
              aria-label={sameButWords.instead(line.name, other.says)}
              onClick={() => take(other)}
            >
              {other.says}
            </button>
          ))}
        <button type="button" className="button" aria-expanded={open} onClick={() => setOpen(!open)}>
          {open ? sameButWords.done(line.name) : sameButWords.different(line.name)}
        </button>
      </div>
      {open &&
        line.keys.map((key) => (
          <FactField
            key={key}
            fact={key}
            of={opening}
            value={factAt(opening.facts, key)}
            onAnswer={answer(key)}
          />
        ))}
    </li>
  );
}
