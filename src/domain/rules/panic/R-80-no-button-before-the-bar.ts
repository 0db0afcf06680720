import { text, under } from '../../codes/sections.ts';
import { all, any, is, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { doing } from '../doing.ts';
import { cases, type CaseRow, defineRule } from '../rule.ts';

const door = { egressRole: 'exteriorExit', existingArrangement: 'buttonBeforeBar' } as const;
const rows = (clause: string): readonly CaseRow[] => [
  ['button before the bar', door, 'yes', { clause }],
  ['bar alone', { ...door, existingArrangement: 'freeBar' }, 'no', { clause }],
  ['cabinet', { ...door, egressRole: 'noOccupiedSpace' }, 'no', { clause }],
  ['not surveyed', { egressRole: 'exteriorExit' }, 'unknown', { clause }],
];

export const R80 = defineRule({
  id: 'R-80',
  title: 'No button before the bar works',
  family: 'panic',
  book: 'osha',
  cites: [text('osha', '1910.36(d)', 'Letter of 12 March 1981'), under('panicHardware'), under('unlatching')],
  confidence: 'read',
  why: 'The bar tells people that a push is enough; a button that must come first breaks that promise in the dark.',
  clauses: [
    {
      key: 'b',
      effect: 'modify',
      trade: 'security',
      when: all(yes('isEgress'), is('existingArrangement', 'buttonBeforeBar')),
      says: 'Rewire the lock so that the bar opens the door without the button.',
    },
    {
      key: 'c',
      effect: 'prohibit',
      when: all(yes('isEgress'), any(yes('hasExitDevice'), is('existingArrangement', 'buttonBeforeBar'))),
      of: { release: ['buttonOnly'] },
      says: 'There is a push bar on this door, and with this lock it would work only after a button is pressed.',
    },
  ],
  cases: cases(
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
  ),
});
