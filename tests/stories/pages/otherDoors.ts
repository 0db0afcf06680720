import type { Finger } from './finger.ts';

/** What is answered at a door, in order: a button, or a figure with the question it is typed under. */
type Answer = string | RegExp | { readonly asked: string; readonly typed: string };

const noneOfThese = 'None of these, or I can’t tell: ask one by one';

interface OtherDoor {
  readonly name: string;
  readonly answers: readonly Answer[];
}

/** Doors that cost more than an office door, each answered to the end in the building of the story. */
export const otherDoors: readonly OtherDoor[] = [
  {
    name: 'stair door, labeled, rim exit device, locked on the stair side',
    answers: [
      'Controlled',
      /^As usual: /,
      /^As usual: /,
      'Push bar latching at the jamb (rim)',
      '1-1/2 HR on leaf and frame',
      'No cutout, sounds hollow, nothing pushes on the latch',
      noneOfThese,
      'Exit stair, shaft or passageway',
      noneOfThese,
      'Door into an exit stair',
      'Yes',
      'Lock against entry from the stair',
      'Corridor',
      { asked: 'How many stories does the stair serve?', typed: '3' },
      'One point inside the main entrance',
      'No',
      'No',
      'Yes',
      'RHR',
      'Butt hinges',
      /^1\/2", /,
    ],
  },
  {
    name: 'storefront pair at the main entrance, rods on both leaves',
    answers: [
      'Controlled',
      noneOfThese,
      /^Reader outside, open at set hours; no lockdown/,
      noneOfThese,
      /^Storefront pair, narrow stile/,
      'No',
      'Push bar with rods at top and bottom',
      'No label on leaf or frame, and none is called for',
      'Yes',
      'Vertical rods',
      'No',
      noneOfThese,
      'No',
      'Closer, no operator, not held open',
      'Exterior wall, not rated',
      'Glass or curtain wall',
      noneOfThese,
      'Exit door to the outside',
      'Lobby or entrance hall',
      'Yes',
      { asked: 'For how many people is the whole building calculated?', typed: '120' },
      'RHR',
      'Pivots',
      /^1\/2", /,
    ],
  },
  {
    name: 'frameless glass entrance of a tenant, patch fittings',
    answers: [
      'Controlled',
      noneOfThese,
      /^Reader outside, locked at all hours/,
      noneOfThese,
      /^All-glass leaf without a frame/,
      noneOfThese,
      'No',
      'No label on leaf or frame, and none is called for',
      'Patch or floor lock on glass',
      'Entrance seen by visitors, heavy use',
      'No lock today',
      'Closer, no operator, not held open',
      'Ordinary inside wall of glass, not rated',
      noneOfThese,
      'Along the egress path of a room or corridor',
      'Tenant or suite entrance',
      'Patch fittings only',
      'LH',
    ],
  },
];

export async function answerAll(finger: Finger, { answers }: OtherDoor): Promise<void> {
  for (const one of answers) {
    if (typeof one === 'string' || one instanceof RegExp) await finger.answer(one);
    else await finger.figure(one.asked, one.typed);
  }
}
