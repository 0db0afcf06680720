/** Rules that put one and the same matter to the reviewer; the first named gives the question its title. */
const subjects: readonly (readonly [string, ...string[]])[] = [
  // A building that holds people: its locks and its doors.
  ['R-103', 'R-132'],
  // One gate, in the exit and in its discharge.
  ['R-142', 'R-66'],
  // One powered door: opening by hand, and what its operator locks.
  ['R-115', 'N-12'],
  // One turnstile, with the lock its manufacturer supplies.
  ['R-137', 'N-09'],
];

const leads = new Map(subjects.flatMap(([lead, ...others]) => others.map((id) => [id, lead] as const)));

/** The rule under whose title this one is asked; most are asked under their own. */
export const subjectOf = (ruleId: string): string => leads.get(ruleId) ?? ruleId;
