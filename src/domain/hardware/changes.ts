import type { Trade } from '../devices/items.ts';
import { type FactKey, type AnyValue } from '../model/fields.ts';

/** One thing that can be changed at an opening, as work for somebody. */
export interface Change {
  readonly fact: FactKey;
  readonly value: AnyValue;
  readonly trade: Trade;
  readonly says: string;
  /** How much of an undertaking it is, 1 (an hour) to 9 (building work). Common practice, no source. */
  readonly effort: number;
  /** What becomes so with it: a leaf that gets an exit device has a push bar. */
  readonly also: Readonly<Partial<Record<FactKey, AnyValue>>>;
  /** The one answer it may take the place of; any other where it is not said. */
  readonly from?: AnyValue;
}

const change = (
  fact: FactKey,
  value: AnyValue,
  trade: Trade,
  effort: number,
  says: string,
  also: Change['also'] = {},
): Change => ({ fact, value, trade, effort, says, also });

const barComes = { panicPresent: true };
const barGoes = { panicPresent: false };

/** Latches and exit devices go on a leaf that swings; nothing of the kind is made for the others. */
export const onSwingingLeaf: ReadonlySet<FactKey> = new Set([
  'latch',
  'panicPresent',
  'exitHardwareFireListed',
]);

/**
 * What work can change. Uses, loads, codes and the place of a door are not on the list: nobody changes an
 * occupancy group to get another lock.
 */
