import { midSentence } from '../../domain/text/midSentence.ts';
import { device } from '../../domain/devices/devices.ts';
import { releases } from '../../domain/devices/candidates.ts';
import type { Arrangement, Setting } from '../../domain/arrangement/arrangement.ts';
import type { ConditionId } from '../../domain/simulate/conditions.ts';
import type { Outcomes } from '../../domain/simulate/outcome.ts';
import { isOnAlarm, onFireAlarm } from '../../domain/simulate/outcomeWords.ts';
import { exitInWords } from '../../domain/simulate/stateWords.ts';
import { hoursInWords, thingInWords } from '../../domain/simulate/sentences.ts';
import type { Simulated } from '../../domain/decide/whatHappens.ts';

export interface SequenceLine {
  readonly event: string;
  readonly says: string;
}
/** The sequence of operation of one arrangement: what happens at each event, as it is written on paper. */
export interface Sequence {
  readonly title: string;
  readonly lines: readonly SequenceLine[];
}

interface Given {
  readonly arrangement: Arrangement;
  readonly setting: Setting;
  readonly outcomes: Outcomes;
  readonly thing: string;
  readonly wired: boolean;
}
type Write = (given: Given) => string | undefined;

/** Event by event; one that has nothing to say at this opening is left out. */
const events: readonly (readonly [event: string, write: Write])[] = [
  ['Normal, secured', normal],
  ['Scheduled unlocking', scheduled],
  ['Valid credential outside', ({ outcomes }) => applying(outcomes, 'validCredential')],
  [
    'Refused credential outside',
    ({ outcomes }) =>
      outcomes.refusedCredential.applies ? 'Nothing moves. The attempt is logged.' : undefined,
  ],
  ['Leaving', leaving],
  ['Exit sensor and button', sensorAndButton],
  ['Line power lost', mains],
  ['All power lost', ({ outcomes }) => outcomes.batterySpent.says],
  ['Fire alarm', alarm],
  ['Sprinkler flow', ({ outcomes }) => applying(outcomes, 'sprinklerFlow')],
  ['Released remotely', ({ outcomes }) => applying(outcomes, 'releaseCommand')],
  ['Forced open', ({ outcomes }) => outcomes.doorForced.says],
  ['Held open', ({ outcomes }) => outcomes.doorHeld.says],
  ['Automatic operator', operator],
  ['Controller or network lost', controller],
  ['Key', key],
  ['Maintenance and lockdown', lockdown],
];

export function sequenceOf({ arrangement, setting, outcomes }: Simulated): Sequence {
  const kind = device(arrangement.device);
  const given: Given = {
    arrangement,
    setting,
    outcomes,
    thing: thingInWords(arrangement.device),
    wired: arrangement.failMode === 'safe' || arrangement.failMode === 'secure',
  };
  const mode =
    arrangement.failMode === 'safe'
      ? ', fail safe'
      : arrangement.failMode === 'secure'
        ? ', fail secure'
        : '';
  return {
    title: `${kind.name}${mode} · ${releases[arrangement.release]}`,
    lines: events.flatMap(([event, write]) => {
      const says = write(given);
      return says === undefined ? [] : [{ event, says }];
    }),
  };
}

function applying(outcomes: Outcomes, id: ConditionId): string | undefined {
  return outcomes[id].applies ? outcomes[id].says : undefined;
}

function normal({ outcomes: { lockedHours }, thing }: Given): string {
  const side =
    lockedHours.entry === 'locked' ? `The ${thing} locks the outside.` : 'Nothing locks the outside.';
  const latch = lockedHours.latched === 'yes' ? 'The leaf is latched.' : 'No latch holds the leaf.';
  const coil =
    lockedHours.coil === 'none'
      ? 'No lock power is needed.'
      : lockedHours.coil === 'yes'
        ? 'The coil is energized.'
        : 'The coil has no current.';
  return `${side} ${latch} ${coil}`;
}

