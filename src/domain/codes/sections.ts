import { type Book, books, type CodeBasis, type IbcEdition, type Nfpa101Edition } from './basis.ts';

/** Where a book says it: a section; no section, because this edition has none; or one that nobody here saw. */
type Section = string | { readonly none: true; readonly see?: string } | { readonly notSeen: true };

/** A citation: book and section by edition. `any` stands for books cited without an edition of their own. */
export interface Cite {
  readonly book: Book;
  readonly sections: Readonly<Record<string, Section>>;
  readonly what: string;
}

const ibc = (what: string, of: Readonly<Record<IbcEdition, Section>>): Cite => ({
  book: 'ibc',
  what,
  sections: of,
});
/** NFPA 101 clause numbers were rearranged after 2018; where a later number was not seen none is printed. */
const nfpa = (what: string, of: Readonly<Record<Nfpa101Edition, Section>>): Cite => ({
  book: 'nfpa101',
  what,
  sections: of,
});
const none = (see?: string): Section => (see === undefined ? { none: true } : { none: true, see });
const notSeen: Section = { notSeen: true };

/** Section numbers by topic. Number and edition always travel together. */
export const sections = {
  freeEgressIbc: ibc('Operation of egress doors', { 2018: '1010.1.9', 2021: '1010.2', 2024: '1010.2' }),
  freeEgressNfpa: nfpa('Locks, latches and alarm devices', {
    2018: '7.2.1.5',
    2021: '7.2.1.5',
    2024: '7.2.1.5',
  }),
  hardwareIbc: ibc('Hardware', { 2018: '1010.1.9.1', 2021: '1010.2.2', 2024: '1010.2.2' }),
  hardwareHeightIbc: ibc('Hardware height', { 2018: '1010.1.9.2', 2021: '1010.2.3', 2024: '1010.2.3' }),
  hardwareHeightNfpa: nfpa('Releasing-mechanism height', {
    2018: '7.2.1.5.10.1',
    2021: notSeen,
    2024: notSeen,
  }),
  monitoredEgress: ibc('Monitored or recorded egress', {
    2018: '1010.1.9.3',
    2021: '1010.2.10',
    2024: '1010.2.9',
  }),
  locksAndLatches: ibc('Locks and latches', { 2018: '1010.1.9.4', 2021: '1010.2.4', 2024: '1010.2.4' }),
  boltLocks: ibc('Bolt locks', { 2018: '1010.1.9.5', 2021: '1010.2.5', 2024: 'Table 1010.2.4' }),
  closetDoors: ibc('Closet doors', { 2018: '1010.1.9.6.1', 2021: '1010.2.6', 2024: '1010.2.5' }),
  unlatching: ibc('Unlatching', { 2018: '1010.1.9.6', 2021: '1010.2.1', 2024: '1010.2.1' }),
  unlatchingNfpa: nfpa('Releasing operation', { 2018: '7.2.1.5.10.2', 2021: '7.2.1.5.3', 2024: '7.2.1.5.3' }),
  controlledEgress: ibc('Controlled egress in Groups I-1 and I-2', {
    2018: '1010.1.9.7',
    2021: '1010.2.14',
    2024: '1010.2.13',
  }),
  controlledEgressNfpa: nfpa('Clinical-needs and security-needs locks', {
    2018: '18/19.2.2.2.5',
    2021: '18/19.2.2.2.5',
    2024: '18/19.2.2.2.5',
  }),
  delayedEgress: ibc('Delayed egress', { 2018: '1010.1.9.8', 2021: '1010.2.13', 2024: '1010.2.12' }),
  delayedEgressNfpa: nfpa('Delayed-egress locking', {
    2018: '7.2.1.6.1',
    2021: '7.2.1.6.1',
    2024: '7.2.1.6.1',
  }),
  sensorRelease: ibc('Sensor release of electrically locked egress doors', {
    2018: '1010.1.9.9',
    2021: '1010.2.12',
    2024: '1010.2.11',
  }),
  sensorReleaseNfpa: nfpa('Sensor-release locking', {
    2018: '7.2.1.6.2',
    2021: '7.2.1.6.2',
    2024: '7.2.1.6.2',
  }),
  hardwareRelease: ibc('Door hardware release of electrically locked egress doors', {
    2018: '1010.1.9.10',
    2021: '1010.2.11',
    2024: '1010.2.10',
  }),
  detentionLocking: ibc('Locking in detention', {
    2018: '1010.1.9.11',
    2021: '1010.2.15',
    2024: '1010.2.15',
  }),
  stairDoors: ibc('Stairway doors', { 2018: '1010.1.9.12', 2021: '1010.2.7', 2024: '1010.2.6' }),
  stairDoorsNfpa: nfpa('Stair enclosure re-entry', { 2018: '7.2.1.5.8', 2021: notSeen, 2024: notSeen }),
  highRiseStairs: ibc('Stairway doors in high-rise buildings', {
    2018: '403.5.3',
    2021: '403.5.3',
    2024: '403.5.3',
  }),
  educationalLocking: ibc('Locking in educational buildings', {
    2018: '1010.1.4.4',
    2021: '1010.2.8',
    2024: '1010.2.7',
  }),
  educationalLockingNfpa: nfpa('Classroom locking', {
    2018: '14/15.2.2.2.4',
    2021: '14/15.2.2.2.4',
    2024: '14/15.2.2.2.4',
  }),
  panicHardware: ibc('Panic and fire exit hardware', {
    2018: '1010.1.10',
    2021: '1010.2.9',
    2024: '1010.2.8',
  }),
  panicHardwareNfpa: nfpa('Panic and fire exit hardware', {
    2018: '7.2.1.7',
    2021: '7.2.1.7',
    2024: '7.2.1.7',
  }),
  elevatorLobby: ibc('Elevator lobby exit access doors', {
    2018: none('3006.4'),
    2021: none('3006.4'),
    2024: '1010.2.14',
  }),
  elevatorLobbyNfpa: nfpa('Elevator lobby exit access door locking', {
    2018: '7.2.1.6.3',
    2021: '7.2.1.6.3',
    2024: '7.2.1.6.3',
  }),
  openingForce: ibc('Door opening force', { 2018: '1010.1.3', 2021: '1010.1.3', 2024: '1010.1.3' }),
  doorWidth: ibc('Size of doors', { 2018: '1010.1.1', 2021: '1010.1.1', 2024: '1010.1.1' }),
  doorSwing: ibc('Egress door types and swing', { 2018: '1010.1.2', 2021: '1010.1.2', 2024: '1010.1.2' }),
  revolvingDoors: ibc('Revolving doors', { 2018: '1010.1.4.1', 2021: '1010.3.1', 2024: '1010.3.1' }),
  powerDoors: ibc('Power-operated doors', { 2018: '1010.1.4.2', 2021: '1010.3.2', 2024: '1010.3.2' }),
  foldingDoors: ibc('Special-purpose sliding, accordion and folding doors', {
    2018: '1010.1.4.3',
    2021: '1010.3.3',
    2024: '1010.3.3',
  }),
  securityGrilles: ibc('Security grilles', { 2018: '1010.1.4.5', 2021: '1010.3.4', 2024: '1010.3.4' }),
  gates: ibc('Gates', { 2018: '1010.2', 2021: '1010.4', 2024: '1010.4' }),
  turnstiles: ibc('Turnstiles', { 2018: '1010.3', 2021: '1010.5', 2024: '1010.5' }),
  doorsInSeries: ibc('Doors in series', { 2018: '1010.1.8', 2021: '1010.1.7', 2024: '1010.1.7' }),
  interveningRooms: ibc('Egress through other rooms', { 2018: '1016.2', 2021: '1016.2', 2024: '1016.2' }),
  egressCourts: ibc('Egress courts', { 2018: '1028.4', 2021: '1029', 2024: '1029' }),
  automaticEntrances: ibc('Automatic doors at public entrances', {
    2018: none(),
    2021: '1105.1.1',
    2024: '1105.1.1',
  }),
  egressCapacity: ibc('Egress capacity', { 2018: '1005.3', 2021: '1005.3', 2024: '1005.3' }),
  occupantLoads: ibc('Occupant load', { 2018: '1004.5', 2021: '1004.5', 2024: '1004.5' }),
  exitsRequired: ibc('Number of exits', { 2018: '1006', 2021: '1006', 2024: '1006' }),
  openingProtectives: ibc('Opening protectives', { 2018: '716', 2021: '716', 2024: '716' }),
  fireDoorLatching: ibc('Fire doors closing and latching', {
    2018: '716.2.6.1',
    2021: '716.2.6.1',
    2024: '716.2.6.1',
  }),
  smokeActivatedClosing: ibc('Smoke-activated closing', {
    2018: '716.2.6.6',
    2021: '716.2.6.6',
    2024: '716.2.6.6',
  }),
  smokeBarrierDoors: ibc('Smoke barrier doors', { 2018: '709.5', 2021: '709.5', 2024: '709.5' }),
  hospitalCorridorDoors: ibc('I-2 corridor doors', { 2018: '407.3.1', 2021: '407.3.1', 2024: '407.3.1' }),
  horizontalExits: ibc('Horizontal exits', { 2018: '1026', 2021: '1026', 2024: '1026' }),
  assemblyMainExit: ibc('Assembly main exit', { 2018: '1029.2', 2021: '1030.2', 2024: '1030.2' }),
  incidentalUses: ibc('Incidental uses', { 2018: '509', 2021: '509', 2024: '509' }),
  detentionUse: ibc('Group I-3', { 2018: '408', 2021: '408', 2024: '408' }),
  toiletRooms: ibc('Toilet room door locking', { 2018: '2902.3.5', 2021: '2902.3.5', 2024: '2902.3.5' }),
  clinicalLocks: ibc('Clinical locks opened by staff', {
    2018: none(),
    2021: '1010.2.4 item 2',
    2024: '1010.2.4 item 2',
  }),
  exteriorSpaces: ibc('Exterior spaces whose egress leads back inside', {
    2018: none(),
    2021: '1010.2.4 item 8',
    2024: '1010.2.4 item 8',
  }),
  refrigerationRooms: ibc('Refrigeration machinery rooms', {
    2018: '1006.2.2.2',
    2021: '1006.2.2.2',
    2024: '1006.2.2.2',
  }),
  careSuites: ibc('Care suites', { 2018: '407.4.4', 2021: '407.4.4', 2024: '407.4.4' }),
  careSuitesNfpa: nfpa('Health-care suites', { 2018: '18/19.2.5.7', 2021: notSeen, 2024: notSeen }),
  hospitalCorridorDoorsNfpa: nfpa('Health-care corridor doors', {
    2018: '18/19.3.6.3',
    2021: notSeen,
    2024: notSeen,
  }),
  residentialLocksNfpa: nfpa('Releasing operations at residential units', {
    2018: '7.2.1.5.10.4',
    2021: notSeen,
    2024: notSeen,
  }),
  stormShelters: ibc('Storm shelters', { 2018: '423', 2021: '423', 2024: '423' }),
  accessibleEgress: ibc('Accessible means of egress', { 2018: '1009', 2021: '1009', 2024: '1009' }),
  rescueElevators: ibc('Fire service and evacuation elevators', {
    2018: '3007, 3008',
    2021: '3007, 3008',
    2024: '3007, 3008',
  }),
  highRise: ibc('High-rise buildings', { 2018: '403', 2021: '403', 2024: '403' }),
  seriesNfpa: nfpa('Doors in a means of egress', { 2018: '7.2.1', 2021: '7.2.1', 2024: '7.2.1' }),
  assemblyKeyLockNfpa: nfpa('Assembly main entrance locking', {
    2018: '12/13.2.2.2',
    2021: '12/13.2.2.2',
    2024: '12/13.2.2.2',
  }),
  doorInspectionNfpa: nfpa('Inspection of door openings', {
    2018: '7.2.1.15',
    2021: '7.2.1.15',
    2024: '7.2.1.14',
  }),
} as const satisfies Record<string, Cite>;

