import { cases } from '../rule.ts';

export const N01Cases = cases(
  [
    'reader on the secure side only',
    { readerSides: 'secure' },
    'yes',
    { clause: 'b', on: 'mortiseLock/safe/credentialOut', does: 'prohibit' },
  ],
  ['no reader', { readerSides: 'none' }, 'yes', { clause: 'b', on: 'boltMotor/secure/credentialOut' }],
  [
    'readers on both sides',
    { readerSides: 'both' },
    'no',
    { clause: 'b', on: 'mortiseLock/safe/credentialOut' },
  ],
  [
    'the inside reader only records',
    { readerSides: 'recordOut' },
    'no',
    { clause: 'b', on: 'mortiseLock/safe/credentialOut' },
  ],
  ['a free lever', { readerSides: 'secure' }, 'no', { clause: 'b', on: 'mortiseLock/safe/free' }],
  ['not asked yet', {}, 'unknown', { clause: 'b', on: 'mortiseLock/safe/credentialOut' }],
  [
    'reader on the secure side',
    { readerSides: 'secure' },
    'yes',
    { clause: 'a', on: 'mechanicalLock/none/free', does: 'prohibit' },
  ],
  ['readers on both sides', { readerSides: 'both' }, 'yes', { clause: 'a', on: 'mechanicalLock/none/free' }],
  [
    'sealed off: nothing is read',
    { readerSides: 'secure', egressRole: 'sealedOff' },
    'no',
    { clause: 'a', on: 'mechanicalLock/none/free' },
  ],
  [
    'cabinet with a reader',
    { readerSides: 'secure', egressRole: 'noOccupiedSpace' },
    'yes',
    { clause: 'a', on: 'mechanicalLock/none/free' },
  ],
  ['no lock answers nothing', { readerSides: 'secure' }, 'yes', { clause: 'a', on: 'noLock/none/free' }],
  ['no reader wanted', { readerSides: 'none' }, 'no', { clause: 'a', on: 'mechanicalLock/none/free' }],
  [
    'an electric strike answers to a reader',
    { readerSides: 'secure' },
    'no',
    { clause: 'a', on: 'strikeMortise/secure/free' },
  ],
  [
    'a detention lock does not',
    { readerSides: 'secure' },
    'yes',
    { clause: 'a', on: 'detentionLock/none/attended' },
  ],
  ['not asked yet', {}, 'unknown', { clause: 'a', on: 'mechanicalLock/none/free' }],
);
