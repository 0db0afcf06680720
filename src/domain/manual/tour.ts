/** The first-run tour through the demo building. Each step speaks of the page at its address, which is then shown. */
export interface TourStep {
  /** The page, as the button before it calls it. */
  readonly name: string;
  readonly title: string;
  readonly says: string;
  readonly address: string;
  /** The opening the step needs; without it the step is left out. */
  readonly openingId?: string;
}

const steps: readonly TourStep[] = [
  {
    name: 'the schedule',
    title: 'An invented building.',
    says: 'Change what you like. Undo reverses it, and your own project starts under Files.',
    address: '#/schedule',
  },
  {
    name: 'one opening',
    title: 'What was surveyed, and what follows.',
    says: 'First the facts, then what locks the door, who must do what, what happens on power loss or fire alarm, and what was ruled out by which rule.',
    address: '#/opening/opening-103',
    openingId: 'opening-103',
  },
  {
    name: 'the walk',
    title: 'In the corridor, one question at a time:',
    says: 'the one that settles most, answered with a thumb. “I can’t tell” is an answer too.',
    address: '#/walk/opening-103',
    openingId: 'opening-103',
  },
  {
    name: 'the review',
    title: 'What a person must sign,',
    says: 'with the rule and the facts it rests on. A mark goes stale when one of them changes.',
    address: '#/review',
  },
  {
    name: 'the paper',
    title: 'For bidders, locksmith and authority:',
    says: 'door schedule, hardware sets, a sheet for each opening.',
    address: '#/print',
  },
];

/** The steps that have something to show in this project. */
export function tourFor(openings: object): readonly TourStep[] {
  return steps.filter((step) => step.openingId === undefined || Object.hasOwn(openings, step.openingId));
}
