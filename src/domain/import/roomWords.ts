import type { Use } from '../model/uses.ts';

/**
 * What the words for a room may mean for its occupant load. `passed`: corridors, stairs and the like, which are counted with
 * the rooms they serve. `open`: the words fit several lines of the table, and say which ones.
 */
export type WordsRead =
  | { readonly is: 'use'; readonly use: Use; readonly doubt: string }
  | { readonly is: 'passed' }
  | { readonly is: 'open'; readonly says: string }
  | { readonly is: 'unknown' };

type Meaning = Exclude<WordsRead, { readonly is: 'unknown' }>;
const as = (use: Use, doubt = ''): Meaning => ({ is: 'use', use, doubt });
const open = (says: string): Meaning => ({ is: 'open', says });
const passed: Meaning = { is: 'passed' };

const ward = 'Counted as inpatient treatment where people stay overnight or cannot leave by themselves.';
const fixed = 'Fixed seats are counted seat by seat and not by area (IBC 1004.6).';
const dwelling = 'As part of a dwelling or hotel. A dormitory or a care home counts otherwise.';
const library = open('A library has reading rooms and stacks, which count differently.');

/**
 * Common names of rooms in English and the line of the occupant load table a reviewer usually takes for them (common
 * practice, no source). The word that ends last decides: a lab office is an office, an office storage is a storage room.
 */
