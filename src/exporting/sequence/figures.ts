import type { CodeBasis } from '../../domain/codes/basis.ts';
import { type Cite, citeInWords, under } from '../../domain/codes/sections.ts';

/** Whose the figures of a test are. A technician who fails a door by a figure must be able to say by whose. */
export const figures = {
  practice: 'Common practice, no source.',
  makers: 'Usual tolerance of lock manufacturers; the data sheet of this lock governs.',
  guide: 'Usual ceiling of guide specifications for strikes.',
  alarm:
    'NFPA 72, time in which a fire safety function starts, from memory. Codes ask for release upon the alarm; the delay of a flow switch comes before it.',
  button: (basis: CodeBasis) => `${adopted(basis, under('sensorRelease'), under('sensorReleaseNfpa'))}.`,
} as const;

export function delaySource(basis: CodeBasis): string {
  return adopted(basis, under('delayedEgress'), under('delayedEgressNfpa'));
}

/** The section of the adopted book; of both where both are adopted, of the IBC as a reference where neither is. */
function adopted(basis: CodeBasis, ibc: Cite, nfpa: Cite): string {
  const cites = [...(basis.ibc === null ? [] : [ibc]), ...(basis.nfpa101 === null ? [] : [nfpa])];
  return (cites.length > 0 ? cites : [ibc]).map((cite) => citeInWords(cite, basis)).join('; ');
}