export type SectionTopic = keyof typeof sections;

/** A section of a book that is cited without a table of editions: `text('nfpa80', '6.4.4.1', 'Components')`. */
export function text(book: Book, section: string, what = ''): Cite {
  return { book, what, sections: { any: section } };
}
export function under(topic: SectionTopic): Cite {
  return sections[topic];
}

/** The section of one edition, for a rule that is about that edition whatever the project adopts. */
export function ofEdition(topic: SectionTopic, year: number): Cite {
  const { book, sections: byYear, what }: Cite = sections[topic];
  const section = byYear[String(year)];
  if (typeof section !== 'string') throw new Error(`No section of ${year} is known for ${topic}.`);
  return text(book, `${year} ${section}`, what);
}

/** "IBC 2021 1010.2.13 (Delayed egress)"; a book that is not adopted is cited with its newest known section. */
export function citeInWords(cite: Cite, basis: CodeBasis): string {
  const what = cite.what ? ` (${cite.what})` : '';
  const { any } = cite.sections;
  if (typeof any === 'string') return `${withBook(cite.book, any)}${what}`;
  const adopted = (basis as Record<string, number | null>)[cite.book] ?? null;
  if (adopted === null) {
    const [year, section] = Object.entries(cite.sections).at(-1) ?? ['', notSeen];
    return `${books[cite.book]} ${year}${typeof section === 'string' ? ` ${section}` : ''}${what}, not adopted here`;
  }
  const section = cite.sections[String(adopted)] ?? notSeen;
  const edition = `${books[cite.book]} ${adopted}`;
  if (typeof section === 'string') return `${edition} ${section}${what}`;
  if ('notSeen' in section) return `${edition} (clause number of this edition not seen)${what}`;
  return `${edition} has no such section${what}${section.see === undefined ? '' : `; see ${section.see}`}`;
}

/** A section of a book that is adopted here, or of one that needs no adoption. */
export function isUsed({ book, sections }: Cite, basis: CodeBasis): boolean {
  return (
    typeof sections.any === 'string' || ((basis as Record<string, number | null>)[book] ?? null) !== null
  );
}

/** A section by itself: "1010.2.13", "no such section, see 3006.4", "number not seen". */
export function sectionInWords(section: Section): string {
  if (typeof section === 'string') return section;
  if ('notSeen' in section) return 'number not seen';
  return section.see === undefined ? 'no such section' : `no such section, see ${section.see}`;
}

/** A section that begins with the last word of its book's name says that word: "OSHA 29 CFR 1910.36(d)". */
export function withBook(book: Book, section: string): string {
  const name: string = books[book];
  const last = name.slice(name.lastIndexOf(' ') + 1);
  if (section.startsWith(`${last}.`)) return name.slice(0, name.length - last.length) + section;
  return section === '' ? name : `${name} ${section}`;
}
