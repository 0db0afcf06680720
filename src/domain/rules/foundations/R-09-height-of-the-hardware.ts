import { text, under } from '../../codes/sections.ts';
import { all, any, atMost, is, isKnown, not, over, under as below, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

const room = {
  egressRole: 'exitAccess',
  poolBarrierGate: false,
  workStatus: 'new',
  leafMaterial: 'hollowMetal',
  doorType: 'single',
} as const;
const gate = { ...room, poolBarrierGate: true, doorType: 'gateSwing', leafMaterial: 'gateFramed' } as const;
const on = 'mortiseLock/secure/free';
const at = (clause: string) => ({ clause, on });

/** Only a gate stands in a pool barrier; nobody is asked about one at a room door. */
const poolGate = all(is('doorType', 'gateSwing', 'gateSlide'), yes('poolBarrierGate'));

export const R09 = defineRule({
  id: 'R-09',
  title: 'Egress hardware is 34 to 48 in high',
  family: 'foundations',
  book: 'ibc',
  cites: [under('hardwareHeightIbc'), under('hardwareHeightNfpa'), text('ada', '404.2.7', 'Door hardware')],
  confidence: 'read',
  note: 'Exceptions from general knowledge. The pool-gate exception of the ADA reaches only latches that do not lock themselves by key, code or electric opener, so on an access-controlled gate it is put to the reviewer. Locks used for security only are not measured here.',
  why: 'Hardware that is too high or too low is out of reach for a child or for a person in a wheelchair.',
  clauses: [
    {
      key: 'a',
      effect: 'modify',
      trade: 'locksmith',
      when: all(
        yes('isEgress'),
        // A height nobody measured is told as a caution below: it can be set when the hardware goes on.
        isKnown('egressHardwareHeightIn'),
        any(
          below('egressHardwareHeightIn', 'hardwareLowIn'),
          all(
            over('egressHardwareHeightIn', 'hardwareHighIn'),
            not(all(poolGate, atMost('egressHardwareHeightIn', 'poolLatchHighIn'))),
          ),
        ),
        not(
          all(
            is('workStatus', 'existing', 'altered'),
            any(is('leafMaterial', 'glassFrameless'), is('doorType', 'overhead', 'grille')),
          ),
        ),
      ),
      says: 'The lever or bar is at {egressHardwareHeightIn}; whatever lock is chosen, move it to between 34 and 48 in above the floor. In a labeled leaf do so only as its listing allows.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: all(
        yes('isEgress'),
        poolGate,
        over('egressHardwareHeightIn', 'hardwareHighIn'),
        atMost('egressHardwareHeightIn', 'poolLatchHighIn'),
      ),
      of: { release: ['free', 'stairReentry', 'doorSwitch', 'delayed'] },
      says: 'A pool gate may have its latch release up to 54 in, but not if the latch also locks itself by key, code or electric opener; a reviewer decides whether {egressHardwareHeightIn} can stay.',
    },
    {
      key: 'c',
      effect: 'caution',
      when: all(yes('isEgress'), not(isKnown('egressHardwareHeightIn'))),
      of: { release: ['free', 'stairReentry', 'doorSwitch', 'delayed'] },
      says: 'The height of the lever or bar was not measured; it must be between 34 and 48 in above the floor.',
    },
  ],
  cases: cases(
    ['height not measured: said so', room, 'yes', { ...at('c'), does: 'caution' }],
    ['height measured', { ...room, egressHardwareHeightIn: 40 }, 'no', at('c')],
    ['cabinet, nothing measured', { ...room, egressRole: 'noOccupiedSpace' }, 'no', at('c')],
    ['role not known', { poolBarrierGate: false }, 'unknown', at('c')],
    [
      'role not known, too high',
      { poolBarrierGate: false, workStatus: 'new', egressHardwareHeightIn: 60 },
      'unknown',
      at('a'),
    ],
    ...onEach(
      ['mortiseLock/safe/stairReentry', 'magnet/safe/doorSwitch', 'delayedExitDevice/safe/delayed'],
      'height not measured',
      room,
      'yes',
      'c',
    ),
    [
      'room door said to be a pool gate',
      { ...room, poolBarrierGate: true, egressHardwareHeightIn: 54 },
      'yes',
      { ...at('a'), does: 'modify locksmith' },
    ],
    [
      'room door said to be a pool gate',
      { ...room, poolBarrierGate: true, egressHardwareHeightIn: 54 },
      'no',
      at('b'),
    ],
    ['sliding pool gate', { ...gate, doorType: 'gateSlide', egressHardwareHeightIn: 54 }, 'no', at('a')],
    ['a sensor has no lever', room, 'no', { clause: 'c', on: 'magnet/safe/sensor' }],
    [
      'sliding pool gate',
      { ...gate, doorType: 'gateSlide', egressHardwareHeightIn: 54 },
      'yes',
      { ...at('b'), does: 'signOff must' },
    ],
    ['just too low', { ...room, egressHardwareHeightIn: 33.9375 }, 'yes', at('a')],
    ['lowest allowed', { ...room, egressHardwareHeightIn: 34 }, 'no', at('a')],
    ['highest allowed', { ...room, egressHardwareHeightIn: 48 }, 'no', at('a')],
    ['just too high', { ...room, egressHardwareHeightIn: 48.0625 }, 'yes', at('a')],
    ['height not measured', room, 'no', at('a')],
    ['cabinet', { ...room, egressRole: 'noOccupiedSpace', egressHardwareHeightIn: 60 }, 'no', at('a')],
    ['pool gate at its limit', { ...gate, egressHardwareHeightIn: 54 }, 'no', at('a')],
    ['pool gate over its limit', { ...gate, egressHardwareHeightIn: 54.0625 }, 'yes', at('a')],
    ['pool gate too low', { ...gate, egressHardwareHeightIn: 33.9375 }, 'yes', at('a')],
    ['other gate', { ...gate, poolBarrierGate: false, egressHardwareHeightIn: 54 }, 'yes', at('a')],
    [
      'existing glass door without stiles',
      { ...room, workStatus: 'existing', leafMaterial: 'glassFrameless', egressHardwareHeightIn: 3 },
      'no',
      at('a'),
    ],
    [
      'altered glass door without stiles',
      { ...room, workStatus: 'altered', leafMaterial: 'glassFrameless', egressHardwareHeightIn: 3 },
      'no',
      at('a'),
    ],
    [
      'new glass door without stiles',
      { ...room, leafMaterial: 'glassFrameless', egressHardwareHeightIn: 3 },
      'yes',
      at('a'),
    ],
    ['existing metal door', { ...room, workStatus: 'existing', egressHardwareHeightIn: 60 }, 'yes', at('a')],
    [
      'existing coiling door',
      {
        ...room,
        workStatus: 'existing',
        doorType: 'overhead',
        leafMaterial: 'rollingSteel',
        egressHardwareHeightIn: 3,
      },
      'no',
      at('a'),
    ],
    [
      'existing grille',
      {
        ...room,
        workStatus: 'existing',
        doorType: 'grille',
        leafMaterial: 'rollingSteel',
        egressHardwareHeightIn: 3,
      },
      'no',
      at('a'),
    ],
    ...onEach(
      [
        'strikeRim/secure/free',
        'exitTrim/safe/stairReentry',
        'magnet/safe/doorSwitch',
        'delayedExitDevice/safe/delayed',
      ],
      'hardware must be worked',
      { ...room, egressHardwareHeightIn: 60 },
      'yes',
      'a',
    ),
    ...onEach(
      ['magnet/safe/sensor', 'mechanicalLock/none/keyInside'],
      'the old lever would stay where it is',
      { ...room, egressHardwareHeightIn: 60 },
      'yes',
      'a',
    ),
    ['pool gate between the limits', { ...gate, egressHardwareHeightIn: 48.0625 }, 'yes', at('b')],
    ['pool gate at its limit', { ...gate, egressHardwareHeightIn: 54 }, 'yes', at('b')],
    ['pool gate over its limit is clause a', { ...gate, egressHardwareHeightIn: 54.0625 }, 'no', at('b')],
    ['pool gate at ordinary height', { ...gate, egressHardwareHeightIn: 48 }, 'no', at('b')],
    ['other gate', { ...gate, poolBarrierGate: false, egressHardwareHeightIn: 50 }, 'no', at('b')],
    [
      'pool gate that nobody leaves by',
      { ...gate, egressRole: 'sealedOff', egressHardwareHeightIn: 50 },
      'no',
      at('b'),
    ],
    ['height not measured', gate, 'unknown', at('b')],
    ...onEach(
      [
        'gateLock/secure/free',
        'exitTrim/safe/stairReentry',
        'magnet/safe/doorSwitch',
        'delayedExitDevice/safe/delayed',
      ],
      'pool gate between the limits',
      { ...gate, egressHardwareHeightIn: 50 },
      'yes',
      'b',
    ),
    [
      'sensor at a pool gate',
      { ...gate, egressHardwareHeightIn: 50 },
      'no',
      { clause: 'b', on: 'magnet/safe/sensor' },
    ],
  ),
});
