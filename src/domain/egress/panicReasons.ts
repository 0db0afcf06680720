import type { CodeBasis } from '../codes/basis.ts';
import { limitEntry } from '../codes/limits.ts';
import { citeInWords, under } from '../codes/sections.ts';
import type { FactValue } from '../model/fields.ts';
import type { Qty } from '../units/quantity.ts';
import { panicByLoad } from './panicByLoad.ts';
import { peopleInWords, type Reason, resting } from './reason.ts';

export interface PanicAnswer {
  /** Under any adopted code. */
  readonly asked: boolean;
  readonly reasons: readonly Reason[];
}

/** Whether group and load ask for panic hardware, code by code. Rooms with large equipment are judged by rules. */
export function panicReasons(
  group: FactValue<'occupancyGroup'>,
  people: Qty<'people'>,
  basis: CodeBasis,
): PanicAnswer {
  const ibcLimit = limitEntry('panicLoadIbc', basis, 'panicReasons');
  const nfpaLimit = limitEntry('panicLoadNfpa', basis, 'panicReasons');
  const hazard = limitEntry('panicLoadHighHazardNfpa', basis, 'panicReasons');
  const lines = [
    ...(basis.ibc === null
      ? []
      : [
          {
            asked: panicByLoad(group, people, { ...basis, nfpa101: null }),
            who: `Groups A and E from ${ibcLimit.value}, Group H at any load`,
            source: citeInWords(under('panicHardware'), basis),
            confidence: ibcLimit.confidence,
          },
        ]),
    ...(basis.nfpa101 === null
      ? []
      : [
          {
            asked: panicByLoad(group, people, { ...basis, ibc: null }),
            who: `assembly, education and day care from ${nfpaLimit.value}, high hazard over ${hazard.value}`,
            source: citeInWords(under('panicHardwareNfpa'), basis),
            confidence: nfpaLimit.confidence,
          },
        ]),
  ];
  return {
    asked: lines.some((one) => one.asked),
    reasons: lines.map(({ asked, who, source, confidence }) =>
      resting(
        `${peopleInWords(people)} in Group ${group}: ${asked ? 'latching doors need panic hardware' : 'no panic hardware by group and load'} (${who}).`,
        source,
        confidence,
      ),
    ),
  };
}
