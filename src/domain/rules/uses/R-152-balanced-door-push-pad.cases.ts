import { cases } from '../rule.ts';

export const R152Cases = cases(
  [
    'hall for 60',
    {
      doorType: 'balanced',
      egressRole: 'exteriorExit',
      latch: 'rimExit',
      occupancyGroup: 'A-3',
      occupantLoad: 60,
      roomUse: 'conference',
    },
    'yes',
    { on: 'exitTrim/secure/free', does: ['pushPadDevice'] },
  ],
  [
    'lever lock is not meant',
    {
      doorType: 'balanced',
      egressRole: 'exteriorExit',
      latch: 'rimExit',
      occupancyGroup: 'A-3',
      occupantLoad: 60,
      roomUse: 'conference',
    },
    'no',
    { on: 'mortiseLock/secure/free' },
  ],
  [
    'hinged door of the hall',
    {
      doorType: 'single',
      egressRole: 'exteriorExit',
      latch: 'rimExit',
      occupancyGroup: 'A-3',
      occupantLoad: 60,
      roomUse: 'conference',
    },
    'no',
    { on: 'exitTrim/secure/free' },
  ],
  [
    'shop',
    {
      doorType: 'balanced',
      egressRole: 'exteriorExit',
      latch: 'rimExit',
      occupancyGroup: 'M',
      occupantLoad: 60,
      roomUse: 'other',
      overcurrentDevices: false,
    },
    'no',
    { on: 'exitTrim/secure/free' },
  ],
  [
    'load not known',
    {
      doorType: 'balanced',
      egressRole: 'exteriorExit',
      latch: 'rimExit',
      occupancyGroup: 'A-3',
      roomUse: 'conference',
    },
    'unknown',
    { on: 'exitTrim/secure/free' },
  ],
);
