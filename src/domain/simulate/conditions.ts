/**
 * Every condition an opening is run through, as data: what is wrong or done, and the words for it. Nothing here
 * knows a device; the circuit reads these signals and the arrangement, and nothing else.
 */
export interface Situation {
  readonly mains: boolean;
  /** The standby battery still has charge. */
  readonly charged: boolean;
  /** The lock supply itself works. */
  readonly supply: boolean;
  readonly relay: 'works' | 'stuckReleased' | 'stuckLocked';
  readonly unlockedHours: boolean;
  readonly credential: boolean;
  readonly sensorWorks: boolean;
  readonly fireAlarm: boolean;
  readonly flow: boolean;
  /** Somebody works the release at the command center, nursing station or entrance. */
  readonly command: boolean;
  /** `held`: the interlock keeps this door shut, as if another of its doors stood open. */
  readonly interlock: 'works' | 'held';
  /** Sensor and exit button both do nothing, each for a reason of its own. */
  readonly exitReleases: 'work' | 'failed';
  /** Charge is left in the cells of a battery lock. */
  readonly cells: boolean;
  /** What happens at the door itself. */
  readonly at: 'rest' | 'leaving' | 'forced' | 'held';
}

const quiet: Situation = {
  mains: true,
  charged: true,
  supply: true,
  relay: 'works',
  unlockedHours: false,
  credential: false,
  sensorWorks: true,
  fireAlarm: false,
  flow: false,
  command: false,
  interlock: 'works',
  exitReleases: 'work',
  cells: true,
  at: 'rest',
};

export interface Condition {
  readonly name: string;
  /** What is the case, as a sentence. */
  readonly means: string;
  /** What a person does to bring it about at the acceptance test. */
  readonly test: string;
  readonly situation: Situation;
  /** It can hold at every opening at once, so the building is judged in it as well. */
  readonly wholeBuilding: boolean;
}

const when = (
  name: string,
  means: string,
  test: string,
  change: Partial<Situation>,
  wholeBuilding = false,
): Condition => ({ name, means, test, situation: { ...quiet, ...change }, wholeBuilding });

