import { text } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const N02 = defineRule({
  id: 'N-02',
  title: 'Set hours need a lock that a clock can hold',
  family: 'needs',
  book: 'project',
  cites: [text('project', '', 'Owner’s wish')],
  confidence: 'project',
  why: 'A mechanical lock has to be worked by hand every morning and evening.',
  clauses: [
    {
      effect: 'prohibit',
      when: yes('wishScheduledUnlock'),
      of: { family: ['mechanical', 'none'] },
      says: 'It is to stand unlocked at set hours, and nothing but a hand can lock and unlock it.',
    },
  ],
  cases: cases(
    [
      'scheduled unlock wished',
      { wishScheduledUnlock: true },
      'yes',
      { on: 'mechanicalLock/none/free', does: 'prohibit' },
    ],
    ['no lock cannot lock again', { wishScheduledUnlock: true }, 'yes', { on: 'noLock/none/free' }],
    ['no schedule', { wishScheduledUnlock: false }, 'no', { on: 'mechanicalLock/none/free' }],
    [
      'latch retraction follows a clock',
      { wishScheduledUnlock: true },
      'no',
      { on: 'latchRetractionMotor/secure/free' },
    ],
    ['not asked', {}, 'unknown', { on: 'mechanicalLock/none/free' }],
  ),
});
