import { type Candidate, releases } from '../devices/candidates.ts';
import type { FailMode } from '../devices/devices.ts';
import { midSentence } from '../text/midSentence.ts';

export const failModeWords: Record<FailMode, string> = {
  safe: 'Fail safe',
  secure: 'Fail secure',
  asIs: 'Stays as it is',
  none: 'No power',
};

export function candidateInWords(candidate: Candidate): string {
  const mode =
    candidate.failMode === 'safe' || candidate.failMode === 'secure'
      ? `, ${midSentence(failModeWords[candidate.failMode])}`
      : '';
  return `${candidate.device.name}${mode}`;
}

export function releaseInWords(candidate: Candidate): string {
  return releases[candidate.release];
}

/** Device, fail mode and release: the whole arrangement, where a list names several. */
export function arrangementInWords(candidate: Candidate): string {
  return `${candidateInWords(candidate)} · ${releaseInWords(candidate)}`;
}
