import type { SequenceBlock, SequencePages, SequenceWay } from '../../exporting/sheets/sequencePages.ts';
import { Marks } from './Marks.tsx';

/** What each hardware set does, event by event. */
export function SequenceSheets({ pages }: { pages: SequencePages }) {
  return (
    <>
      {pages.sets.map((set) => (
        <OneSet key={set.id} set={set} />
      ))}
      {pages.without.length > 0 && (
        <section className="set-block">
          <h3>Nothing chosen yet</h3>
          <Marks marks={pages.without} />
        </section>
      )}
    </>
  );
}

function OneSet({ set }: { set: SequenceBlock }) {
  return (
    <section className="sequence-block" aria-label={`${set.id} ${set.title}`}>
      {set.ways.map((way, index) => (
        // Head and table stay together: a sequence is read as a whole.
        <div key={way.marks[0]} className="set-block">
          {index === 0 && (
            <h3>
              <span className="mark">{set.id}</span> {set.title}
            </h3>
          )}
          <OneWay way={way} />
        </div>
      ))}
    </section>
  );
}

function OneWay({ way }: { way: SequenceWay }) {
  return (
    <>
      {way.head !== '' && <h4>{way.head}</h4>}
      <p className="set-marks">
        <span className="lettering">{way.count}</span> <Marks marks={way.marks} />
      </p>
      {way.unsettled !== '' && <p className="set-unsettled">{way.unsettled}</p>}
      <table className="schedule sequence-table">
        <thead>
          <tr>
            <th scope="col">Event</th>
            <th scope="col">What happens</th>
          </tr>
        </thead>
        <tbody>
          {way.lines.map((line) => (
            <tr key={line.event + line.says}>
              <th scope="row">{line.event}</th>
              <td>{line.says}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}
