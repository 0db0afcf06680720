import { under } from '../../codes/sections.ts';
import { all, any, atLeast, ibc, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R124 = defineRule({
  id: 'R-124',
  title: 'No sensor release where panic hardware is required',
  family: 'health',
  book: 'ibc',
  cites: [under('panicHardware'), under('sensorRelease'), under('hardwareRelease')],
  confidence: 'secondary',
  note: 'Three trade articles agree on the change of 2024. A push-and-pull door counts too, because the lock itself makes panic hardware required. The editions 2018 and 2021 are judged by R-18.',
  why: 'Since 2024 the door of a crowd is released by its bar, not by a sensor that has to notice people.',
  clauses: [
    {
      effect: 'prohibit',
      when: all(
        ibc({ from: 2024, readTo: 2024 }),
        any(
          yes('panicWithLock'),
          all(
            yes('isEgress'),
            yes('isSwinging'),
            any(yes('groupA'), yes('groupE')),
            atLeast('occupantLoad', 'panicLoadIbc'),
          ),
        ),
      ),
      of: { release: ['sensor'] },
      says: 'This door must have panic hardware, and since IBC 2024 the bar itself releases the lock; a sensor may not.',
    },
  ],
});