function scheduled({ outcomes, arrangement }: Given): string | undefined {
  if (!outcomes.unlockedHours.applies) return undefined;
  return arrangement.release === 'keyInside'
    ? 'Someone unlocks it by key before people arrive, and it stays unlocked while they are inside.'
    : `${outcomes.unlockedHours.says} Whether the first person in has to start it is set in the controller.`;
}

function leaving({ outcomes, arrangement }: Given): string {
  const shunt =
    arrangement.exitSignal && arrangement.reportsPosition ? ' The exit signal shunts the forced alarm.' : '';
  return `${outcomes.personLeaving.says}${shunt}`;
}

function sensorAndButton({ arrangement }: Given): string | undefined {
  if (arrangement.button === 'none' && arrangement.sensor === 'none') return undefined;
  const sensor =
    arrangement.sensor === 'failsOpen'
      ? 'The sensor unlocks for anyone approaching, and also when it loses power or signal.'
      : arrangement.sensor === 'plain'
        ? 'The sensor unlocks for anyone approaching.'
        : '';
  const button =
    arrangement.button === 'direct'
      ? 'The button breaks lock power by its own contact for at least 30 s, whatever the controller does.'
      : arrangement.button === 'asksController'
        ? 'The button asks the controller and does nothing without it.'
        : '';
  return [sensor, button].filter(Boolean).join(' ');
}

function mains({ outcomes, arrangement, wired }: Given): string {
  if (!wired) return outcomes.mainsLost.says;
  const hours =
    arrangement.battery === 'no'
      ? ''
      : arrangement.batteryHours === null
        ? ' Hours of the battery: to be stated.'
        : ` The battery carries it for ${hoursInWords(arrangement.batteryHours)}.`;
  return `${outcomes.mainsLost.says}${hours}`;
}

function alarm({ outcomes, arrangement }: Given): string | undefined {
  const { fireAlarm } = outcomes;
  if (!fireAlarm.applies) return undefined;
  const reset = isOnAlarm(arrangement) ? ' It stays so until the alarm is reset by hand.' : '';
  return `${onFireAlarm(arrangement, outcomes)}. ${fireAlarm.says}${reset}`;
}

function operator({ setting, arrangement }: Given): string | undefined {
  if (!setting.operatorDrives) return undefined;
  const order =
    arrangement.latch === 'always'
      ? 'Nothing retracts the latch for the operator: it may drive only while the leaf is unlatched by hand.'
      : 'First the lock releases, then its monitor reports, then the operator drives.';
  return `${order} While the outside is locked the outside button does nothing.${
    setting.rated ? ' On fire alarm the operator is disabled and the leaf closes.' : ''
  }`;
}

function controller({ outcomes, wired }: Given): string {
  if (!wired) return 'The lock works by itself; no controller is needed at the moment of use.';
  return `Without its network the controller runs on what it has in memory. Dead in the locked state: ${midSentence(
    outcomes.relayStuckLocked.says,
  )} Dead in the released state: ${midSentence(outcomes.relayStuckReleased.says)}`;
}

function key({ arrangement }: Given): string | undefined {
  if (nothingToLock(arrangement)) return undefined;
  if (device(arrangement.device).holdsByMagnet) {
    return 'No cylinder overrides it; the key switch or the supply releases it.';
  }
  return arrangement.reportsPosition
    ? 'The key works the cylinder outside; the contact reports it as forced unless the alarm is bypassed.'
    : 'The key works the cylinder outside; nothing reports it.';
}

function lockdown({ outcomes, wired, arrangement }: Given): string {
  if (nothingToLock(arrangement)) return 'Nothing here can be locked down.';
  const change = wired
    ? 'Lockdown suspends the schedule and credentials.'
    : 'Lockdown is set at the lock or by key.';
  return `${change} Then, as in locked hours: ${exitInWords(outcomes.lockedHours)}.`;
}

/** Push and pull only. */
function nothingToLock({ device: id, failMode }: Arrangement): boolean {
  return failMode === 'none' && !device(id).keepsLatch;
}
