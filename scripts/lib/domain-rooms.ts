// The rooms of src/domain from the lowest to the highest, in one list: a room may import the rooms before it and no
// room after it, neither values nor types. Lint is generated from this list and so is the map in DEVELOPERS.md.

export interface DomainRoom {
  readonly room: string;
  readonly holds: string;
}

export const domainRooms: readonly DomainRoom[] = [
  { room: 'units', holds: 'lengths and other quantities, reading and writing them' },
  { room: 'codes', holds: 'books and editions, sections, limits by edition' },
  { room: 'model', holds: 'facts with labels and questions, project, opening' },
  { room: 'commands', holds: 'edits with their inverses' },
  { room: 'versions', holds: 'file format and migrations' },
  { room: 'logic', holds: 'conditions in three values, derived facts, missing facts' },
  {
    room: 'text',
    holds: 'what every sentence is made with: facts in words, counted nouns, the standing caution',
  },
  { room: 'devices', holds: 'devices, candidates, items' },
  {
    room: 'electrical',
    holds: 'formulas: conductors, voltage drop, supplies, batteries, Class 2, switch ports, transfers',
  },
  { room: 'fit', holds: 'fit table and its notes, weakest-link strength' },
  {
    room: 'arrangement',
    holds: 'what a choice makes of an opening: every lock on the leaf, what frees it, who stands where',
  },
  { room: 'simulate', holds: 'what happens when, for one arrangement' },
  { room: 'rules', holds: 'one file per rule, its cases beside it, by family; an explicit list' },
  { room: 'egress', holds: 'load of a space, ways out needed, capacity, clear width' },
  {
    room: 'plan',
    holds: 'what spaces and openings imply for one opening, which wins over what is typed there',
  },
  {
    room: 'hardware',
    holds:
      'what an arrangement means as goods and work at this door: parts, what is kept, how each counts, terms, hours',
  },
  {
    room: 'decide',
    holds:
      'the engine, without a sentence: judge, rank, steps; score, what is signed, next question, smallest change',
  },
  {
    room: 'words',
    holds:
      'what a decision says to a person: states, arrangements, steps, sign-offs, ranking, the whole report',
  },
  { room: 'building', holds: 'what happens when, for the building; a space against its doors' },
  {
    room: 'power',
    holds:
      'loads of the openings, cables and runs, closets, supplies and their packing, batteries, takeoff, findings',
  },
  {
    room: 'review',
    holds:
      'what a reviewer signs: questions, what lay before them, guards, the log and its seal, whether it still holds',
  },
  {
    room: 'sets',
    holds:
      'hardware sets and their numbers, their lines, lines by opening, shared equipment, what an order waits for',
  },
  {
    room: 'schedules',
    holds: 'rows of the opening schedule, a door’s wires as one line, the same opening under another basis',
  },
  {
    room: 'bid',
    holds: 'fewer sets, quantities and prices, issued editions and what differs between them',
  },
  { room: 'survey', holds: 'which questions make sense, the next question, reading an answer, next mark' },
  { room: 'merge', holds: 'two copies of one project become one; what differs, side by side' },
  { room: 'import', holds: 'door lists on their way into a project' },
  {
    room: 'grid',
    holds:
      'the schedule as a grid: columns, selection, cells as text and back, sorting, filters, groups, views',
  },
  { room: 'project', holds: 'what the project page edits: floors, spaces, amendments, weights' },
  { room: 'trail', holds: 'what was done, in sentences: one for every kind of edit; the history they make' },
  { room: 'manual', holds: 'glossary, what each answer means, the rule book in words, pages, the tour' },
];

const laterThan = (room: string): readonly string[] => {
  const names = domainRooms.map((one) => one.room);
  return names.slice(names.indexOf(room) + 1);
};

/** What lint refuses inside one room, beside what it refuses in the whole domain; undefined in the highest. */
export function refusedIn(room: string): { readonly regex: string; readonly message: string } | undefined {
  const later = laterThan(room);
  if (later.length === 0) return undefined;
  return {
    regex: `\\.\\./(?:.*/)?(${later.join('|')})/`,
    message: `src/domain/${room} knows only the rooms below it (DEVELOPERS.md, Map of rooms). Move what both need into the lower one.`,
  };
}

interface LintOverride {
  readonly files: readonly string[];
  readonly rules: Readonly<Record<string, unknown>>;
}

const isRoomOverride = ({ files }: LintOverride) =>
  files.length === 1 && /^src\/domain\/[^*/]+\/\*\*$/.test(files[0] ?? '');

/**
 * The overrides of the linter's settings with one for each room. A later override replaces the options of a rule
 * instead of adding to them, so each carries what holds in the whole domain, and stands before those for tests.
 */
export function withRooms(overrides: readonly LintOverride[]): readonly LintOverride[] {
  const others = overrides.filter((one) => !isRoomOverride(one));
  const at = others.findIndex(({ files }) => files[0] === 'src/domain/**');
  const whole = others[at]?.rules['no-restricted-imports'];
  if (!Array.isArray(whole)) throw new Error('The linter’s settings have no override for src/domain/**.');
  const [level, options] = whole as [string, { readonly patterns: readonly unknown[] }];
  const rooms = domainRooms.flatMap(({ room }): LintOverride[] => {
    const refused = refusedIn(room);
    if (!refused) return [];
    // First, because a group that lets relative paths pass ends the search for patterns that refuse one.
    const patterns = [refused, ...options.patterns];
    return [{ files: [`src/domain/${room}/**`], rules: { 'no-restricted-imports': [level, { patterns }] } }];
  });
  return others.toSpliced(at + 1, 0, ...rooms);
}

const begin = '<!-- rooms of src/domain: generated by npm run rooms -->';
const end = '<!-- end of rooms -->';

/** The page with the list of rooms between its marks written anew. */
export function withRoomTable(page: string): string {
  const from = page.indexOf(begin);
  const to = page.indexOf(end);
  if (from < 0 || to < from)
    throw new Error('DEVELOPERS.md has lost the marks around the rooms of src/domain.');
  const rows = domainRooms.map(({ room, holds }, index) => `| ${index + 1} | \`${room}\` | ${holds} |`);
  const table = ['| | room | holds |', '| --- | --- | --- |', ...rows].join('\n');
  return `${page.slice(0, from)}${begin}\n\n${table}\n\n${page.slice(to)}`;
}
