import { text, under as cite } from '../../codes/sections.ts';
import { all, any, atMost, is, over, yes } from '../../logic/condition.ts';
import { type CaseRow, cases, defineRule } from '../rule.ts';

const leaf = { egressRole: 'exitAccess', doorType: 'single', leafWidthIn: 36 } as const;

export const B88 = defineRule({
  id: 'B-88',
  title: 'More people than the leaf has capacity for',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), cite('egressCapacity')],
  confidence: 'inferred',
  note: 'Worked out from 0.15 in a person, the smallest width the code counts with, and the whole leaf as clear width, so that only what no building passes is named.',
  why: 'A door passes one person for each 0.15 to 0.2 in of its clear width; far more on one door means that the load of the room was entered, not that of the door.',
  clauses: [
    {
      effect: 'finding',
      field: 'occupantLoad',
      severity: 'warn',
      when: all(
        yes('isEgress'),
        any(
          all(
            is('doorType', 'single', 'balanced', 'doubleActing'),
            any(
              all(atMost('leafWidthIn', 36), over('occupantLoad', 240)),
              all(atMost('leafWidthIn', 48), over('occupantLoad', 320)),
            ),
          ),
          all(
            is('doorType', 'pair'),
            any(
              all(atMost('leafWidthIn', 36), over('occupantLoad', 480)),
              all(atMost('leafWidthIn', 48), over('occupantLoad', 640)),
            ),
          ),
        ),
      ),
      says: 'A leaf of {leafWidthIn} does not have capacity for {occupantLoad} in any building; enter the share of this door, or correct width or load.',
    },
  ],
  cases: cases(
    ...(['single', 'balanced', 'doubleActing'] as const).flatMap((doorType): readonly CaseRow[] => [
      ['36 in, 241 people', { ...leaf, doorType, occupantLoad: 241 }, 'yes', { does: 'warn occupantLoad' }],
      ['36 in, 240 people', { ...leaf, doorType, occupantLoad: 240 }, 'no'],
      ['48 in, 321 people', { ...leaf, doorType, leafWidthIn: 48, occupantLoad: 321 }, 'yes'],
      ['48 in, 320 people', { ...leaf, doorType, leafWidthIn: 48, occupantLoad: 320 }, 'no'],
    ]),
    ['just over 36 in, 241 people', { ...leaf, leafWidthIn: 36.0625, occupantLoad: 241 }, 'no'],
    ['wider than 48 in', { ...leaf, leafWidthIn: 48.0625, occupantLoad: 900 }, 'no'],
    ['pair of 36 in, 481 people', { ...leaf, doorType: 'pair', occupantLoad: 481 }, 'yes'],
    ['pair of 36 in, 480 people', { ...leaf, doorType: 'pair', occupantLoad: 480 }, 'no'],
    [
      'pair just over 36 in, 481 people',
      { ...leaf, doorType: 'pair', leafWidthIn: 36.0625, occupantLoad: 481 },
      'no',
    ],
    ['pair of 48 in, 641 people', { ...leaf, doorType: 'pair', leafWidthIn: 48, occupantLoad: 641 }, 'yes'],
    ['pair of 48 in, 640 people', { ...leaf, doorType: 'pair', leafWidthIn: 48, occupantLoad: 640 }, 'no'],
    ['pair wider than 48 in', { ...leaf, doorType: 'pair', leafWidthIn: 60, occupantLoad: 900 }, 'no'],
    ['pair just over 48 in', { ...leaf, doorType: 'pair', leafWidthIn: 48.0625, occupantLoad: 900 }, 'no'],
    ['sliding door', { ...leaf, doorType: 'slidingAutomatic', occupantLoad: 900 }, 'no'],
    ['cabinet', { ...leaf, egressRole: 'noOccupiedSpace', occupantLoad: 900 }, 'no'],
    ['load not known', { ...leaf }, 'unknown'],
  ),
});
