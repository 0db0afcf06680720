import { useId, useState } from 'react';
import { decisionsInBuilding, decisionsOfEdition } from '../../app/buildings.ts';
import { dayOf } from '../../app/today.ts';
import { addendumOf } from '../../domain/bid/addendum.ts';
import { issuedInWords } from '../../domain/bid/openQuestions.ts';
import type { Project } from '../../domain/model/project.ts';
import { fixNumbers } from '../../domain/sets/setNumbers.ts';
import { hardwareSets } from '../../domain/sets/sets.ts';
import { type AddendumSheet, addendumSheet } from '../../exporting/sheets/addendumSheet.ts';
import { editionInWords, type Issued } from '../../exporting/sheets/stamp.ts';
import { useApp, useApplication } from '../context.ts';
import { useTold } from '../files/useTold.ts';
import { useCommand } from '../project/useCommand.ts';

/** An edition as it went out, to be printed again. */
export interface Frozen {
  readonly edition: Issued;
  readonly project: Project;
}

interface Props {
  readonly project: Project;
  /** Why this is not final; empty once nothing stands in the way. */
  readonly standing: string;
  /** Null: the preview shows how the project stands today. */
  readonly frozen: Frozen | null;
  readonly onFrozen: (frozen: Frozen | null) => void;
  readonly onAddendum: (sheet: AddendumSheet | null) => void;
}
const today = 'today';

/** What was issued, by number: each a frozen copy, and any two or one and today compared. */
export function Editions({ project, standing, frozen, onFrozen, onAddendum }: Props) {
  const app = useApplication();
  const command = useCommand();
  const ids = useId();
  const saving = useApp((state) => state.saving.kind);
  const [changes, setChanges] = useState(0);
  const [number, setNumber] = useState('');
  const [purpose, setPurpose] = useState('');
  const [said, setSaid] = useState('');
  const [from, setFrom] = useState('');
  const [to, setTo] = useState(today);
  const told = useTold(() => app.listBackups(project.id), `${saving} ${changes}`);
  const issued = told?.ok
    ? told.backups.flatMap(({ id, edition }) => (edition ? [{ id, edition }] : []))
    : [];
  const issue = async () => {
    if (number.trim() === '') return setSaid('An edition needs a number.');
    const edition = {
      number: number.trim(),
      on: dayOf(app.clock()),
      purpose: purpose.trim(),
      by: app.preferences.get('yourName'),
    };
    // Bidders get to hold paper with these numbers, so no later edition may give them to another set.
    const fixing = fixNumbers(project, hardwareSets(project, decisionsInBuilding(project)));
    const refused = fixing.length === 0 ? undefined : command('Set numbers fixed', fixing);
    if (refused !== undefined) return setSaid(refused);
    const done = await app.issueEdition(edition);
    setSaid(done.ok ? issuedInWords(edition.number, standing) : done.says);
    setChanges(changes + 1);
  };
  const standOf = async (which: string) => {
    if (which === today) return { name: 'today', project, decisions: decisionsInBuilding(project) };
    const opened = await app.openEdition(Number(which));
    if (!opened.ok) return opened.says;
    return {
      name: `edition ${opened.edition.number}`,
      project: opened.project,
      decisions: decisionsOfEdition(opened.project),
    };
  };
  const show = async (id: number) => {
    const opened = await app.openEdition(id);
    if (!opened.ok) return setSaid(opened.says);
    setSaid(`The preview shows edition ${opened.edition.number} as it was issued.`);
    onFrozen({ edition: opened.edition, project: opened.project });
  };
  const showToday = () => {
    setSaid('The preview shows the project as it stands today.');
    onFrozen(null);
  };
  const compare = async () => {
    const [one, other] = await Promise.all([standOf(from || String(issued[0]?.id)), standOf(to)]);
    if (typeof one === 'string') return setSaid(one);
    if (typeof other === 'string') return setSaid(other);
    const sheet = addendumSheet(addendumOf(one, other), one.name, other.name);
    setSaid(sheet.says);
    onAddendum(sheet);
  };
  return (
    <section className="stack" aria-label="Editions">
      <h2>Editions</h2>
      <div className="row">
        <label htmlFor={`${ids}n`}>Number</label>
        <input
          id={`${ids}n`}
          className="input"
          value={number}
          onChange={(event) => setNumber(event.target.value)}
        />
        <label htmlFor={`${ids}p`}>Issued for</label>
        <input
          id={`${ids}p`}
          className="input"
          value={purpose}
          onChange={(event) => setPurpose(event.target.value)}
        />
        <button type="button" className="button" disabled={frozen !== null} onClick={() => void issue()}>
          Issue this edition
        </button>
      </div>
      <output>{said}</output>
      {issued.length > 0 && (
        <>
          <ul>
            {issued.map(({ id, edition }) => (
              <li key={id} className="row">
                <span>
                  Edition {editionInWords({ issued: edition })}
                  {edition.by !== '' && `, by ${edition.by}`}
                </span>
                {frozen?.edition.number === edition.number ? (
                  <button type="button" className="button button-small" onClick={showToday}>
                    Show today again
                  </button>
                ) : (
                  <button type="button" className="button button-small" onClick={() => void show(id)}>
                    Print as issued<span className="visually-hidden">: edition {edition.number}</span>
                  </button>
                )}
              </li>
            ))}
          </ul>
          <div className="row">
            <label htmlFor={`${ids}f`}>Compare</label>
            <select
              id={`${ids}f`}
              className="input"
              value={from}
              onChange={(event) => setFrom(event.target.value)}
            >
              {issued.map(({ id, edition }) => (
                <option key={id} value={id}>
                  Edition {edition.number}
                </option>
              ))}
            </select>
            <label htmlFor={`${ids}t`}>with</label>
            <select
              id={`${ids}t`}
              className="input"
              value={to}
              onChange={(event) => setTo(event.target.value)}
            >
              <option value={today}>Today</option>
              {issued.map(({ id, edition }) => (
                <option key={id} value={id}>
                  Edition {edition.number}
                </option>
              ))}
            </select>
            <button type="button" className="button" onClick={() => void compare()}>
              Put the addendum among the sheets
            </button>
          </div>
        </>
      )}
    </section>
  );
}