export const possibleChanges: readonly Change[] = [
  change(
    'strikePrep',
    'ansi478',
    'doorSupplier',
    3,
    'New 4-7/8 in strike preparation in the frame; laboratory approval first if the frame is labeled.',
  ),
  change('strikePrep', 'aluminium458', 'doorSupplier', 3, 'Strike preparation for an aluminum deadlatch.'),
  change('latch', 'mortise', 'locksmith', 5, 'Mortise lock, in a leaf prepared for it.', barGoes),
  change('latch', 'bored', 'locksmith', 4, 'Bored lockset in a leaf prepared for it.', barGoes),
  change(
    'latch',
    'deadlatch',
    'locksmith',
    4,
    'Narrow-stile deadlatch in place of the existing lock.',
    barGoes,
  ),
  change(
    'latch',
    'rimExit',
    'locksmith',
    4,
    'Rim exit device on the leaf; on a pair with a mullion for it to latch against.',
    barComes,
  ),
  change('latch', 'verticalRods', 'locksmith', 6, 'Vertical-rod exit device on the leaf.', barComes),
  change('latch', 'railExit', 'doorSupplier', 6, 'Glass leaf with rails and a rail exit device.', barComes),
  change(
    'panicPresent',
    true,
    'locksmith',
    3,
    'Exit device (panic hardware) on the leaf, operating the existing latch.',
  ),
  change('exitHardwareFireListed', true, 'locksmith', 4, 'Exit device with a fire exit hardware label.'),
  change('closing', 'selfClosing', 'locksmith', 2, 'Door closer.'),
  change(
    'holdOpen',
    'detectorReleased',
    'fireAlarm',
    3,
    'Hold-open released by smoke detection and power loss.',
  ),
  change('holdOpen', 'none', 'owner', 1, 'Remove the hold-open.'),
  change('inactiveBolts', 'automaticFlush', 'locksmith', 4, 'Automatic flush bolts on the inactive leaf.'),
  change('coordinator', true, 'locksmith', 2, 'Coordinator on the pair.'),
  change('mullion', true, 'locksmith', 4, 'Mullion between the leaves.'),
  change(
    'inactiveHasHardware',
    false,
    'locksmith',
    1,
    'Remove the knob, lever or bar from the inactive leaf.',
  ),
  change('powerAtDoor', true, 'electrician', 4, 'Bring lock power to the door.'),
  change(
    'cablePath',
    true,
    'electrician',
    4,
    'Provide a cable path to the frame, surface mounted if necessary.',
  ),
  change('frameConduit', true, 'electrician', 5, 'Conduit or surface raceway at the frame.'),
  change(
    'leafRaceway',
    true,
    'doorSupplier',
    4,
    'Raceway through the leaf from hinge to lock; laboratory approval first if the leaf is labeled.',
  ),
  change(
    'framePrepared',
    true,
    'doorSupplier',
    6,
    'Laboratory approval before cutting the labeled frame, or a new labeled frame made with the cutout.',
  ),
  change(
    'leafPrepared',
    true,
    'doorSupplier',
    6,
    'Laboratory approval before cutting the labeled leaf, or a new labeled leaf made with the preparation.',
  ),
  change(
    'inactiveLeafPrepared',
    true,
    'doorSupplier',
    6,
    'A new labeled inactive leaf made with strike cutout and raceway, where its listing includes one.',
  ),
  {
    ...change(
      'doorType',
      'single',
      'doorSupplier',
      7,
      'A leaf that swings one way, in a frame with a stop, in place of the double-acting one.',
    ),
    from: 'doubleActing',
  },
  change('headerRoom', true, 'doorSupplier', 6, 'Header at least 1-3/4 in deep inside.'),
  change('glassRails', 'both', 'doorSupplier', 6, 'Full-width rails top and bottom on the glass leaf.'),
  change('fireAlarm', true, 'fireAlarm', 8, 'Fire alarm system in the building, connected to the lock.'),
  change(
    'detectionThroughout',
    true,
    'fireAlarm',
    8,
    'Automatic smoke or heat detection throughout the building.',
  ),
  change('sprinklered', true, 'fireAlarm', 9, 'Sprinklers throughout the building.'),
  change(
    'sprinklerKind',
    'nfpa13',
    'fireAlarm',
    9,
    'A full sprinkler system (NFPA 13) in place of the residential one.',
  ),
  change(
    'stairReleasePoint',
    'mainEntrance',
    'fireAlarm',
    5,
    'Release of all locked stair doors together from inside the main entrance.',
  ),
  change(
    'stairReleasePoint',
    'fireCommandCenter',
    'fireAlarm',
    5,
    'Release of all locked stair doors together from the fire command center.',
  ),
  change('lobbyHasOtherExit', true, 'owner', 8, 'Another path from the elevator lobby to an exit.'),
  change('staffCanUnlock', true, 'owner', 2, 'Keys or codes carried by all clinical staff.'),
  change('delay30sApproved', true, 'owner', 3, 'The authority’s written approval of 30 seconds.'),
  change('operator', 'none', 'owner', 4, 'Omit the automatic operator.'),
  change('breakaway', true, 'doorSupplier', 6, 'Sliding leaves that swing out when pushed.'),
  change('swingsWithEgress', true, 'doorSupplier', 5, 'Rehang the leaf to swing in the direction of egress.'),
  change('egressHardwareHeightIn', 40, 'locksmith', 3, 'Hardware at 40 in above the floor.'),
  change('leafThicknessIn', 1.75, 'doorSupplier', 5, 'A leaf 1-3/4 in thick.'),
  change('readerSides', 'secure', 'owner', 1, 'A reader on the secure side.'),
  // Gives up what the opening was asked for, so it is named only where the rest is building work.
  change('readerSides', 'none', 'owner', 7, 'The owner gives up the reader here.'),
  change(
    'readerSides',
    'recordOut',
    'owner',
    1,
    'The inside reader only records; the lock opens freely from inside.',
  ),
  change('stairLockWanted', 'none', 'owner', 1, 'Leave both sides of the stair door open.'),
  change('wishDelayedEgress', true, 'owner', 1, 'The owner asks for delayed egress.'),
  change('wishDelayedEgress', false, 'owner', 1, 'The owner gives up delayed egress.'),
  change('wishScheduledUnlock', false, 'owner', 1, 'The owner gives up scheduled hours.'),
  change('wishControlledEgress', true, 'owner', 1, 'The owner asks for controlled egress.'),
  change('wishKeyLock', true, 'owner', 1, 'The owner asks for a lock keyed from inside.'),
  change('wishGlassBareLook', false, 'owner', 1, 'The owner accepts a visible device.'),
  change('wishInterlock', false, 'owner', 1, 'The owner gives up the interlock.'),
];
