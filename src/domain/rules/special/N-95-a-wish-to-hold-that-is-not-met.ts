import { text } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

const free = 'mortiseLock/secure/free';

export const N95 = defineRule({
  id: 'N-95',
  title: 'A request to hold people that is not met',
  family: 'special',
  book: 'project',
  cites: [text('project', '', 'Owner’s wish')],
  confidence: 'project',
  why: 'An owner who asked for a delay must be told that this door has none before it is bought.',
  clauses: [
    {
      key: 'a',
      effect: 'caution',
      when: yes('wishDelayedEgress'),
      of: { not: { release: ['delayed'] } },
      says: 'The owner asked for a delay on leaving; this choice gives none.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: yes('wishControlledEgress'),
      of: { not: { release: ['controlled', 'clinical', 'attended'] } },
      says: 'The owner asked to keep people in until staff open; this choice does not do that.',
    },
  ],
  cases: cases(
    [
      'delay asked, free lever',
      { wishDelayedEgress: true },
      'yes',
      { clause: 'a', on: free, does: 'caution' },
    ],
    [
      'delay asked and given',
      { wishDelayedEgress: true },
      'no',
      { clause: 'a', on: 'delayedMagnet/safe/delayed' },
    ],
    ['no delay asked', { wishDelayedEgress: false }, 'no', { clause: 'a', on: free }],
    ['wish not recorded', {}, 'unknown', { clause: 'a', on: free }],
    [
      'control asked, free lever',
      { wishControlledEgress: true },
      'yes',
      { clause: 'b', on: free, does: 'caution' },
    ],
    ...onEach(
      ['magnet/safe/controlled', 'mortiseLock/secure/clinical', 'detentionLock/none/attended'],
      'control asked and given',
      { wishControlledEgress: true },
      'no',
      'b',
    ),
    ['no control asked', { wishControlledEgress: false }, 'no', { clause: 'b', on: free }],
    ['wish not recorded', {}, 'unknown', { clause: 'b', on: free }],
  ),
});
