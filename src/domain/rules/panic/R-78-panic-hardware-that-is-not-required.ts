import { under } from '../../codes/sections.ts';
import { all, is, no, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { doing } from '../doing.ts';
import { cases, type CaseRow, defineRule } from '../rule.ts';

const office = {
  egressRole: 'exteriorExit',
  doorType: 'single',
  occupancyGroup: 'B',
  roomUse: 'office',
  occupantLoad: 20,
  latch: 'rimExit',
} as const;
const around = (clause: string, facts: CaseRow[1], on?: string): readonly CaseRow[] => {
  const at = on === undefined ? { clause } : { clause, on };
  return [
    ['bar not needed', { ...office, ...facts }, 'yes', at],
    ['bar needed', { ...office, ...facts, occupancyGroup: 'A-3', occupantLoad: 50 }, 'no', at],
    ['no bar', { ...office, ...facts, latch: 'bored', panicPresent: false }, 'no', at],
    ['cabinet', { ...office, ...facts, egressRole: 'noOccupiedSpace' }, 'no', at],
    [
      'latch not known',
      {
        egressRole: 'exteriorExit',
        doorType: 'single',
        occupancyGroup: 'B',
        roomUse: 'office',
        occupantLoad: 20,
        ...facts,
      },
      'unknown',
      at,
    ],
  ];
};

export const R78 = defineRule({
  id: 'R-78',
  title: 'Panic hardware that need not be there must still work',
  family: 'panic',
  book: 'ibc',
  cites: [under('freeEgressIbc'), under('unlatching'), under('locksAndLatches')],
  confidence: 'secondary',
  why: 'People trust a bar they can see; one that opens nothing is worse than none.',
  clauses: [
    {
      key: 'a',
      effect: 'caution',
      when: all(yes('isEgress'), yes('hasExitDevice'), no('panicRequired')),
      says: 'None of the rules checked here asks for the bar on this door. As long as it is there, one push must open the door.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: all(yes('isEgress'), yes('hasExitDevice'), no('panicRequired'), yes('mainDoor')),
      of: { release: ['keyInside'] },
      says: 'A key lock beside a push bar on the main door: a reviewer must accept it, because the bar does nothing while the key has locked the door.',
    },
    {
      key: 'c',
      effect: 'finding',
      field: 'existingArrangement',
      severity: 'warn',
      when: all(
        yes('isEgress'),
        yes('hasExitDevice'),
        no('panicRequired'),
        is('existingArrangement', 'deadboltPlusLatch', 'padlock', 'slideBolt', 'doubleCylinder', 'barricade'),
      ),
      says: 'Something else locks the door beside its push bar today, so a push on the bar does not open it; have it taken off.',
    },
    {
      key: 'd',
      effect: 'caution',
      when: all(yes('isEgress'), yes('hasExitDevice'), no('panicRequired')),
      of: { release: ['sensor'] },
      says: 'The bar alone would not release this lock; give the bar a switch of its own, because people will push it and nothing else.',
    },
  ],
  cases: cases(
    ...doing({ a: 'caution', b: 'signOff must' }, [
      ...around('a', {}),
      ...around('b', { mainDoor: true }, 'mechanicalLock/none/keyInside'),
      [
        'side door',
        { ...office, mainDoor: false },
        'no',
        { clause: 'b', on: 'mechanicalLock/none/keyInside' },
      ],
      ...onEach(
        ['mechanicalLock/none/free', 'exitTrim/secure/free'],
        'no key',
        { ...office, mainDoor: true },
        'no',
        'b',
      ),
      ...around('c', { existingArrangement: 'padlock' }),
      ...around('c', { existingArrangement: 'slideBolt' }),
      ...(['deadboltPlusLatch', 'doubleCylinder', 'barricade'] as const).map(
        (existingArrangement): CaseRow => [
          existingArrangement,
          { ...office, existingArrangement },
          'yes',
          { clause: 'c', does: 'warn existingArrangement' },
        ],
      ),
      ['the bar alone', { ...office, existingArrangement: 'freeBar' }, 'no', { clause: 'c' }],
      ...around('d', {}, 'magnet/safe/sensor'),
      ...onEach(['boltMotor/safe/sensor'], 'bolt with sensor', office, 'yes', {
        clause: 'd',
        does: 'caution',
      }),
      ...onEach(
        ['magnet/safe/doorSwitch', 'boltMotor/safe/doorSwitch', 'exitTrim/secure/free'],
        'the bar releases it',
        office,
        'no',
        'd',
      ),
    ]),
  ),
});
