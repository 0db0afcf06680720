import { onEach } from '../onEach.ts';
import { doing } from '../doing.ts';
import { cases, type CaseRow } from '../rule.ts';

const door = { egressRole: 'exteriorExit', existingArrangement: 'buttonBeforeBar' } as const;

const rows = (clause: string): readonly CaseRow[] => [
  ['button before the bar', door, 'yes', { clause }],
  ['bar alone', { ...door, existingArrangement: 'freeBar' }, 'no', { clause }],
  ['cabinet', { ...door, egressRole: 'noOccupiedSpace' }, 'no', { clause }],
  ['not surveyed', { egressRole: 'exteriorExit' }, 'unknown', { clause }],
];

export const R80Cases = cases(
  ...doing({ b: 'modify security' }, [
    ...rows('b'),
    ...onEach(
      ['magnet/safe/buttonOnly', 'boltMotor/safe/buttonOnly'],
      'leaf with a bar',
      { egressRole: 'exteriorExit', latch: 'rimExit', existingArrangement: 'freeBar' },
      'yes',
      'c',
    ),
    [
      'found with a button',
      { ...door, latch: 'bored', panicPresent: false },
      'yes',
      { clause: 'c', on: 'magnet/safe/buttonOnly', does: 'prohibit' },
    ],
    [
      'leaf with a lever',
      { egressRole: 'exteriorExit', latch: 'bored', panicPresent: false, existingArrangement: 'freeLever' },
      'no',
      { clause: 'c', on: 'magnet/safe/buttonOnly' },
    ],
    [
      'cabinet',
      { ...door, egressRole: 'noOccupiedSpace' },
      'no',
      { clause: 'c', on: 'magnet/safe/buttonOnly' },
    ],
    [
      'not surveyed',
      { egressRole: 'exteriorExit' },
      'unknown',
      { clause: 'c', on: 'magnet/safe/buttonOnly' },
    ],
    ...onEach(['magnet/safe/sensor', 'magnet/safe/doorSwitch'], 'another release', door, 'no', 'c'),
  ]),
);
