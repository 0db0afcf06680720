import type { CodeBasis } from '../codes/basis.ts';
import type { FactValue } from '../model/fields.ts';
import { qty } from '../units/quantity.ts';
import { exitsByLoad, mostWithOneExit, oneExitMayDo } from './exits.ts';
import { peopleInWords, type Reason, resting, surveyed } from './reason.ts';

export interface ExitsGiven {
  readonly people: number | null;
  readonly group: FactValue<'occupancyGroup'> | undefined;
  readonly commonPathFt: number | null;
  readonly sprinklered: boolean | undefined;
}

/** How many ways out a space needs. `from` and `to` differ while something that could ask for one more is unknown. */
export interface ExitsNeeded {
  readonly from: number;
  readonly to: number;
  readonly reasons: readonly Reason[];
}

/** "2", "1 or 2", "not known". */
export function neededInWords(needed: ExitsNeeded | null): string {
  if (needed === null) return 'not known';
  return needed.from === needed.to ? String(needed.from) : `${needed.from} or ${needed.to}`;
}

export const noOccupants = 'It has no occupants.';

/** Null while load or code is not known. */
export function exitsNeeded(given: ExitsGiven, basis: CodeBasis): ExitsNeeded | null {
  if (given.people === null || (basis.ibc === null && basis.nfpa101 === null)) return null;
  if (given.people === 0) return { from: 0, to: 0, reasons: [surveyed(noOccupants)] };
  return basis.ibc === null
    ? byNfpaAlone(given.people, basis.nfpa101 ?? 0)
    : byIbc(given.people, given, basis.ibc, basis.nfpa101);
}

function byIbc(people: number, given: ExitsGiven, edition: number, nfpa: number | null): ExitsNeeded {
  const byLoad = exitsByLoad(qty(people, 'people'));
  const several = resting(
    `${peopleInWords(people)} need ${byLoad}: from 501 people three, from 1,001 four, else two.`,
    `IBC ${edition} 1006.2.1.1`,
    'secondary',
  );
  const also =
    nfpa === null
      ? []
      : [
          surveyed(
            `NFPA 101 ${nfpa}: when one exit is enough is stated in its occupancy chapter, which is not computed here.`,
          ),
        ];
  const source = `IBC ${edition} 1006.2.1, Table 1006.2.1`;
  if (given.group === undefined) {
    if (people > mostWithOneExit) {
      const says = `More than ${mostWithOneExit} people need a second exit in every group.`;
      return { from: byLoad, to: byLoad, reasons: [resting(says, source, 'memory'), several, ...also] };
    }
    const says = 'The table goes by occupancy group, which is not known for this space.';
    return { from: 1, to: 2, reasons: [surveyed(says), ...also] };
  }
  const one = oneExitMayDo({
    group: given.group,
    people: qty(people, 'people'),
    ...(given.commonPathFt === null ? {} : { commonPath: qty(given.commonPathFt, 'ft') }),
    ...(given.sprinklered === undefined ? {} : { sprinklered: given.sprinklered }),
  });
  const reason = resting(one.says, source, 'memory');
  if (one.answer === 'moreThanOne') {
    return { from: byLoad, to: byLoad, reasons: [reason, several, ...also] };
  }
  return { from: 1, to: one.answer === 'oneMayDo' ? 1 : 2, reasons: [reason, ...also] };
}

function byNfpaAlone(people: number, edition: number): ExitsNeeded {
  const source = `NFPA 101 ${edition} 7.4.1.2`;
  const byLoad = exitsByLoad(qty(people, 'people'));
  if (byLoad > 2) {
    const says = `${peopleInWords(people)} need ${byLoad}: over 500 people three, over 1,000 four.`;
    return { from: byLoad, to: byLoad, reasons: [resting(says, source, 'memory')] };
  }
  const says = 'Two, unless its occupancy chapter allows one; those chapters are not computed here.';
  return { from: 1, to: 2, reasons: [resting(says, source, 'memory')] };
}
