import type { PageId } from './pages.ts';

/** The first-run tour through the demo building. Each step speaks of a page, which is then shown. */
export interface TourStep {
  /** The page, as the button before it calls it. */
  readonly name: string;
  readonly title: string;
  readonly says: string;
  readonly page: PageId;
  /** The opening shown there; '' where the step speaks of none. */
  readonly openingId: string;
}

/** An opening of the demo building that two steps speak of. */
const shownOpening = 'opening-103';

const steps: readonly TourStep[] = [
  {
    name: 'the schedule',
    title: 'An invented building.',
    says: 'Change anything; Undo reverses it. Start your own project under Files.',
    page: 'schedule',
    openingId: '',
  },
  {
    name: 'one opening',
    title: 'What was surveyed, and what follows.',
    says: 'First the facts, then what locks the door, who must do what, what happens on power loss or fire alarm, and what was ruled out by which rule.',
    page: 'opening',
    openingId: shownOpening,
  },
  {
    name: 'the walk',
    title: 'In the corridor, one question at a time:',
    says: 'the one that settles most, answered with a thumb. “I can’t tell” is an answer too.',
    page: 'walk',
    openingId: shownOpening,
  },
  {
    name: 'the review',
    title: 'What a person must sign,',
    says: 'with the rule and the facts it rests on. A mark goes stale when one of them changes.',
    page: 'review',
    openingId: '',
  },
  {
    name: 'the paper',
    title: 'For bidders, locksmith and authority:',
    says: 'door schedule, hardware sets, a sheet for each opening.',
    page: 'print',
    openingId: '',
  },
];

/** None in somebody's own project: there it would be called an invented building. */
export function tourFor(openings: object): readonly TourStep[] {
  return Object.hasOwn(openings, shownOpening) ? steps : [];
}
