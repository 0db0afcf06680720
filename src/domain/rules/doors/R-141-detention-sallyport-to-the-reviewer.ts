import { under } from '../../codes/sections.ts';
import { all, any, is, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

const sallyport = all(yes('wishInterlock'), any(is('occupancyGroup', 'I-3'), is('roomUse', 'detention')));

export const R141 = defineRule({
  id: 'R-141',
  title: 'A detention sallyport is never decided here',
  family: 'doors',
  book: 'ibc',
  cites: [under('detentionUse')],
  confidence: 'secondary',
  why: 'The only interlock the building code names before 2027 is in detention, under its own rules.',
  clauses: [
    {
      key: 'a',
      effect: 'refer',
      when: sallyport,
      says: 'This is a detention sallyport; no device is recommended, and a reviewer decides it as a whole.',
    },
    {
      key: 'b',
      effect: 'require',
      when: sallyport,
      items: ['interlockOverride'],
      says: 'In an emergency both doors must be able to stand open together, so that people can pass straight through.',
    },
  ],
  cases: cases(
    [
      'jail vestibule',
      { wishInterlock: true, occupancyGroup: 'I-3', roomUse: 'other' },
      'yes',
      { clause: 'a', does: 'refer' },
    ],
    [
      'jail vestibule',
      { wishInterlock: true, occupancyGroup: 'I-3', roomUse: 'other' },
      'yes',
      { clause: 'b', does: ['interlockOverride'] },
    ],
    [
      'holding area of a police office',
      { wishInterlock: true, occupancyGroup: 'B', roomUse: 'detention' },
      'yes',
      { clause: 'a' },
    ],
    [
      'holding area of a police office',
      { wishInterlock: true, occupancyGroup: 'B', roomUse: 'detention' },
      'yes',
      { clause: 'b' },
    ],
    [
      'data center vestibule',
      { wishInterlock: true, occupancyGroup: 'B', roomUse: 'serverRoom' },
      'no',
      { clause: 'a' },
    ],
    [
      'data center vestibule',
      { wishInterlock: true, occupancyGroup: 'B', roomUse: 'serverRoom' },
      'no',
      { clause: 'b' },
    ],
    [
      'jail door, no interlock',
      { wishInterlock: false, occupancyGroup: 'I-3', roomUse: 'detention' },
      'no',
      { clause: 'a' },
    ],
    [
      'jail door, no interlock',
      { wishInterlock: false, occupancyGroup: 'I-3', roomUse: 'detention' },
      'no',
      { clause: 'b' },
    ],
    ['interlock not asked', { occupancyGroup: 'I-3', roomUse: 'detention' }, 'unknown', { clause: 'a' }],
    ['interlock not asked', { occupancyGroup: 'I-3', roomUse: 'detention' }, 'unknown', { clause: 'b' }],
  ),
});
