import { linkTo } from '../../app/addresses.ts';
import { useState } from 'react';
import type { Project } from '../../domain/model/project.ts';
import { mergeable, mergedSets, renamed } from '../../domain/sets/setNumbers.ts';
import type { HardwareSet } from '../../domain/sets/sets.ts';
import { TextField } from '../project/TextField.tsx';
import { useCommand } from '../project/useCommand.ts';

/** Number and name of each set whose number is fixed, and the sets that are made of the same things. */
export function SetNames({ project, sets }: { project: Project; sets: readonly HardwareSet[] }) {
  const command = useCommand();
  const [told, setTold] = useState('');
  const fixed = sets.filter(({ storedId }) => storedId !== '');
  const alike = mergeable(fixed);
  if (fixed.length === 0) return null;
  const rename = (set: HardwareSet, to: Parameters<typeof renamed>[2]) => {
    const edits = renamed(project, set.storedId, to);
    return 'says' in edits ? edits.says : command(`${set.id} renamed`, edits);
  };
  const merge = (from: HardwareSet, into: HardwareSet) => {
    const refused = command(
      `${from.id} merged into ${into.id}`,
      mergedSets(project, from.storedId, into.storedId),
    );
    setTold(refused ?? `${from.id} was merged into ${into.id}; its number is not used any more.`);
  };
  return (
    <>
      {alike.map(([into, ...others]) =>
        others.map((from) => (
          <div key={from.id} className="row">
            <button type="button" className="button button-small" onClick={() => into && merge(from, into)}>
              Merge {from.id} into {into?.id}
            </button>
          </div>
        )),
      )}
      <output>{told}</output>
      <details>
        <summary>Rename sets</summary>
        <ul className="set-names">
          {fixed.map((set) => (
            <li key={set.storedId}>
              <TextField
                label={`Number of ${set.id}`}
                at={{ place: `set/${set.storedId}/number`, href: linkTo('print') }}
                value={set.id}
                onKeep={(text) => rename(set, { number: text.trim() })}
              />
              <TextField
                label={`Name of ${set.id}`}
                at={{ place: `set/${set.storedId}/name`, href: linkTo('print') }}
                value={project.hardwareSets[set.storedId]?.name ?? ''}
                placeholder={set.title}
                onKeep={(text) => rename(set, { name: text.trim() })}
              />
            </li>
          ))}
        </ul>
      </details>
    </>
  );
}