export const conditions = {
  lockedHours: when(
    'Locked hours',
    'Power is on, no one acts, the opening is to be locked.',
    'With power on and no one near, try the door from outside, then leave through it.',
    {},
    true,
  ),
  unlockedHours: when(
    'Unlocked hours',
    'The opening is unlocked during its scheduled hours.',
    'Set the schedule to its unlocked hours and try the door from both sides.',
    { unlockedHours: true },
    true,
  ),
  validCredential: when(
    'Valid credential',
    'Someone outside presents a valid credential.',
    'Present a valid credential outside; time the release and check the event log.',
    { credential: true },
  ),
  refusedCredential: when(
    'Refused credential',
    'Someone outside presents an invalid credential.',
    'Present an invalid credential outside and check the event log.',
    {},
  ),
  personLeaving: when(
    'Person leaving',
    'Someone on the egress side walks out and does what the door requires.',
    'Walk out from the egress side with empty hands and no credential.',
    { at: 'leaving' },
  ),
  mainsLost: when(
    'Line power lost, on battery',
    'Line power is off; where the lock supply has a battery, it runs on it.',
    'Turn off the branch breaker feeding the lock supply and leave it off.',
    { mains: false },
    true,
  ),
  mainsLostUnlocked: when(
    'Line power lost in unlocked hours',
    'Line power goes off while the schedule holds the opening unlocked; where the lock supply has a battery, it runs on it.',
    'In unlocked hours, turn off the branch breaker feeding the lock supply and leave it off.',
    { mains: false, unlockedHours: true },
    true,
  ),
  batterySpent: when(
    'Battery exhausted',
    'Line power is off and no standby battery has any charge left.',
    'With line power off, also disconnect the battery of the lock supply.',
    { mains: false, charged: false },
    true,
  ),
  supplyLost: when(
    'Lock supply lost',
    'The lock supply is dead while the controller and building have power.',
    'Pull the fuse of the output that feeds this lock.',
    { supply: false },
    true,
  ),
  fireAlarm: when(
    'Fire alarm',
    'The fire alarm or automatic detection is active; line power is on.',
    'Put the fire alarm into alarm with a detector, not a manual pull station.',
    { fireAlarm: true },
    true,
  ),
  fireAlarmMainsLost: when(
    'Fire alarm, line power lost',
    'The fire alarm is active and line power is off; batteries are charged.',
    'With line power off and batteries charged, put the fire alarm into alarm.',
    { fireAlarm: true, mains: false },
    true,
  ),
  sprinklerFlow: when(
    'Sprinkler flow',
    'Water flows in the sprinklers.',
    'Open the inspector’s test valve until the flow switch operates.',
    { flow: true },
    true,
  ),
  releaseCommand: when(
    'Released on command',
    'Someone operates the remote release of this opening.',
    'Operate the remote release, then restore it.',
    { command: true },
    true,
  ),
  relayStuckReleased: when(
    'Controller failed released',
    'The controller is dead and its relay stays as after a valid credential.',
    'Hold the lock relay of this opening in its released position and stop the controller.',
    // One relay may stick so; all at once would only say that locks unlock.
    { relay: 'stuckReleased' },
  ),
  relayStuckLocked: when(
    'Controller failed locked',
    'The controller is dead and its relay stays as in locked hours.',
    'Stop the controller with the relay in its locked position.',
    { relay: 'stuckLocked' },
    true,
  ),
  sensorFailed: when(
    'Exit sensor failed',
    'The exit sensor has lost its power or its signal.',
    'Unplug the exit sensor.',
    { sensorWorks: false },
    true,
  ),
  buttonDeadController: when(
    'Exit button with dead controller',
    'The controller is dead, the sensor sees nothing, and someone presses the exit button.',
    'With controller and sensor off, press the exit button.',
    { relay: 'stuckLocked', sensorWorks: false, at: 'leaving' },
    true,
  ),
  exitReleasesFailed: when(
    'Exit sensor and exit button failed',
    'Two faults at once: the sensor sees nobody and the contact of the exit button does not open.',
    'Cover the exit sensor, bridge the contact of the exit button, and put the fire alarm into alarm.',
    { exitReleases: 'failed' },
    true,
  ),
  interlockFailed: when(
    'Interlock failed',
    'The interlock has failed and keeps this door shut, as if another door of it stood open.',
    'Stop the interlock while another of its doors stands open, and leave from between the doors.',
    { interlock: 'held' },
    true,
  ),
  cellsSpent: when(
    'Lock’s own batteries exhausted',
    'The batteries inside the lock have no charge left.',
    'Take the batteries out of the lock; leave through the door, then open it from outside with the key.',
    { cells: false },
  ),
  doorForced: when(
    'Door forced',
    'The door opens with neither credential nor exit signal.',
    'Open the door with the key and no credential; repeat with the key bypass.',
    { at: 'forced' },
  ),
  doorHeld: when(
    'Door held open',
    'The door stays open longer than its set time.',
    'Hold the door open past its set time.',
    { at: 'held' },
  ),
} as const satisfies Record<string, Condition>;

export type ConditionId = keyof typeof conditions;
export const conditionIds = Object.keys(conditions) as readonly ConditionId[];
export const buildingConditionIds = conditionIds.filter((id) => conditions[id].wholeBuilding);
/** Two faults that nothing ties together: told as what the arrangement rests on, not as a fault of it. */
export const doubleFaultIds: readonly ConditionId[] = ['exitReleasesFailed'];
/** The conditions in which a fire is known to the building. */
export const fireConditionIds = ['fireAlarm', 'fireAlarmMainsLost', 'sprinklerFlow'] as const;

/** A condition by its id, with the general type. */
export function condition(id: ConditionId): Condition {
  return conditions[id];
}
