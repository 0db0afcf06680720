/** The first-run tour through the demo building. Addresses are those of the app's pages. */
export interface TourStep {
  readonly title: string;
  readonly says: string;
  readonly address?: string;
  readonly go?: string;
}

export const tourSteps: readonly TourStep[] = [
  {
    title: 'This is an invented building.',
    says: 'Every opening in it is already decided. Change anything you like; Undo takes it back, and your own project starts under Files.',
    address: '#/schedule',
    go: 'See the schedule',
  },
  {
    title: 'Open an opening.',
    says: 'On the left what was surveyed, on the right what follows: the arrangement, its reasons with section and edition, what came second, and what each ruled-out device fell to.',
    address: '#/opening/opening-103',
    go: 'Open 103',
  },
  {
    title: 'In the corridor, walk.',
    says: 'Walk asks one question at a time, the one that settles most, with answers as large as a thumb.',
    address: '#/walk/opening-103',
    go: 'Try it',
  },
  {
    title: 'What a reviewer must sign',
    says: 'stands under Review, with the rule and the facts it rests on. A mark goes stale when one of them changes.',
    address: '#/review',
    go: 'See the list',
  },
  {
    title: 'Paper',
    says: 'for the bidders, the locksmith and the authority: door schedule, hardware sets, a sheet for each opening.',
    address: '#/print',
    go: 'See the sheets',
  },
];
