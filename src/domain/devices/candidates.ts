import {
  type Device,
  type DeviceFamily,
  type DeviceId,
  device,
  deviceIds,
  type FailMode,
} from './devices.ts';

/** How a person leaving gets out. */
export const releases = {
  free: 'Free mechanical egress',
  stairReentry: 'Free mechanical egress, stair side released on command',
  doorSwitch: 'Switch in the door hardware',
  sensor: 'Exit sensor with a manual push button',
  delayed: 'Delayed egress',
  controlled: 'Controlled egress, released by staff',
  clinical: 'Clinical lock, opened by staff',
  lobby: 'Elevator-lobby release',
  keyInside: 'Keyed from the egress side',
  credentialOut: 'Credential to leave',
  buttonOnly: 'Wall button only',
  alarmOnly: 'Fire alarm or power loss only',
  attended: 'Detention staff release',
  none: 'No release on the egress side',
} as const;
export type Release = keyof typeof releases;

export interface Candidate {
  readonly index: number;
  readonly id: string;
  readonly deviceId: DeviceId;
  readonly device: Device;
  readonly failMode: FailMode;
  readonly release: Release;
}

const heldReleases: readonly Release[] = [
  'sensor',
  'doorSwitch',
  'controlled',
  'lobby',
  'credentialOut',
  'buttonOnly',
  'alarmOnly',
  'none',
];

/** Which releases exist in the trade with which device, also the unlawful ones people ask for. */
function releasesOf(id: DeviceId, mode: FailMode): readonly Release[] {
  switch (device(id).family) {
    case 'strike':
      return ['free', 'none'];
    case 'magnet':
      return heldReleases;
    case 'bolt':
      return heldReleases;
    case 'lock':
      return id === 'mortiseLock' || id === 'cylindricalLock'
        ? mode === 'safe'
          ? ['free', 'stairReentry', 'controlled', 'clinical', 'lobby', 'credentialOut']
          : ['free', 'clinical', 'credentialOut']
        : id === 'gateLock'
          ? ['free', 'keyInside']
          : ['free'];
    case 'exitDevice':
      return id === 'exitTrim' && mode === 'safe' ? ['free', 'stairReentry'] : ['free'];
    case 'delayed':
      return ['delayed'];
    case 'battery':
      return ['free', 'clinical'];
    case 'mechanical':
      return ['free', 'keyInside', 'clinical'];
    case 'none':
      return ['free'];
    case 'operator':
      // Broken out by a push, or nobody leaves by it; or the lock of the package lets go by the sensor.
      return mode === 'safe' ? ['sensor'] : ['free', 'none'];
    case 'detention':
      return ['attended'];
  }
}

/** Every device × fail mode × release method that exists, in a fixed order. */
export const candidates: readonly Candidate[] = deviceIds
  .flatMap((deviceId) =>
    device(deviceId).failModes.flatMap((failMode) =>
      releasesOf(deviceId, failMode).map((release) => ({ deviceId, failMode, release })),
    ),
  )
  .map((parts, index) => ({
    ...parts,
    index,
    id: `${parts.deviceId}/${parts.failMode}/${parts.release}`,
    device: device(parts.deviceId),
  }));

const byId = new Map(candidates.map((candidate) => [candidate.id, candidate]));
export function candidateById(id: string): Candidate | undefined {
  return byId.get(id);
}

/** Which candidates a rule speaks of. Every part given must hold; a list is "one of". */
export interface CandidateMatch {
  readonly device?: readonly DeviceId[];
  readonly family?: readonly DeviceFamily[];
  readonly failMode?: readonly FailMode[];
  readonly release?: readonly Release[];
  readonly wired?: boolean;
  readonly keepsLatch?: boolean;
  readonly exitDevice?: boolean;
  /** The wire must cross the hinge line. */
  readonly transfer?: boolean;
  readonly not?: CandidateMatch;
}

export function matches(match: CandidateMatch, candidate: Candidate): boolean {
  const { device: kind } = candidate;
  return (
    (match.device === undefined || match.device.includes(candidate.deviceId)) &&
    (match.family === undefined || match.family.includes(kind.family)) &&
    (match.failMode === undefined || match.failMode.includes(candidate.failMode)) &&
    (match.release === undefined || match.release.includes(candidate.release)) &&
    (match.wired === undefined || match.wired === kind.wired) &&
    (match.keepsLatch === undefined || match.keepsLatch === kind.keepsLatch) &&
    (match.exitDevice === undefined || match.exitDevice === kind.exitDevice) &&
    (match.transfer === undefined || match.transfer === kind.transfer) &&
    (match.not === undefined || !matches(match.not, candidate))
  );
}

/** Releases that let a person leave by one mechanical motion, whatever power or alarm do. */
export const freeReleases: readonly Release[] = ['free', 'stairReentry'];
/** Releases no code accepts from an egress door outside a short closed list. */
export const unlawfulReleases: readonly Release[] = ['none', 'alarmOnly', 'buttonOnly', 'credentialOut'];
