import { linkTo } from '../../app/addresses.ts';
import { Fragment, useEffect, useRef, useState } from 'react';
import { rememberLast } from '../../app/rememberLast.ts';
import { spaceEgressFor } from '../../app/buildings.ts';
import type { Project } from '../../domain/model/project.ts';
import { type LoadLine, loadsSheet } from '../../exporting/sheets/loadsSheet.ts';
import { StatusMark } from '../face/Mark.tsx';
import { ReasonLines } from '../parts/ReasonLines.tsx';
import { useNameInAddress } from '../parts/useNameInAddress.ts';
import { statusOf } from './FindingList.tsx';

const sheetOf = rememberLast((project: Project) => loadsSheet(project, spaceEgressFor(project)));
const columns = 7;

/** How many people each space holds, how many ways out it needs, and whether its doors carry them. */
export function LoadsAndExits({ project }: { project: Project }) {
  const sheet = sheetOf(project);
  const named = useNameInAddress('building');
  const [everySpace, setEverySpace] = useState(false);
  const isKnown = sheet.floors.some((floor) => floor.lines.some((line) => line.standing !== ''));
  const floors = sheet.floors.flatMap((floor) => {
    const lines = floor.lines.filter(
      (line) => everySpace || line.findings.length > 0 || line.spaceId === named,
    );
    return lines.length === 0 ? [] : [{ ...floor, lines }];
  });
  return (
    <section aria-labelledby="loads-and-exits" className="stack">
      <h2 id="loads-and-exits">Loads and exits</h2>
      {isKnown || named !== '' ? (
        <>
          <label className="choice">
            <input
              type="checkbox"
              checked={everySpace}
              onChange={(event) => setEverySpace(event.target.checked)}
            />
            Also the spaces with no findings
          </label>
          {floors.length === 0 && <p>Nothing was found in {sheet.says}.</p>}
          <table className="schedule schedule-close schedule-folds" hidden={floors.length === 0}>
            <thead>
              <tr>
                <th scope="col">Space</th>
                <th scope="col" className="num">
                  People
                </th>
                <th scope="col" className="num">
                  Exits required
                </th>
                <th scope="col" className="num">
                  Found
                </th>
                <th scope="col" className="num">
                  Doors pass
                </th>
                <th scope="col">Narrowest door</th>
                <th scope="col">What was found</th>
              </tr>
            </thead>
            {floors.map((floor) => (
              <tbody key={floor.name}>
                <tr className="group-row">
                  <th colSpan={columns} scope="rowgroup">
                    {floor.name}
                  </th>
                </tr>
                {floor.lines.map((line) => (
                  // A row of its own when the address names it, so that it opens.
                  <SpaceRows
                    key={line.spaceId === named ? `${line.spaceId} named` : line.spaceId}
                    line={line}
                    isNamed={line.spaceId === named}
                  />
                ))}
              </tbody>
            ))}
          </table>
          {sheet.notes.map((note) => (
            <p key={note} className="note">
              {note}
            </p>
          ))}
        </>
      ) : (
        <p>
          No space has a load yet. Say under <a href={linkTo('project')}>Project</a>, at each space, what its
          floor is used for and how large it is, or give its load. This table then says how many people it
          holds, how many exits they need, whether its doors have the capacity and whether they need panic
          hardware.
        </p>
      )}
    </section>
  );
}

function SpaceRows({ line, isNamed }: { line: LoadLine; isNamed: boolean }) {
  const [isOpen, setOpen] = useState(isNamed);
  const row = useRef<HTMLTableRowElement>(null);
  useEffect(() => {
    if (isNamed) row.current?.scrollIntoView({ block: 'start' });
  }, [isNamed]);
  return (
    <Fragment>
      <tr ref={row} aria-current={isNamed ? 'true' : undefined}>
        <th scope="row" data-head="Space">
          <button
            type="button"
            className="button button-small button-quiet load-space"
            aria-expanded={isOpen}
            onClick={() => setOpen(!isOpen)}
          >
            {line.space}
          </button>
        </th>
        <td data-head="People" className="num">
          {line.standing === '' ? (
            <span className="value-unknown">{line.people}</span>
          ) : (
            <span className={line.standing === 'given' ? undefined : 'value-assumed'}>
              {line.people} <span className="soft">{line.standing}</span>
            </span>
          )}
        </td>
        <td data-head="Exits required" className="num">
          {line.needed}
        </td>
        <td data-head="Found" className="num">
          {line.found}
        </td>
        <td data-head="Doors pass" className="num">
          {line.passes}
        </td>
        <td data-head="Narrowest door">{line.narrowest}</td>
        <td className="load-findings">
          {line.findings.length === 0 && <span className="soft">{line.otherwise}</span>}
          {line.findings.map((finding) => (
            <p key={finding.says}>
              <StatusMark status={statusOf[finding.severity]}>{finding.word}</StatusMark> {finding.says}
            </p>
          ))}
        </td>
      </tr>
      {isOpen && (
        <tr>
          <td colSpan={columns} className="load-reasons">
            <Reasons line={line} />
          </td>
        </tr>
      )}
    </Fragment>
  );
}

function Reasons({ line }: { line: LoadLine }) {
  return (
    <div className="load-columns">
      {line.reasons.map((group) => (
        <div key={group.head}>
          <h3>{group.head}</h3>
          <ReasonLines reasons={group.reasons} />
        </div>
      ))}
      <div>
        <h3>Doors</h3>
        {line.doors.length === 0 && <p>No opening leads out of it.</p>}
        {line.doors.map((door) => (
          <div key={door.id} className="stack stack-tight">
            <p>
              <a className="mark" href={linkTo('opening', door.id)}>
                {door.mark}
              </a>{' '}
              {door.says}
            </p>
            <ReasonLines reasons={door.reasons} />
          </div>
        ))}
      </div>
    </div>
  );
}
