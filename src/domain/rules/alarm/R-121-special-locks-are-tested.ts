import { text } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';
import { cabinet, exit } from './given.ts';

const special = [
  'magnet/safe/doorSwitch',
  'magnet/safe/sensor',
  'delayedMagnet/safe/delayed',
  'magnet/safe/controlled',
  'magnet/safe/lobby',
  'exitTrim/safe/stairReentry',
];

export const R121 = defineRule({
  id: 'R-121',
  title: 'A special lock is acceptance tested and the record kept',
  family: 'alarm',
  book: 'practice',
  cites: [text('practice', '', 'Acceptance test of special locking')],
  confidence: 'memory',
  note: 'Locks with stair release are counted with the special arrangements.',
  why: 'Each release must be seen working once, because the next time may be the fire.',
  clauses: [
    {
      effect: 'require',
      when: yes('isEgress'),
      of: { release: ['doorSwitch', 'sensor', 'delayed', 'controlled', 'lobby', 'stairReentry'] },
      items: ['acceptanceTest'],
      says: 'Before the door goes into service, test power loss, fire alarm, manual release and any timing at this door, and record the results.',
    },
  ],
  cases: cases(
    ...onEach(special, 'egress door', exit, 'yes', { does: ['acceptanceTest'] }),
    ['cabinet nobody can enter', cabinet, 'no', { on: 'magnet/safe/sensor' }],
    ['free lever', exit, 'no', { on: 'mortiseLock/secure/free' }],
    ['role not known', {}, 'unknown', { on: 'magnet/safe/sensor' }],
  ),
});
