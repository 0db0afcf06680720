import { linkTo } from '../../app/addresses.ts';
import { reportFor } from '../../app/reports.ts';
import { gradeWords } from '../../domain/words/signOff.ts';
import type { RegisterEntry } from '../../exporting/sheets/reviewRegister.ts';
import { StatusMark } from '../face/Mark.tsx';
import { Opened } from './Opened.tsx';
import { ReasonsInFull } from './ReasonsInFull.tsx';
import { ReviewForm } from './ReviewForm.tsx';
import { StateMark } from './StateMark.tsx';

/** One opening on the register: why, on what it rests, and the form to put a name to it. */
export function ReviewEntry({ entry }: { entry: RegisterEntry }) {
  const { opening, decision } = entry;
  return (
    <article className="review-entry stack stack-tight" aria-label={entry.mark}>
      <div className="row row-baseline review-entry-head">
        <h2 className="mark mark-large">
          <a href={linkTo('opening', opening.id)}>{entry.mark}</a>
        </h2>
        <p>{entry.place}</p>
        <div className="row row-end">
          {entry.grade !== 'none' && <StatusMark status="needsSignOff">{gradeWords[entry.grade]}</StatusMark>}
          {entry.onFile.length > 0 && <StateMark state={entry.status.state} />}
        </div>
      </div>
      <p className="lead">{entry.arrangement}</p>
      <div className="review-columns">
        <div className="stack stack-tight">
          <ReasonsInFull reasons={entry.reasons} />
          <dl className="leaders">
            {entry.leanedOn.map(({ label, value }) => (
              <div key={label}>
                <dt>{label}</dt>
                <dd>{value}</dd>
              </div>
            ))}
          </dl>
          <Opened summary="Facts relied on">
            <Facts entry={entry} />
          </Opened>
        </div>
        <Opened summary="Review" atFirst={entry.onFile.length > 0}>
          <ReviewForm opening={opening} decision={decision} />
        </Opened>
      </div>
    </article>
  );
}

function Facts({ entry }: { entry: RegisterEntry }) {
  return (
    <div className="schedule-scroll">
      <table className="schedule schedule-close">
        <tbody>
          {reportFor(entry.decision).facts.map((fact) => (
            <tr key={fact.key}>
              <th scope="row">{fact.label}</th>
              <td>{fact.value}</td>
              <td className={fact.standing === 'known' ? 'soft' : 'value-assumed'}>{fact.standing}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
