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
    'Power is on, nobody acts, the opening is to be locked.',
    'With power on and nobody near, try the door from outside, then leave through it.',
    {},
    true,
  ),
  unlockedHours: when(
    'Unlocked hours',
    'The opening stands unlocked at its set hours.',
    'Set the schedule to its unlocked hours and try the door from both sides.',
    { unlockedHours: true },
    true,
  ),
  validCredential: when(
    'Valid credential',
    'Somebody outside presents a credential that is allowed.',
    'Present an allowed credential outside; time the release and check the record.',
    { credential: true },
  ),
  refusedCredential: when(
    'Refused credential',
    'Somebody outside presents a credential that is not allowed.',
    'Present a credential that is not allowed outside and check the record.',
    {},
  ),
  personLeaving: when(
    'Person leaving',
    'Somebody on the egress side walks out and does what the door asks.',
    'Walk out from the egress side with empty hands and no credential.',
    { at: 'leaving' },
  ),
  mainsLost: when(
    'Mains lost on battery',
    'The mains are off; where the lock supply has a battery, it runs on it.',
    'Switch off the mains breaker of the lock supply and leave it off.',
    { mains: false },
    true,
  ),
  batterySpent: when(
    'Battery spent',
    'The mains are off and no charge is left in any standby battery.',
    'With the mains off, disconnect the battery of the lock supply as well.',
    { mains: false, charged: false },
    true,
  ),
  supplyLost: when(
    'Lock supply lost',
    'The lock supply is dead while controller and building have power.',
    'Take the fuse out of the output that feeds this lock.',
    { supply: false },
    true,
  ),
  fireAlarm: when(
    'Fire alarm',
    'The fire alarm or automatic detection is active; mains are on.',
    'Put the fire alarm into alarm by a detector, not by a pull box.',
    { fireAlarm: true },
    true,
  ),
  fireAlarmMainsLost: when(
    'Fire alarm with mains lost',
    'The fire alarm is active and the mains are off; batteries are charged.',
    'With the mains off and batteries charged, put the fire alarm into alarm.',
    { fireAlarm: true, mains: false },
    true,
  ),
  sprinklerFlow: when(
    'Sprinkler flow',
    'Water flows in the sprinklers.',
    'Open the inspector’s test valve until the flow switch acts.',
    { flow: true },
    true,
  ),
  releaseCommand: when(
    'Released on command',
    'Somebody works the remote release of this opening.',
    'Work the remote release, then put it back.',
    { command: true },
    true,
  ),
  relayStuckReleased: when(
    'Controller failed released',
    'The controller is dead and its relay stays as when a credential was accepted.',
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
    'The controller is dead, the sensor sees nothing, and somebody presses the exit button.',
    'With controller and sensor off, press the exit button.',
    { relay: 'stuckLocked', sensorWorks: false, at: 'leaving' },
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
    'Hold the door open beyond its set time.',
    { at: 'held' },
  ),
} as const satisfies Record<string, Condition>;

export type ConditionId = keyof typeof conditions;
export const conditionIds = Object.keys(conditions) as readonly ConditionId[];
export const buildingConditionIds = conditionIds.filter((id) => conditions[id].wholeBuilding);
/** The conditions in which a fire is known to the building. */
export const fireConditionIds = ['fireAlarm', 'fireAlarmMainsLost', 'sprinklerFlow'] as const;

/** A condition by its id, with the general type. */
export function condition(id: ConditionId): Condition {
  return conditions[id];
}
