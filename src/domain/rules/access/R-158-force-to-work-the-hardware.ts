import { text, under } from '../../codes/sections.ts';
import { all, any, ibc, is, over, yes } from '../../logic/condition.ts';
import { nothingCloses } from '../fire/given.ts';
import { defineRule } from '../rule.ts';

export const R158 = defineRule({
  id: 'R-158',
  title: 'Force to work the hardware',
  family: 'access',
  book: 'ada',
  cites: [text('ada', '309.4', 'Operation'), text('ada', '404.2.8', 'Closing speed'), under('openingForce')],
  confidence: 'secondary',
  why: 'The federal and the model text name different forces, and some states enforce the smaller one.',
  clauses: [
    {
      key: 'a',
      effect: 'caution',
      when: all(yes('accessibleRoute'), over('hardwareForceLbf', 'operableForceLbf')),
      says: 'The hardware takes {hardwareForceLbf} to work; the federal standard says 5 lbf on an accessible door, the newer model code 15. Ask which one is enforced here.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: all(ibc({ from: 2021, readTo: 2024 }), over('hardwareForceLbf', 'unlatchingForceLbf')),
      says: 'The hardware takes {hardwareForceLbf}, and nobody may need more than 15 lbf of push or pull to unlatch.',
    },
    {
      key: 'c',
      effect: 'caution',
      // Only a closer that is set anyway: one that comes new, or one on a door that is being worked on.
      when: all(
        yes('accessibleRoute'),
        yes('isSwinging'),
        any(nothingCloses, all(is('closing', 'selfClosing'), is('workStatus', 'new', 'altered'))),
      ),
      says: 'Set the closer so that the leaf takes at least 5 s from 90 degrees to 12 degrees.',
    },
  ],
});
