import type { CodeBasis } from '../codes/basis.ts';
import { citeInWords, under } from '../codes/sections.ts';
import type { FactValue } from '../model/fields.ts';
import type { Confidence } from '../rules/rule.ts';
import { capacityFactor, capacityFactors, nfpaCapacityFactors, type Protection } from './capacity.ts';

type Group = FactValue<'occupancyGroup'>;

/** Inches of door width a person takes under one code, and where that is written. */
export interface WidthFactor {
  readonly inPerPerson: number;
  readonly source: string;
  readonly confidence: Confidence;
}

const isHealthCare = (group: Group | undefined) => group === 'I-2';
const isBoardAndCare = (group: Group | undefined) =>
  group === 'R-4' || group === 'I-1.1' || group === 'I-1.2';

function nfpaFactor({ group, sprinklered }: Protection): number {
  if (group === undefined) return nfpaCapacityFactors.general.other;
  if (isHealthCare(group)) {
    return nfpaCapacityFactors[sprinklered === true ? 'healthCareSprinklered' : 'healthCareNotSprinklered']
      .other;
  }
  if (isBoardAndCare(group)) return nfpaCapacityFactors.boardAndCare.other;
  if (group.startsWith('H-')) return nfpaCapacityFactors.highHazard.other;
  return nfpaCapacityFactors.general.other;
}

/**
 * The factor of every adopted code for doors and level ways. Without an adopted code that of the IBC is named,
 * and said not to be adopted. Source: IBC 1005.3.2; NFPA 101 Table 7.3.3.1.
 */
export function widthFactors(given: Protection, basis: CodeBasis): readonly WidthFactor[] {
  const ibc = capacityFactor('other', given);
  return [
    ...(basis.ibc !== null || basis.nfpa101 === null
      ? [
          {
            inPerPerson: ibc,
            source: citeInWords(under('egressCapacity'), basis),
            confidence: ibc === capacityFactors.base.other ? ('read' as const) : ('secondary' as const),
          },
        ]
      : []),
    ...(basis.nfpa101 === null
      ? []
      : [
          {
            inPerPerson: nfpaFactor(given),
            source: `NFPA 101 ${basis.nfpa101} Table 7.3.3.1`,
            confidence: 'memory' as const,
          },
        ]),
  ];
}
