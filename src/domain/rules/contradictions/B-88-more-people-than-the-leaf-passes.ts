import { text, under as cite } from '../../codes/sections.ts';
import { all, any, atMost, is, over, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

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
});
