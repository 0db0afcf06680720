import { text, under } from '../../codes/sections.ts';
import { all, any, is, no, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';
import { without } from '../without.ts';

const slider = {
  egressRole: 'exteriorExit',
  doorType: 'slidingAutomatic',
  operator: 'none',
  breakaway: true,
} as const;
const swing = { ...slider, doorType: 'single', operator: 'fullPower' } as const;
const plain = { ...swing, operator: 'none' } as const;
const cabinet = { ...slider, egressRole: 'noOccupiedSpace' } as const;
const bolt = 'boltMotor/safe/sensor';

export const R115 = defineRule({
  id: 'R-115',
  title: 'Power doors open by hand when the power is off',
  family: 'rooms',
  book: 'ibc',
  cites: [under('powerDoors'), text('bhma', 'A156.10, A156.19, A156.38', 'Power doors')],
  confidence: 'secondary',
  note: 'Low-energy and power-assist swing doors only carry a note, because they are ordinary doors once pushed by hand.',
  why: 'A door that needs a motor to open is a wall in a power outage.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: all(yes('isEgress'), is('doorType', 'slidingAutomatic')),
      items: ['openByHand', 'acceptanceTest'],
      says: 'Without power the leaves open by hand to the full required width with at most 50 lbf to start them, and swing out from any position when pushed.',
    },
    {
      key: 'b',
      effect: 'modify',
      trade: 'doorSupplier',
      when: all(yes('isEgress'), is('doorType', 'slidingAutomatic'), no('breakaway')),
      says: 'These leaves do not swing out; a sliding door in a means of egress needs breakaway leaves.',
    },
    {
      key: 'g',
      effect: 'require',
      when: all(yes('isEgress'), is('doorType', 'slidingAutomatic'), no('breakaway')),
      items: ['breakawayHardware'],
      says: 'Breakaway leaves that swing out to the full required width are part of the work.',
    },
    {
      key: 'c',
      effect: 'caution',
      when: all(yes('isEgress'), is('doorType', 'slidingAutomatic')),
      of: { family: ['magnet', 'bolt'] },
      says: 'This lock must not hold the leaves against swinging out; ask the door manufacturer for a lock that works with the breakaway.',
    },
    {
      key: 'd',
      effect: 'signOff',
      grade: 'must',
      when: all(yes('isEgress'), any(is('doorType', 'slidingAutomatic'), is('operator', 'fullPower'))),
      says: 'A reviewer signs for the power door: opening by hand, breakaway and what the lock does to both.',
    },
    {
      key: 'e',
      effect: 'signOff',
      grade: 'note',
      when: all(yes('isEgress'), is('operator', 'lowEnergy', 'powerAssist')),
      says: 'With its operator off this door must still open by hand like any other.',
    },
    {
      key: 'f',
      effect: 'require',
      when: all(yes('isEgress'), is('operator', 'fullPower')),
      items: ['acceptanceTest'],
      says: 'Test that without power the door opens by hand with at most 50 lbf to start it, then like an ordinary door.',
    },
  ],
  cases: cases(
    ['sliding entrance', slider, 'yes', { clause: 'a', does: ['openByHand', 'acceptanceTest'] }],
    ['swing door', plain, 'no', { clause: 'a' }],
    ['cabinet', cabinet, 'no', { clause: 'a' }],
    ['type not known', { egressRole: 'exteriorExit' }, 'unknown', { clause: 'a' }],
    ['no breakaway', { ...slider, breakaway: false }, 'yes', { clause: 'b', does: 'modify doorSupplier' }],
    ['breakaway', slider, 'no', { clause: 'b' }],
    ['swing door', { ...plain, breakaway: false }, 'no', { clause: 'b' }],
    ['cabinet', { ...cabinet, breakaway: false }, 'no', { clause: 'b' }],
    ['breakaway not known', without(slider, 'breakaway'), 'unknown', { clause: 'b' }],
    ['no breakaway', { ...slider, breakaway: false }, 'yes', { clause: 'g', does: ['breakawayHardware'] }],
    ['breakaway', slider, 'no', { clause: 'g' }],
    ['swing door', { ...plain, breakaway: false }, 'no', { clause: 'g' }],
    ['cabinet', { ...cabinet, breakaway: false }, 'no', { clause: 'g' }],
    ['breakaway not known', without(slider, 'breakaway'), 'unknown', { clause: 'g' }],
    ...onEach([bolt, 'magnet/safe/sensor'], 'sliding entrance', slider, 'yes', {
      clause: 'c',
      does: 'caution',
    }),
    ['a mortise lock', slider, 'no', { clause: 'c', on: 'mortiseLock/secure/free' }],
    ['swing door', plain, 'no', { clause: 'c', on: bolt }],
    ['cabinet', cabinet, 'no', { clause: 'c', on: bolt }],
    ['type not known', { egressRole: 'exteriorExit' }, 'unknown', { clause: 'c', on: bolt }],
    ['sliding entrance', slider, 'yes', { clause: 'd', does: 'signOff must' }],
    ['full-power swing door', swing, 'yes', { clause: 'd' }],
    ['low-energy swing door', { ...swing, operator: 'lowEnergy' }, 'no', { clause: 'd' }],
    ['plain door', plain, 'no', { clause: 'd' }],
    ['cabinet', cabinet, 'no', { clause: 'd' }],
    ['operator not known', without(plain, 'operator'), 'unknown', { clause: 'd' }],
    [
      'low-energy swing door',
      { ...swing, operator: 'lowEnergy' },
      'yes',
      { clause: 'e', does: 'signOff note' },
    ],
    ['power assist', { ...swing, operator: 'powerAssist' }, 'yes', { clause: 'e' }],
    ['plain door', plain, 'no', { clause: 'e' }],
    ['cabinet', { ...cabinet, operator: 'lowEnergy' }, 'no', { clause: 'e' }],
    ['operator not known', without(plain, 'operator'), 'unknown', { clause: 'e' }],
    ['full-power swing door', swing, 'yes', { clause: 'f', does: ['acceptanceTest'] }],
    ['low-energy swing door', { ...swing, operator: 'lowEnergy' }, 'no', { clause: 'f' }],
    ['cabinet', { ...swing, egressRole: 'noOccupiedSpace' }, 'no', { clause: 'f' }],
    ['operator not known', without(plain, 'operator'), 'unknown', { clause: 'f' }],
  ),
});
