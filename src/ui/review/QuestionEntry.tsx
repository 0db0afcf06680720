import { linkTo } from '../../app/addresses.ts';
import { useRef, useState } from 'react';
import { gradeWords } from '../../domain/words/signOff.ts';
import type { Project } from '../../domain/model/project.ts';
import { answeredAmendment } from '../../domain/project/amendments.ts';
import { alike, answersComeBack } from '../../domain/review/packet.ts';
import { exceptionsInWords } from '../../domain/review/filter.ts';
import type { AskedAt, Question } from '../../domain/review/questions.ts';
import { markOf } from '../../exporting/sheets/markOnFile.ts';
import { reasonOfRule } from '../../exporting/sheets/reasons.ts';
import { useApplication } from '../context.ts';
import { StatusMark } from '../face/Mark.tsx';
import { Opened } from './Opened.tsx';
import { ReviewMark } from './ReviewMark.tsx';
import { StateMark } from './StateMark.tsx';
import { VerdictForm } from './VerdictForm.tsx';

/** One question with every opening it is asked at: one answer settles those that are ticked. */
export function QuestionEntry({ question, project }: { question: Question; project: Project }) {
  const { drafts } = useApplication();
  const [without, setWithout] = useState<ReadonlySet<string>>(new Set());
  const [told, setTold] = useState('');
  const result = useRef<HTMLParagraphElement>(null);
  const chosen = question.at.filter(({ opening }) => !without.has(opening.id));
  const toggle = (id: string) => {
    const next = new Set(without);
    if (!next.delete(id)) next.add(id);
    setWithout(next);
  };
  return (
    <article className="review-entry stack stack-tight" aria-label={question.title}>
      <div className="row row-baseline review-entry-head">
        <h2>{question.title}</h2>
        <div className="row row-end">
          <StatusMark status="needsSignOff">{gradeWords[question.grade]}</StatusMark>
          <StateMark state={question.state} />
        </div>
      </div>
      {question.ruleIds.map((ruleId) => {
        const rule = reasonOfRule(ruleId, question.grade, '', project.basis);
        return (
          <p key={ruleId} className="note">
            <a className="mark" href={linkTo('rules', ruleId)}>
              {ruleId}
            </a>{' '}
            {rule.cites.join('; ')} — {rule.confidence}
            {rule.note !== '' && `. ${rule.note}`}
          </p>
        );
      })}
      <ul className="review-asked">
        {alike(question.at, ({ sentence }) => sentence).map(({ says, at }) => (
          <li key={says} className="stack stack-tight">
            <p>{says}</p>
            {at.map((one) => (
              <Asked
                key={one.opening.id}
                one={one}
                ticked={!without.has(one.opening.id)}
                onTick={() => toggle(one.opening.id)}
              />
            ))}
          </li>
        ))}
        {question.building.map((says) => (
          <li key={says}>{says}</li>
        ))}
      </ul>
      <p ref={result} tabIndex={-1} role="status" className="note">
        {told}
      </p>
      <Opened summary={exceptionsInWords(question, without)}>
        <VerdictForm
          name={question.title}
          where={{ place: `question/${question.id}`, label: question.title, href: linkTo('review') }}
          targets={chosen}
          questions={question.flags}
          building={question.building}
          onWritten={(says) => {
            setTold(says);
            result.current?.focus();
          }}
        />
        <p className="note">
          {answersComeBack}{' '}
          <a
            href={linkTo('project')}
            onClick={() =>
              drafts.type(
                { place: 'amendment/new', label: 'Local amendment', href: linkTo('project') },
                answeredAmendment(question.title),
              )
            }
          >
            Enter the answer as a local amendment
          </a>
        </p>
      </Opened>
    </article>
  );
}

function Asked({ one, ticked, onTick }: { one: AskedAt; ticked: boolean; onTick: () => void }) {
  const { opening, state, by } = one;
  return (
    <>
      <div className="row row-baseline">
        <label className="choice review-tick">
          <input type="checkbox" aria-label={`Sign ${opening.mark}`} checked={ticked} onChange={onTick} />
          <span className="mark">{opening.mark}</span>
        </label>
        <a href={linkTo('opening', opening.id)}>Open {opening.mark}</a>
        <div className="row-end">
          <StateMark state={state} />
        </div>
      </div>
      {by && <ReviewMark mark={markOf(by)} />}
    </>
  );
}
