import { useId, useState } from 'react';
import { decisionsInBuilding } from '../../app/buildings.ts';
import {
  allowances,
  type Change,
  changesAsEdits,
  type FewerSets as Found,
} from '../../domain/bid/fewerSets.ts';
import {
  allWays,
  fewerSets,
  followMajority,
  mergeInWords,
  mergesOnRecord,
} from '../../domain/bid/fewerSets.ts';
import type { Project } from '../../domain/model/project.ts';
import { useApplication } from '../context.ts';
import { useCommand } from '../project/useCommand.ts';

interface Offer {
  readonly head: string;
  readonly changes: readonly Change[];
}

/** Fewer sets for a loss the user allows. It is worked out when asked for, and nothing changes before it is taken. */
export function FewerSets({ project }: { project: Project }) {
  const ids = useId();
  const app = useApplication();
  const command = useCommand();
  const [allowed, setAllowed] = useState<number>(allowances[1].tenths);
  const [offer, setOffer] = useState<Offer | null>(null);
  const [said, setSaid] = useState('');
  const ways = () => allWays(project, decisionsInBuilding(project), allowed);
  const show = (found: Found) => setOffer({ head: found.says, changes: found.changes });
  const take = () => {
    if (!offer) return;
    const edits = changesAsEdits(offer.changes, app.preferences.get('yourName'), app.clock());
    setSaid(
      command('Fewer hardware sets', edits) ??
        'Taken. Each change is a choice by hand and waits for a reviewer.',
    );
    setOffer(null);
  };
  return (
    <section className="stack" aria-label="Fewer sets">
      <h2>Fewer sets</h2>
      <p className="note">
        Nothing a rule forbids or may forbid is offered, and no release that was asked for is given up.
      </p>
      <div className="row">
        <label htmlFor={ids}>At most</label>
        <select
          id={ids}
          className="input"
          value={allowed}
          onChange={(event) => setAllowed(Number(event.target.value))}
        >
          {allowances.map((one) => (
            <option key={one.tenths} value={one.tenths}>
              {one.name}
            </option>
          ))}
        </select>
        <button type="button" className="button" onClick={() => show(fewerSets(ways(), allowed))}>
          Look for fewer sets
        </button>
        <button
          type="button"
          className="button"
          onClick={() =>
            setOffer({ head: 'Near-ties that follow the majority', changes: followMajority(ways()) })
          }
        >
          Near-ties follow the majority
        </button>
      </div>
      <output>{said}</output>
      {mergesOnRecord(project).map((merge) => (
        <details key={`${merge.at} ${merge.by}`}>
          <summary>{mergeInWords(merge)}</summary>
          <ul>
            {merge.changes.map(({ openingId, says }) => (
              <li key={openingId}>{says}</li>
            ))}
          </ul>
        </details>
      ))}
      {offer && (
        <div className="stack">
          <p className="lead">{offer.head}</p>
          {offer.changes.length === 0 ? (
            <p>No opening would change.</p>
          ) : (
            <>
              <ul>
                {offer.changes.map((change) => (
                  <li key={change.openingId}>{change.says}</li>
                ))}
              </ul>
              <div className="row">
                <button type="button" className="button" onClick={take}>
                  Take these changes
                </button>
              </div>
            </>
          )}
        </div>
      )}
    </section>
  );
}
