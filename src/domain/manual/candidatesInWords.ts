import { type CandidateMatch, candidates, matches, releases } from '../devices/candidates.ts';
import { type DeviceFamily, devices, type FailMode } from '../devices/devices.ts';
import { midSentence, startSentence } from '../text/midSentence.ts';
import { orList } from './conditionInWords.ts';

const familyWords: Record<DeviceFamily, string> = {
  strike: 'electric strikes',
  magnet: 'magnets',
  bolt: 'electric bolts',
  lock: 'electrified locks',
  exitDevice: 'electrified exit devices',
  delayed: 'delayed-egress devices',
  battery: 'battery-powered locks',
  mechanical: 'mechanical locks',
  none: 'no lock at all',
  detention: 'detention locks',
  operator: 'locks of an operator’s own package',
};
const failModeWords: Record<FailMode, string> = {
  safe: 'fail safe',
  secure: 'fail secure',
  asIs: 'stays as it is without power',
  none: 'without power',
};

/** Of which arrangements a clause speaks. Undefined: of the opening itself, whatever is chosen. */
export function candidatesInWords(match: CandidateMatch | undefined): string {
  if (match === undefined) return 'The opening, whatever is chosen';
  const parts = partsOf(match);
  const count = candidates.filter((candidate) => matches(match, candidate)).length;
  const text = parts.length === 0 ? 'Every arrangement' : parts.join('; ');
  return `${startSentence(text)} (${count} of ${candidates.length} arrangements)`;
}

function partsOf(match: CandidateMatch): readonly string[] {
  const parts: string[] = [];
  if (match.device) parts.push(orList(match.device.map((id) => midSentence(devices[id].name))));
  if (match.family) parts.push(orList(match.family.map((one) => familyWords[one])));
  if (match.failMode) parts.push(orList(match.failMode.map((one) => failModeWords[one])));
  if (match.release) {
    parts.push(`released by ${orList(match.release.map((one) => midSentence(releases[one])))}`);
  }
  if (match.wired !== undefined) parts.push(match.wired ? 'wired' : 'not wired');
  if (match.keepsLatch !== undefined)
    parts.push(match.keepsLatch ? 'the leaf stays latched while unlocked' : 'the leaf is not kept latched');
  if (match.exitDevice !== undefined)
    parts.push(match.exitDevice ? 'with a push bar or pad' : 'without a push bar or pad');
  if (match.transfer !== undefined)
    parts.push(match.transfer ? 'with wiring across the hinges' : 'without wiring across the hinges');
  if (match.not) parts.push(`except ${partsOf(match.not).join(', ')}`);
  return parts;
}
