import { text } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';
import { rated, unrated } from './given.ts';

const inPlace = all(yes('fireRated'), is('workStatus', 'existing', 'altered'));
const altered = { ...rated, workStatus: 'altered' } as const;

export const R40 = defineRule({
  id: 'R-40',
  title: 'Round holes for surface hardware may be drilled',
  family: 'fire',
  book: 'nfpa80',
  cites: [text('nfpa80', '4.1.3', 'Preparation on site')],
  confidence: 'secondary',
  note: 'Editions before 2016 stop at 1 in except for cylinders; later ones follow the hardware’s listing. The clause number moved in 2022.',
  why: 'The fire-door standard leaves small round holes to the installer, so surface hardware needs no laboratory.',
  clauses: [
    {
      key: 'a',
      effect: 'permit',
      when: inPlace,
      of: { device: ['strikeRim', 'exitTrim', 'batteryLock'] },
      says: 'The round holes for this surface hardware may be drilled in the field, as far as its fire listing allows.',
    },
    {
      key: 'b',
      effect: 'require',
      when: inPlace,
      of: { device: ['strikeRim', 'exitTrim', 'batteryLock', 'magnet', 'delayedMagnet'] },
      items: ['holeRecord'],
      says: 'Record every hole drilled in the labeled door, with size and location, for the annual inspection.',
    },
  ],
  cases: cases(
    ...onEach(
      ['strikeRim/secure/free', 'exitTrim/secure/free', 'batteryLock/asIs/free'],
      'rated door being altered',
      altered,
      'yes',
      'a',
    ),
    [
      'existing rated door',
      { ...rated, workStatus: 'existing' },
      'yes',
      { clause: 'a', on: 'strikeRim/secure/free', does: 'permit' },
    ],
    ['new opening', { ...rated, workStatus: 'new' }, 'no', { clause: 'a', on: 'strikeRim/secure/free' }],
    [
      'unrated door',
      { ...unrated, workStatus: 'altered' },
      'no',
      { clause: 'a', on: 'strikeRim/secure/free' },
    ],
    ['new or existing not known', rated, 'unknown', { clause: 'a', on: 'strikeRim/secure/free' }],
    [
      'a recessed strike is not waved through',
      altered,
      'no',
      { clause: 'a', on: 'strikeMortise/secure/free' },
    ],
    ['a magnet is judged by its own rules', altered, 'no', { clause: 'a', on: 'magnet/safe/sensor' }],
    ...onEach(
      [
        'strikeRim/secure/free',
        'exitTrim/secure/free',
        'batteryLock/asIs/free',
        'magnet/safe/sensor',
        'delayedMagnet/safe/delayed',
      ],
      'rated door being altered',
      altered,
      'yes',
      'b',
    ),
    [
      'existing rated door',
      { ...rated, workStatus: 'existing' },
      'yes',
      { clause: 'b', on: 'magnet/safe/sensor', does: ['holeRecord'] },
    ],
    ['new opening', { ...rated, workStatus: 'new' }, 'no', { clause: 'b', on: 'magnet/safe/sensor' }],
    ['unrated door', { ...unrated, workStatus: 'altered' }, 'no', { clause: 'b', on: 'magnet/safe/sensor' }],
    ['new or existing not known', rated, 'unknown', { clause: 'b', on: 'magnet/safe/sensor' }],
    [
      'a lock in its old preparation drills nothing',
      altered,
      'no',
      { clause: 'b', on: 'mortiseLock/secure/free' },
    ],
  ),
});
