import type { SetBlock, SetSheet } from '../../exporting/sheets/setSheet.ts';
import { Group, PaperNotes } from './Grouped.tsx';
import { Marks } from './Marks.tsx';

export function HardwareSets({ sheet }: { sheet: SetSheet }) {
  return (
    <>
      <PaperNotes notes={sheet.notes} />
      {sheet.sets.map((set) => (
        <OneSet key={set.id} set={set} />
      ))}
      {sheet.shared.length > 0 && <Shared lines={sheet.shared} />}
      {sheet.without.length > 0 && <Without openings={sheet.without} />}
    </>
  );
}

function OneSet({ set }: { set: SetBlock }) {
  return (
    <section className="set-block" aria-label={`${set.id} ${set.title}`}>
      <h3>
        <span className="mark">{set.id}</span> {set.title}
      </h3>
      {set.numberSays !== '' && <p className="set-number-new">{set.numberSays}</p>}
      <p className="set-says">{set.says}</p>
      <p className="set-marks">
        <span className="lettering">{set.count}</span> <Marks marks={set.marks} />
      </p>
      {set.notYet !== '' && <p className="set-unsettled">{set.notYet}</p>}
      <table className="schedule set-table">
        <thead>
          <tr>
            <th scope="col" className="num">
              New
            </th>
            <th scope="col" className="num">
              Kept
            </th>
            <th scope="col">Item</th>
            <th scope="col">Finish, key set</th>
            <th scope="col">By</th>
            <th scope="col">Section</th>
            <th scope="col">Asked for by</th>
          </tr>
        </thead>
        {set.blocks.map((block) => (
          <Group key={block.head} name={block.head} says="" span={7}>
            {block.lines.map((line) => (
              <tr key={line.key}>
                <td className="num">{line.newSays}</td>
                <td className="num">{line.keptSays}</td>
                <th scope="row">
                  {line.name}
                  {line.standard !== '' && <span className="source"> {line.standard}</span>}
                  {line.says !== '' && <span className="set-detail">{line.says}</span>}
                </th>
                <td>
                  {line.finish}
                  {line.keySet !== '' && <span className="set-detail">{line.keySet}</span>}
                </td>
                <td>{line.who}</td>
                <td>{line.section}</td>
                <td>{line.rules}</td>
              </tr>
            ))}
          </Group>
        ))}
      </table>
    </section>
  );
}

function Shared({ lines }: { lines: SetSheet['shared'] }) {
  return (
    <section className="set-part" aria-label="Shared equipment">
      <h3>Shared equipment, each listed once</h3>
      <table className="schedule set-table">
        <thead>
          <tr>
            <th scope="col">Item</th>
            <th scope="col">Standard</th>
            <th scope="col">By</th>
            <th scope="col" className="num">
              Openings
            </th>
            <th scope="col">Serves</th>
          </tr>
        </thead>
        <tbody>
          {lines.map((line) => (
            <tr key={line.item + line.detail}>
              <th scope="row">
                {line.name}
                {line.detail !== '' && <span className="set-detail">{line.detail}</span>}
              </th>
              <td>{line.standard}</td>
              <td>{line.trade}</td>
              <td className="num">{line.marks.length}</td>
              <td>
                <Marks marks={line.marks} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function Without({ openings }: { openings: SetSheet['without'] }) {
  return (
    <section className="set-part" aria-label="Without a set">
      <h3>No set: do not price yet</h3>
      <table className="schedule set-table">
        <thead>
          <tr>
            <th scope="col">Mark</th>
            <th scope="col">State</th>
            <th scope="col">Because</th>
          </tr>
        </thead>
        <tbody>
          {openings.map((opening) => (
            <tr key={opening.mark}>
              <th scope="row" className="mark">
                {opening.mark}
              </th>
              <td>{opening.state}</td>
              <td>{opening.because}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
