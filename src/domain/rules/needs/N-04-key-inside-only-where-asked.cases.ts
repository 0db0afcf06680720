import { cases } from '../rule.ts';

export const N04Cases = cases(
  ['no such wish', { wishKeyLock: false }, 'yes', { on: 'mechanicalLock/none/keyInside', does: 'prohibit' }],
  ['owner asks for it', { wishKeyLock: true }, 'no', { on: 'mechanicalLock/none/keyInside' }],
  ['an ordinary lock is not meant', { wishKeyLock: false }, 'no', { on: 'mechanicalLock/none/free' }],
  ['not asked', {}, 'unknown', { on: 'mechanicalLock/none/keyInside' }],
);
