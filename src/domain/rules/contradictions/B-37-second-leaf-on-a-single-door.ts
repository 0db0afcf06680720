import { text } from '../../codes/sections.ts';
import { all, any, is, no, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const B37 = defineRule({
  id: 'B-37',
  title: 'A second leaf noted on a single door',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check')],
  confidence: 'project',
  why: 'A door either has a second leaf or it does not.',
  clauses: [
    {
      effect: 'finding',
      field: 'doorType',
      severity: 'warn',
      when: all(
        no('isPair'),
        any(
          is('inactiveBolts', 'manualFlush', 'automaticFlush', 'constantLatching', 'rods', 'rim'),
          yes('inactiveNeededForCapacity'),
          yes('inactiveHasHardware'),
        ),
      ),
      says: 'Facts of a second leaf are entered, yet the door type has none; check whether it is a pair.',
    },
  ],
  cases: cases(
    [
      'bolts on a single door',
      {
        doorType: 'single',
        inactiveBolts: 'manualFlush',
        inactiveNeededForCapacity: false,
        inactiveHasHardware: false,
      },
      'yes',
      { does: 'warn doorType' },
    ],
    [
      'bolts on a single door',
      {
        doorType: 'single',
        inactiveBolts: 'automaticFlush',
        inactiveNeededForCapacity: false,
        inactiveHasHardware: false,
      },
      'yes',
    ],
    [
      'bolts on a single door',
      {
        doorType: 'single',
        inactiveBolts: 'constantLatching',
        inactiveNeededForCapacity: false,
        inactiveHasHardware: false,
      },
      'yes',
    ],
    [
      'bolts on a single door',
      {
        doorType: 'single',
        inactiveBolts: 'rods',
        inactiveNeededForCapacity: false,
        inactiveHasHardware: false,
      },
      'yes',
    ],
    [
      'bolts on a single door',
      {
        doorType: 'single',
        inactiveBolts: 'rim',
        inactiveNeededForCapacity: false,
        inactiveHasHardware: false,
      },
      'yes',
    ],
    [
      'second leaf counted for width',
      {
        doorType: 'single',
        inactiveBolts: 'none',
        inactiveNeededForCapacity: true,
        inactiveHasHardware: false,
      },
      'yes',
    ],
    [
      'hardware on a second leaf',
      {
        doorType: 'single',
        inactiveBolts: 'none',
        inactiveNeededForCapacity: false,
        inactiveHasHardware: true,
      },
      'yes',
    ],
    [
      'nothing of the kind',
      {
        doorType: 'single',
        inactiveBolts: 'none',
        inactiveNeededForCapacity: false,
        inactiveHasHardware: false,
      },
      'no',
    ],
    [
      'pair',
      {
        doorType: 'pair',
        inactiveBolts: 'manualFlush',
        inactiveNeededForCapacity: true,
        inactiveHasHardware: true,
      },
      'no',
    ],
    ['door type not known', { inactiveBolts: 'manualFlush' }, 'unknown'],
  ),
});
