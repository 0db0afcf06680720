/** Every page of the product: what its tab is called, and what it is for. */
export const pageWords = {
  schedule: {
    name: 'Schedule',
    says: 'Every opening in a line, with what is known of it and what is decided.',
  },
  opening: { name: 'Opening', says: 'One opening in full: its survey, its decision, and every reason.' },
  walk: { name: 'Walk', says: 'The survey in the corridor, one question at a time.' },
  plan: {
    name: 'Floor plan',
    says: 'A drawing of each floor with its openings and closets pinned on it, and what it says of cable runs.',
  },
  building: {
    name: 'Building',
    says: 'The openings as one plan: who can leave, and what is reached without a credential.',
  },
  power: {
    name: 'Power',
    says: 'Closets, supplies, cable runs and batteries: what feeds each lock, and what it takes.',
  },
  review: { name: 'Review', says: 'The openings that a person must sign, and why.' },
  pricing: {
    name: 'Pricing',
    says: 'Quantities, the project’s own prices, and what is still missing for a bid.',
  },
  print: { name: 'Print', says: 'The sheets for bidders, trades and authority.' },
  project: { name: 'Project', says: 'Name, code basis, building, floors, spaces, amendments and weights.' },
  rules: { name: 'Rules', says: 'Every rule with its section, its conditions and its cases.' },
  files: { name: 'Files', says: 'Projects, copies, backups, and door lists in and out.' },
  legend: { name: 'Legend', says: 'What every sign, word and key means.' },
} as const;

export type PageId = keyof typeof pageWords;
