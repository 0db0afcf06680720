import { under } from '../../codes/sections.ts';
import { all, ibc, is } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

const shared = all(ibc(), is('roomUse', 'multiToilet'));

export const R146 = defineRule({
  id: 'R-146',
  title: 'A multi-user restroom is not locked from inside',
  family: 'uses',
  book: 'ibc',
  cites: [under('toiletRooms')],
  confidence: 'read',
  note: 'Read in the 2015 text; the clause is unchanged since 2012 as far as known.',
  why: 'One person must not be able to lock others in or out of a shared room.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: shared,
      of: { release: ['keyInside'] },
      says: 'The door of a shared restroom may not have a lock operated from inside.',
    },
    {
      key: 'b',
      effect: 'require',
      when: shared,
      items: ['noInsideLock'],
      says: 'Use only a latch with no thumbturn, button or bolt on the inside.',
    },
    {
      key: 'c',
      effect: 'modify',
      trade: 'locksmith',
      when: all(shared, is('latch', 'mortiseDeadbolt', 'boredPlusDeadbolt', 'deadboltOnly')),
      says: 'The bolt on this door can be thrown from inside; remove it or blank its thumbturn.',
    },
    {
      key: 'd',
      effect: 'finding',
      field: 'lockFunction',
      severity: 'warn',
      when: all(shared, is('lockFunction', 'office')),
      says: 'An office-function lock can be set from inside, and a shared restroom may not have that; change the function or check what the room is.',
    },
  ],
  cases: cases(
    [
      'shared toilet, key inside',
      { roomUse: 'multiToilet' },
      'yes',
      { clause: 'a', on: 'mechanicalLock/none/keyInside', does: 'prohibit' },
    ],
    [
      'shared toilet, free lever',
      { roomUse: 'multiToilet' },
      'no',
      { clause: 'a', on: 'mechanicalLock/none/free' },
    ],
    [
      'single toilet',
      { roomUse: 'singleToilet' },
      'no',
      { clause: 'a', on: 'mechanicalLock/none/keyInside' },
    ],
    [
      'IBC not adopted',
      { roomUse: 'multiToilet' },
      'no',
      { clause: 'a', on: 'mechanicalLock/none/keyInside', basis: { ibc: null } },
    ],
    ['room not known', {}, 'unknown', { clause: 'a', on: 'mechanicalLock/none/keyInside' }],
    ['shared toilet', { roomUse: 'multiToilet' }, 'yes', { clause: 'b', does: ['noInsideLock'] }],
    ['single toilet', { roomUse: 'singleToilet' }, 'no', { clause: 'b' }],
    ['IBC not adopted', { roomUse: 'multiToilet' }, 'no', { clause: 'b', basis: { ibc: null } }],
    ['room not known', {}, 'unknown', { clause: 'b' }],
    [
      'shared toilet with a bolt',
      { roomUse: 'multiToilet', latch: 'mortiseDeadbolt' },
      'yes',
      { clause: 'c', does: 'modify locksmith' },
    ],
    [
      'shared toilet with a bolt',
      { roomUse: 'multiToilet', latch: 'boredPlusDeadbolt' },
      'yes',
      { clause: 'c' },
    ],
    ['shared toilet with a bolt', { roomUse: 'multiToilet', latch: 'deadboltOnly' }, 'yes', { clause: 'c' }],
    ['shared toilet with a latch', { roomUse: 'multiToilet', latch: 'mortise' }, 'no', { clause: 'c' }],
    [
      'single toilet with a bolt',
      { roomUse: 'singleToilet', latch: 'mortiseDeadbolt' },
      'no',
      { clause: 'c' },
    ],
    [
      'IBC not adopted',
      { roomUse: 'multiToilet', latch: 'deadboltOnly' },
      'no',
      { clause: 'c', basis: { ibc: null } },
    ],
    ['latch not seen', { roomUse: 'multiToilet' }, 'unknown', { clause: 'c' }],
    [
      'office function',
      { roomUse: 'multiToilet', lockFunction: 'office' },
      'yes',
      { clause: 'd', does: 'warn lockFunction' },
    ],
    ['passage function', { roomUse: 'multiToilet', lockFunction: 'passage' }, 'no', { clause: 'd' }],
    ['office function on an office', { roomUse: 'office', lockFunction: 'office' }, 'no', { clause: 'd' }],
    [
      'IBC not adopted',
      { roomUse: 'multiToilet', lockFunction: 'office' },
      'no',
      { clause: 'd', basis: { ibc: null } },
    ],
    ['function not seen', { roomUse: 'multiToilet' }, 'unknown', { clause: 'd' }],
  ),
});
