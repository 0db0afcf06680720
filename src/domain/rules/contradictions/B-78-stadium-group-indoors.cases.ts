import { cases } from '../rule.ts';

export const B78Cases = cases(
  [
    'indoor room',
    { occupancyGroup: 'A-5', exterior: false, roomUse: 'conference' },
    'yes',
    { does: 'warn occupancyGroup' },
  ],
  ['indoor room', { occupancyGroup: 'A-5', exterior: false, roomUse: 'classroom' }, 'yes'],
  ['indoor room', { occupancyGroup: 'A-5', exterior: false, roomUse: 'courtroom' }, 'yes'],
  ['indoor room', { occupancyGroup: 'A-5', exterior: false, roomUse: 'office' }, 'yes'],
  ['indoor room', { occupancyGroup: 'A-5', exterior: false, roomUse: 'corridor' }, 'yes'],
  ['stands', { occupancyGroup: 'A-5', exterior: false, roomUse: 'site' }, 'no'],
  ['outdoors', { occupancyGroup: 'A-5', exterior: true, roomUse: 'conference' }, 'no'],
  ['hall', { occupancyGroup: 'A-3', exterior: false, roomUse: 'conference' }, 'no'],
  ['place not known', { occupancyGroup: 'A-5', roomUse: 'conference' }, 'unknown'],
);
