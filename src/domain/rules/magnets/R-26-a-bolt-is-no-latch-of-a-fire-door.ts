import { text, under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, type CaseRow, defineRule } from '../rule.ts';

const rated = { fireRatingMin: 45, latch: 'pushPull' } as const;
const on = 'boltMotor/safe/sensor';

export const R26 = defineRule({
  id: 'R-26',
  title: 'An electric bolt is not a fire door latch',
  family: 'magnets',
  book: 'nfpa80',
  cites: [under('fireDoorLatching'), text('nfpa80', '6.4.4', 'Latching hardware')],
  confidence: 'memory',
  why: 'In a fire the leaf must latch by its own spring each time it closes; a bolt waits for power and a command.',
  clauses: [
    {
      effect: 'prohibit',
      when: all(yes('fireRated'), is('latch', 'pushPull', 'roller', 'deadboltOnly', 'hookbolt', 'patch')),
      of: { family: ['bolt'] },
      says: 'Nothing on this fire door is self-latching, and an electric bolt cannot take its place.',
    },
  ],
  cases: cases(
    ...onEach(
      ['boltMotor/safe/sensor', 'boltSolenoid/secure/none', 'glassPatchLock/safe/doorSwitch'],
      'push/pull fire door',
      rated,
      'yes',
    ),
    ...(['roller', 'deadboltOnly', 'hookbolt', 'patch'] as const).map(
      (latch): CaseRow => [`latch ${latch}`, { ...rated, latch }, 'yes', { on, does: 'prohibit' }],
    ),
    ['spring latch stays on the leaf', { ...rated, latch: 'mortise' }, 'no', { on }],
    ['unrated', { ...rated, fireRatingMin: 0, wallRatingMin: 0 }, 'no', { on }],
    ['latch not known', { fireRatingMin: 45 }, 'unknown', { on }],
    ...onEach(['magnet/safe/sensor', 'mortiseLock/secure/free'], 'no bolt', rated, 'no'),
  ),
});
