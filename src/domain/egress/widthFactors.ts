import type { CodeBasis } from '../codes/basis.ts';
import { citeInWords, under } from '../codes/sections.ts';
import type { Confidence } from '../rules/rule.ts';
import { capacityFactor, capacityFactors, nfpaCapacityFactors, type Protection } from './capacity.ts';

/** Inches of door width a person takes under one code, and where that is written. */
export interface WidthFactor {
  readonly inPerPerson: number;
  readonly source: string;
  readonly confidence: Confidence;
}

/** Board and care differs from the rest on stairs only, which are not counted here. */
function nfpaFactor({ group, sprinklered }: Protection): number {
  if (group === 'I-2') {
    return nfpaCapacityFactors[sprinklered === true ? 'healthCareSprinklered' : 'healthCareNotSprinklered']
      .other;
  }
  return nfpaCapacityFactors[group?.startsWith('H-') === true ? 'highHazard' : 'general'].other;
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