const meanings: readonly (readonly [RegExp, Meaning])[] = [
  [
    /\b(offices?|off|work ?stations?|work room|cubicles?|admin(istration)?|copy( room)?|mail room)\b/g,
    as('business'),
  ],
  [/\b(call cent(er|re)|trading floor|telemarketing)\b/g, as('businessConcentrated')],
  [/\brecep(t|tion)?\b/g, as('business', 'Where people wait at it, the seats count as assembly.')],
  [/\b(conf(erence)?|meeting|board) ?(rooms?|rm)?\b/g, as('assemblyTables')],
  [/\b(dining|cafeteria|canteen|restaurant|lunch ?room|banquet)\b/g, as('assemblyTables')],
  [
    /\b(break ?room|lounge)\b/g,
    as('assemblyTables', 'A small one is often counted with the offices around it.'),
  ],
  [/\b(auditorium|theat(er|re)|lecture hall|cinema)\b/g, as('assemblyChairs', fixed)],
  [/\b(chapel|sanctuary|worship)\b/g, as('assemblyChairs', fixed)],
  [/\b(gallery|exhibit(ion)?|museum)\b/g, as('gallery')],
  [/\b(casino|gaming)\b/g, as('gaming')],
  [/\b(class ?rooms?|seminar)\b/g, as('classroom')],
  [/\btraining\b/g, as('classroom', 'With loose tables and chairs it counts as assembly.')],
  [/\b(vocational|wood ?shop|metal ?shop|machine shop)\b/g, as('shop', 'A factory counts as industrial.')],
  [/\b(day ?care|child ?care)\b/g, as('dayCare')],
  [/\bdorm(itory|itories)?\b/g, as('dormitory')],
  [/\bcourt ?room\b/g, as('courtroom')],
  [/\b(fitness|exercise|weight) ?(room|area|center)?\b/g, as('exercise')],
  [/\bgym(nasium)?\b/g, as('exercise', 'With spectators or gatherings it counts as assembly.')],
  [/\b(manufacturing|production|factory|assembly line)\b/g, as('industrial')],
  [/\b(patient (bed ?)?room|ward)\b/g, as('institutionalSleeping')],
  [
    /\b(operating|surgery|surgical|icu|intensive care)\b/g,
    as('inpatient', 'Counted as outpatient where nobody stays.'),
  ],
  [/\b(exam(ination)?|treatment|trmt|procedure|triage|consult(ation)?|dialysis)\b/g, as('outpatient', ward)],
  [/\bkitchen\b/g, as('kitchen', 'As a commercial kitchen. In a dwelling it counts with the dwelling.')],
  [/\b(reading room|library reading)\b/g, as('libraryReading')],
  [/\b(stacks|book stacks)\b/g, as('libraryStacks')],
  [/\blocker( room)?s?\b/g, as('lockerRoom')],
  [/\b(retail|sales (floor|area)|showroom)\b/g, as('mercantile')],
  [
    /\b(stor(age)?|sto|store ?room|closet|cl|jan(itor)?('?s)?|custodian|housekeeping|linen|archive)\b/g,
    as('accessoryStorage'),
  ],
  [
    /\b((main |central )?mech(anical)?|elec(trical)?|boiler|pump|equip(ment)?|plant)\b/g,
    as('accessoryStorage'),
  ],
  [
    /\b(comm?|telecom|idf|mdf|it) ?(room|rm|closet)\b/g,
    as('accessoryStorage', 'Read as a room for equipment.'),
  ],
  [
    /\b(server|data) (room|hall|cent(er|re))\b/g,
    as('serverHall', 'A small one counts as a room for equipment.'),
  ],
  [/\b(parking|garage|car park)\b/g, as('parking')],
  [/\b(bed ?rooms?|guest ?rooms?|hotel room)\b/g, as('residential', dwelling)],
  [/\b(living (room|spaces?|area)|residential|apartment|dwelling)\b/g, as('residential')],
  [/\b(swimming|pool|natatorium|skating|ice rink)\b/g, as('pool')],
  [/\bpool deck\b/g, as('poolDeck')],
  [/\b(stage|platform)\b/g, as('stage')],
  [/\bwarehouse\b/g, as('warehouse')],
  [/\bbaggage claim\b/g, as('baggageClaim')],
  [/\bbaggage (handling|room|makeup)\b/g, as('baggageHandling')],
  [/\bconcourse\b/g, as('airportConcourse', 'As the concourse of an airport.')],

  [
    /\b(waiting|wait)\b/g,
    open('People may wait on chairs, standing, or within an outpatient area; each counts differently.'),
  ],
  [/\blab(oratory|s)?\b/g, open('A laboratory counts as business, as a vocational shop or as industrial.')],
  [
    /\b(multi-?purpose|ballroom|assembly|hall|activity)\b/g,
    open('Chairs, tables and standing people count differently.'),
  ],
  [/\blobby\b/g, open('It counts as standing space only where people wait or gather in it.')],
  [/\b(work ?shop|shop)\b/g, open('A shop may sell, teach or manufacture.')],
  [
    /\b(stock ?room|loading dock|receiving|shipping)\b/g,
    open('It counts as stock of a store, as a warehouse or as accessory storage.'),
  ],
  [
    /\b(haz(ardous)?( materials?)?|flamm?able|gas|chemical) (stor(age)?|room)\b/g,
    open('What is stored decides its group and how it counts.'),
  ],
  [/\blibrary\b/g, library],
  [/\bkitchenette?\b/g, open('It counts with the room it belongs to.')],

  [/\b(corr(idor)?s?|hallway|passage|stairs?|stairway|stairwell|vest(ibule)?|foyer|circulation)\b/g, passed],
  [
    /\b(toilets?|rest ?rooms?|wc|bath ?rooms?|shower|elevator( shaft| lobby)?|shaft|roof|airlock|outside|exterior|site)\b/g,
    passed,
  ],
];

/** Words around the one that counts, and numbers that only tell alike rooms apart. */
function plain(words: string): string {
  return words
    .toLowerCase()
    .replaceAll('’', "'")
    .replaceAll('.', ' ')
    .replaceAll(/[#,()]/g, ' ')
    .replaceAll(/\s+/g, ' ');
}

function partMeans(words: string): WordsRead {
  let best: { readonly end: number; readonly begin: number; readonly means: Meaning } | undefined;
  for (const [pattern, means] of meanings) {
    for (const found of words.matchAll(pattern)) {
      const begin = found.index;
      const end = begin + found[0].length;
      if (!best || end > best.end || (end === best.end && begin < best.begin)) best = { begin, end, means };
    }
  }
  return best?.means ?? { is: 'unknown' };
}

/** The name of a room, or the title of its class, as what it may be counted by. */
export function readRoomWords(words: string): WordsRead {
  const parts = plain(words)
    .split('/')
    .map((part) => part.trim())
    .filter((part) => part !== '');
  const read = parts.map(partMeans);
  const [first = { is: 'unknown' }, ...others] = read;
  // A bar joins two uses. Where they are counted alike nothing is lost; otherwise nobody said which one governs.
  const alike = others.every((one) => one.is === first.is && useOf(one) === useOf(first));
  if (alike) return first;
  if (read.every(({ is }) => is === 'unknown' || is === 'passed')) return { is: 'unknown' };
  return { is: 'open', says: 'The words name two uses, and not which of them governs.' };
}

const useOf = (read: WordsRead) => (read.is === 'use' ? read.use : undefined);

/** Occupancy groups that count by one line of the table; the others hold rooms of several kinds. */
const groups: Readonly<Record<string, Use>> = {
  B: 'business',
  M: 'mercantile',
  F: 'industrial',
  R: 'residential',
};

/** "B", "Group M", "A-3", or words. */
export function readOccupancyType(text: string): WordsRead {
  const group = /^(?:group\s*)?([abefhimrsu])(?:-?\d)?$/i.exec(text.trim())?.[1]?.toUpperCase();
  if (group === undefined) return readRoomWords(text);
  const use = groups[group];
  return use === undefined
    ? { is: 'open', says: `Group ${group} does not say how its floor is counted.` }
    : { is: 'use', use, doubt: 'The group says it for the whole area, not for this room.' };
}
