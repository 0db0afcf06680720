import type { PowerPaper } from '../../exporting/sheets/powerPaper.ts';
import type { ClosetPart } from '../../exporting/sheets/powerSheet.ts';
import { Drawn } from './Drawn.tsx';
import { PaperNotes } from './Grouped.tsx';

interface Props {
  readonly sheet: PowerPaper;
  /** The tables went out with an earlier run of the printer. */
  readonly onlyWirings: boolean;
}

/** Findings, then pictures, closets with their supplies and runs, takeoff, and wiring by hardware set. */
export function PowerSheets({ sheet, onlyWirings }: Props) {
  if (sheet.closets.length === 0) return <p className="lead">No opening is fed yet.</p>;
  return (
    <>
      {!onlyWirings && <PowerTables sheet={sheet} />}
      <div className="wirings">
        {sheet.wirings.map((set) => (
          <article key={set.id} aria-label={set.id}>
            <header>
              <h3 className="mark">{set.id}</h3>
              <p>{set.title}</p>
              <p className="test-arrangement">
                {set.marks} · {set.closets}
              </p>
            </header>
            <Drawn drawings={[set.drawing]} />
          </article>
        ))}
      </div>
    </>
  );
}

function PowerTables({ sheet }: { sheet: PowerPaper }) {
  return (
    <>
      <p className="lead">{sheet.says}.</p>
      {sheet.findings.length > 0 && (
        <section aria-label="What was found">
          <h3>What was found</h3>
          <ol>
            {sheet.findings.map(({ word, says, source }) => (
              <li key={says}>
                {word}: {says} <span className="source">{source}.</span>
              </li>
            ))}
          </ol>
        </section>
      )}
      <div className="pictures">
        <Drawn drawings={sheet.pictures} />
      </div>
      {sheet.closets.map((closet) => (
        <Closet key={closet.id ?? ''} closet={closet} />
      ))}
      <Takeoff sheet={sheet} />
      <PaperNotes notes={[...sheet.poe, ...sheet.notes]} />
    </>
  );
}

function Closet({ closet }: { closet: ClosetPart }) {
  return (
    <section aria-label={closet.name} className="power-closet">
      <h3>{closet.name}</h3>
      <p>{closet.says}</p>
      {closet.supplies.length > 0 && (
        <table className="schedule schedule-close power-supplies">
          <thead>
            <tr>
              <th scope="col">Supply</th>
              <th scope="col">Rating</th>
              <th scope="col">Load</th>
              <th scope="col">Room left</th>
              <th scope="col">Outputs</th>
              <th scope="col">Battery</th>
              <th scope="col">Feeds</th>
            </tr>
          </thead>
          <tbody>
            {closet.supplies.map((line) => (
              <tr key={line.id}>
                <th scope="row">{line.name}</th>
                <td>{line.rating}</td>
                <td>{line.load}</td>
                <td>
                  {line.headroom}; start {line.peak}
                </td>
                <td>{line.outputs}</td>
                <td>{line.battery}</td>
                <td>{line.feeds}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {closet.runs.length > 0 && (
        <table className="schedule schedule-close">
          <thead>
            <tr>
              <th scope="col">Mark</th>
              <th scope="col">Supply</th>
              <th scope="col">Loads</th>
              <th scope="col">Run</th>
              <th scope="col">Cable</th>
              <th scope="col">Drop</th>
              <th scope="col">At the lock</th>
              <th scope="col">End of battery</th>
            </tr>
          </thead>
          <tbody>
            {closet.runs.map((run) => (
              <tr key={run.id}>
                <th scope="row">{run.mark}</th>
                <td>{run.supply}</td>
                <td>{run.loads}</td>
                <td>{run.length}</td>
                <td>{run.cable}</td>
                <td>{run.drop}</td>
                <td>{run.atLock}</td>
                <td>{run.onBattery}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}

function Takeoff({ sheet }: { sheet: Pick<PowerPaper, 'takeoff' | 'byCloset'> }) {
  return (
    <section aria-label="Takeoff">
      <h3>Takeoff</h3>
      <table className="schedule schedule-close">
        <thead>
          <tr>
            <th scope="col">Item</th>
            <th scope="col">Takes</th>
            <th scope="col">Order</th>
            <th scope="col">Furnished</th>
            <th scope="col">Installed</th>
            <th scope="col">Wired</th>
            <th scope="col">Section</th>
          </tr>
        </thead>
        <tbody>
          {sheet.takeoff.map((row) => (
            <tr key={row.article}>
              <th scope="row">{row.article}</th>
              <td>{row.quantity}</td>
              <td>{row.order}</td>
              <td>{row.furnished}</td>
              <td>{row.installed}</td>
              <td>{row.wired}</td>
              <td>{row.section}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {sheet.byCloset.map(({ name, says }) => (
        <p key={name}>
          {name}: {says.join('; ')}.
        </p>
      ))}
    </section>
  );
}
