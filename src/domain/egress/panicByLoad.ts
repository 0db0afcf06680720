import type { CodeBasis } from '../codes/basis.ts';
import { limitValue } from '../codes/limits.ts';
import type { FactValue } from '../model/fields.ts';
import type { Qty } from '../units/quantity.ts';

/**
 * Whether group and load alone ask for panic hardware on a latching, swinging egress door, under any adopted code.
 * Source: IBC 1010.1.10 (2018), 1010.2.9 (2021), 1010.2.8 (2024): A and E from 50, H always; NFPA 101 7.2.1.7 and
 * chapters: A, E and day care from 100, high hazard over 5. Rooms with electrical equipment are judged by rules.
 */
export function panicByLoad(
  group: FactValue<'occupancyGroup'>,
  people: Qty<'people'>,
  basis: CodeBasis,
): boolean {
  const crowd = group.startsWith('A-') || group === 'E';
  const hazard = group.startsWith('H-');
  const byIbc =
    basis.ibc !== null && (hazard || (crowd && people >= limitValue('panicLoadIbc', basis, 'panicByLoad')));
  const byNfpa =
    basis.nfpa101 !== null &&
    (((crowd || group === 'I-4') && people >= limitValue('panicLoadNfpa', basis, 'panicByLoad')) ||
      (hazard && people > limitValue('panicLoadHighHazardNfpa', basis, 'panicByLoad')));
  return byIbc || byNfpa;
}
