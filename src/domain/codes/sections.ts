import { type Book, books, type CodeBasis } from './basis.ts';

/** A citation: book and section by edition. `any` stands for books cited without an edition of their own. */
export interface Cite {
  readonly book: Book;
  readonly sections: Readonly<Record<string, string>>;
  readonly what: string;
}

type Years = readonly [y2018: string, y2021: string, y2024: string];
const ibc = (what: string, [y18, y21, y24]: Years): Cite => ({
  book: 'ibc',
  what,
  sections: { 2018: y18, 2021: y21, 2024: y24 },
});
/** NFPA 101 clause numbers were rearranged after 2018; where a later number was not seen none is printed. */
const nfpa = (what: string, y18: string, y21 = '', y24 = ''): Cite => ({
  book: 'nfpa101',
  what,
  sections: { 2018: y18, 2021: y21, 2024: y24 },
});

/** Section numbers by topic. Number and edition always travel together. */
export const sections = {
  freeEgressIbc: ibc('Operation of egress doors', ['1010.1.9', '1010.2', '1010.2']),
  freeEgressNfpa: nfpa('Locks, latches and alarm devices', '7.2.1.5', '7.2.1.5', '7.2.1.5'),
  hardwareIbc: ibc('Hardware', ['1010.1.9.1', '1010.2.2', '1010.2.2']),
  hardwareHeightIbc: ibc('Hardware height', ['1010.1.9.2', '1010.2.3', '1010.2.3']),
  hardwareHeightNfpa: nfpa('Releasing-mechanism height', '7.2.1.5.10.1'),
  monitoredEgress: ibc('Monitored or recorded egress', ['1010.1.9.3', '1010.2.10', '1010.2.9']),
  locksAndLatches: ibc('Locks and latches', ['1010.1.9.4', '1010.2.4', '1010.2.4']),
  boltLocks: ibc('Bolt locks', ['1010.1.9.5', '1010.2.5', 'Table 1010.2.4']),
  closetDoors: ibc('Closet doors', ['1010.1.9.6.1', '1010.2.6', '1010.2.5']),
  unlatching: ibc('Unlatching', ['1010.1.9.6', '1010.2.1', '1010.2.1']),
  unlatchingNfpa: nfpa('Releasing operation', '7.2.1.5.10.2', '7.2.1.5.3', '7.2.1.5.3'),
  controlledEgress: ibc('Controlled egress in Groups I-1 and I-2', ['1010.1.9.7', '1010.2.14', '1010.2.13']),
  controlledEgressNfpa: nfpa(
    'Clinical-needs and security-needs locks',
    '18/19.2.2.2.5',
    '18/19.2.2.2.5',
    '18/19.2.2.2.5',
  ),
  delayedEgress: ibc('Delayed egress', ['1010.1.9.8', '1010.2.13', '1010.2.12']),
  delayedEgressNfpa: nfpa('Delayed-egress locking', '7.2.1.6.1', '7.2.1.6.1', '7.2.1.6.1'),
  sensorRelease: ibc('Sensor release of electrically locked egress doors', [
    '1010.1.9.9',
    '1010.2.12',
    '1010.2.11',
  ]),
  sensorReleaseNfpa: nfpa('Sensor-release locking', '7.2.1.6.2', '7.2.1.6.2', '7.2.1.6.2'),
  hardwareRelease: ibc('Door hardware release of electrically locked egress doors', [
    '1010.1.9.10',
    '1010.2.11',
    '1010.2.10',
  ]),
  detentionLocking: ibc('Locking in detention', ['1010.1.9.11', '1010.2.15', '1010.2.15']),
  stairDoors: ibc('Stairway doors', ['1010.1.9.12', '1010.2.7', '1010.2.6']),
  stairDoorsNfpa: nfpa('Stair enclosure re-entry', '7.2.1.5.8'),
  highRiseStairs: ibc('Stairway doors in high-rise buildings', ['403.5.3', '403.5.3', '403.5.3']),
  educationalLocking: ibc('Locking in educational buildings', ['1010.1.4.4', '1010.2.8', '1010.2.7']),
  educationalLockingNfpa: nfpa('Classroom locking', '14/15.2.2.2.4', '14/15.2.2.2.4', '14/15.2.2.2.4'),
  panicHardware: ibc('Panic and fire exit hardware', ['1010.1.10', '1010.2.9', '1010.2.8']),
  panicHardwareNfpa: nfpa('Panic and fire exit hardware', '7.2.1.7', '7.2.1.7', '7.2.1.7'),
  elevatorLobby: ibc('Elevator lobby exit access doors', [
    'none; see 3006.4',
    'none; see 3006.4',
    '1010.2.14',
  ]),
  elevatorLobbyNfpa: nfpa('Elevator lobby exit access door locking', '7.2.1.6.3', '7.2.1.6.3', '7.2.1.6.3'),
  openingForce: ibc('Door opening force', ['1010.1.3', '1010.1.3', '1010.1.3']),
  doorWidth: ibc('Size of doors', ['1010.1.1', '1010.1.1', '1010.1.1']),
  doorSwing: ibc('Egress door types and swing', ['1010.1.2', '1010.1.2', '1010.1.2']),
  revolvingDoors: ibc('Revolving doors', ['1010.1.4.1', '1010.3.1', '1010.3.1']),
  powerDoors: ibc('Power-operated doors', ['1010.1.4.2', '1010.3.2', '1010.3.2']),
  foldingDoors: ibc('Special-purpose sliding, accordion and folding doors', [
    '1010.1.4.3',
    '1010.3.3',
    '1010.3.3',
  ]),
  securityGrilles: ibc('Security grilles', ['1010.1.4.5', '1010.3.4', '1010.3.4']),
  gates: ibc('Gates', ['1010.2', '1010.4', '1010.4']),
  turnstiles: ibc('Turnstiles', ['1010.3', '1010.5', '1010.5']),
  doorsInSeries: ibc('Doors in series', ['1010.1.8', '1010.1.7', '1010.1.7']),
  interveningRooms: ibc('Egress through other rooms', ['1016.2', '1016.2', '1016.2']),
  egressCourts: ibc('Egress courts', ['1028.4', '1029', '1029']),
  automaticEntrances: ibc('Automatic doors at public entrances', ['none', '1105.1.1', '1105.1.1']),
  egressCapacity: ibc('Egress capacity', ['1005.3', '1005.3', '1005.3']),
  occupantLoads: ibc('Occupant load', ['1004.5', '1004.5', '1004.5']),
  exitsRequired: ibc('Number of exits', ['1006', '1006', '1006']),
  openingProtectives: ibc('Opening protectives', ['716', '716', '716']),
  fireDoorLatching: ibc('Fire doors closing and latching', ['716.2.6.1', '716.2.6.1', '716.2.6.1']),
  smokeActivatedClosing: ibc('Smoke-activated closing', ['716.2.6.6', '716.2.6.6', '716.2.6.6']),
  smokeBarrierDoors: ibc('Smoke barrier doors', ['709.5', '709.5', '709.5']),
  hospitalCorridorDoors: ibc('I-2 corridor doors', ['407.3.1', '407.3.1', '407.3.1']),
  horizontalExits: ibc('Horizontal exits', ['1026', '1026', '1026']),
  assemblyMainExit: ibc('Assembly main exit', ['1029.2', '1030.2', '1030.2']),
  incidentalUses: ibc('Incidental uses', ['509', '509', '509']),
  detentionUse: ibc('Group I-3', ['408', '408', '408']),
  toiletRooms: ibc('Toilet room door locking', ['2902.3.5', '2902.3.5', '2902.3.5']),
  clinicalLocks: ibc('Clinical locks opened by staff', ['none', '1010.2.4 item 2', '1010.2.4 item 2']),
  exteriorSpaces: ibc('Exterior spaces whose egress leads back inside', [
    'none',
    '1010.2.4 item 8',
    '1010.2.4 item 8',
  ]),
  refrigerationRooms: ibc('Refrigeration machinery rooms', ['1006.2.2.2', '1006.2.2.2', '1006.2.2.2']),
  careSuites: ibc('Care suites', ['407.4.4', '407.4.4', '407.4.4']),
  careSuitesNfpa: nfpa('Health-care suites', '18/19.2.5.7'),
  hospitalCorridorDoorsNfpa: nfpa('Health-care corridor doors', '18/19.3.6.3'),
  residentialLocksNfpa: nfpa('Releasing operations at residential units', '7.2.1.5.10.4'),
  stormShelters: ibc('Storm shelters', ['423', '423', '423']),
  accessibleEgress: ibc('Accessible means of egress', ['1009', '1009', '1009']),
  rescueElevators: ibc('Fire service and evacuation elevators', ['3007, 3008', '3007, 3008', '3007, 3008']),
  highRise: ibc('High-rise buildings', ['403', '403', '403']),
  seriesNfpa: nfpa('Doors in a means of egress', '7.2.1', '7.2.1', '7.2.1'),
  assemblyKeyLockNfpa: nfpa('Assembly main entrance locking', '12/13.2.2.2', '12/13.2.2.2', '12/13.2.2.2'),
  doorInspectionNfpa: nfpa('Inspection of door openings', '7.2.1.15', '7.2.1.15', '7.2.1.14'),
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
  if (!section) throw new Error(`No section of ${year} is known for ${topic}.`);
  return text(book, `${year} ${section}`, what);
}

/** "IBC 2021 1010.2.13 (Delayed egress)"; a book that is not adopted is cited with its newest known section. */
export function citeInWords(cite: Cite, basis: CodeBasis): string {
  const what = cite.what ? ` (${cite.what})` : '';
  const any = cite.sections.any;
  if (any !== undefined) return `${books[cite.book]}${any ? ` ${any}` : ''}${what}`;
  const adopted = (basis as Record<string, number | null>)[cite.book] ?? null;
  if (adopted === null) {
    const [year, section] = Object.entries(cite.sections).at(-1) ?? ['', ''];
    return `${books[cite.book]} ${year}${section ? ` ${section}` : ''}${what}, not adopted here`;
  }
  const section = cite.sections[String(adopted)] ?? '';
  return `${books[cite.book]} ${adopted} ${section || '(clause number of this edition not seen)'}${what}`;
}
