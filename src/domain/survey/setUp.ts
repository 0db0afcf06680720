import { type AnyFact } from '../model/fact.ts';
import { type FactKey, fieldInfo, valueEntries } from '../model/fields.ts';
import type { Project } from '../model/project.ts';
import type { Edit } from '../commands/command.ts';
import { factsOfLook, type Look, type Preset } from './look.ts';
import { looks } from './looks.ts';
import { mayBeUsual } from './usual.ts';

const offices = { federalHealthCare: false, oshaWorkplace: true } as const;
const low = { highRise: false, voiceAlarm: false, fireCommandCenter: false } as const;

/** What is asked once, before the first door: of the building, and of what most of its doors are like. */
const buildingLooks: readonly Look[] = [
  {
    id: 'use',
    station: 'building',
    ask: 'What is the building used for?',
    presets: [
      { label: 'Offices (B)', facts: { occupancyGroup: 'B', ...offices } },
      { label: 'Shops (M)', facts: { occupancyGroup: 'M', ...offices } },
      { label: 'School (E)', facts: { occupancyGroup: 'E', ...offices } },
      { label: 'Storage (S-1)', facts: { occupancyGroup: 'S-1', ...offices } },
    ],
  },
  {
    id: 'protection',
    station: 'building',
    ask: 'How is it protected?',
    help: 'Sprinklers to NFPA 13: the plate at the riser says so.',
    presets: [
      {
        label: 'Sprinklered throughout (NFPA 13), fire alarm',
        facts: { sprinklered: true, sprinklerKind: 'nfpa13', fireAlarm: true, detectionThroughout: false },
      },
      {
        label: 'Sprinklered throughout (NFPA 13), fire alarm, detection throughout',
        facts: { sprinklered: true, sprinklerKind: 'nfpa13', fireAlarm: true, detectionThroughout: true },
      },
      {
        label: 'Fire alarm, no sprinklers',
        facts: { sprinklered: false, fireAlarm: true, detectionThroughout: false },
      },
      {
        label: 'Neither sprinklers nor fire alarm',
        facts: { sprinklered: false, fireAlarm: false, detectionThroughout: false },
      },
    ],
  },
  {
    id: 'height',
    station: 'building',
    ask: 'How high is it?',
    presets: [1, 2, 3, 4, 5, 6].map((storiesAboveGrade) => ({
      label: storiesAboveGrade === 1 ? '1 story' : `${storiesAboveGrade} stories, not a high-rise`,
      facts: { storiesAboveGrade, ...low } as const,
    })),
  },
  {
    id: 'power',
    station: 'building',
    ask: 'How do lock power and cable get to the doors?',
    presets: [
      {
        label: 'Above the ceiling from a closet, 24 V, runs of about 100 ft',
        facts: { powerAtDoor: true, cablePath: true, supplyVolts: '24', distanceToSupplyFt: 100 },
      },
      {
        label: 'Above the ceiling from a closet, 12 V, runs of about 100 ft',
        facts: { powerAtDoor: true, cablePath: true, supplyVolts: '12', distanceToSupplyFt: 100 },
      },
    ],
  },
  {
    id: 'work',
    station: 'building',
    ask: 'Are the doors new or existing?',
    presets: [
      { label: 'Existing, not altered', facts: { workStatus: 'existing' } },
      { label: 'Existing, being altered', facts: { workStatus: 'altered' } },
      { label: 'New', facts: { workStatus: 'new' } },
    ],
  },
  {
    id: 'place',
    station: 'wall',
    ask: 'Where are most of the doors?',
    presets: [
      { label: 'Inside, in gypsum walls', facts: { exterior: false, wallConstruction: 'gypsum' } },
      { label: 'Inside, in masonry walls', facts: { exterior: false, wallConstruction: 'masonry' } },
    ],
  },
  {
    id: 'basis',
    station: 'building',
    ask: 'Is the code basis confirmed with the authority?',
    help: 'The basis itself stands on the Project page.',
    presets: [
      {
        label: 'Confirmed, local amendments looked through',
        facts: { basisConfirmed: true, amendmentsReviewed: true },
      },
      { label: 'Not yet', facts: { basisConfirmed: false, amendmentsReviewed: false } },
    ],
  },
];

/** Looks at a door that are asked of most doors at once, in set-up. */
const usualIds: ReadonlySet<string> = new Set(['place', 'wishes', 'need', 'leafAndFrame', 'head']);

const setUpLooks: readonly Look[] = [...buildingLooks, ...looks.filter(({ id }) => usualIds.has(id))];

/** What is not said yet of the building and of its usual door; each is passed over by one press. */
export function setUpLeft(project: Project, passedOver: ReadonlySet<string>): readonly Look[] {
  const said = (key: FactKey) => project.building[key] !== undefined || project.usual[key] !== undefined;
  return setUpLooks.filter((look) => !passedOver.has(look.id) && !factsOfLook(look).some(said));
}

export function isUsualLook({ id }: Look): boolean {
  return usualIds.has(id);
}

/** What a press in set-up writes: of the building where it holds for all of it, of the usual where a door may differ. */
export function setUpEdits({ facts }: Preset): readonly Edit[] {
  return valueEntries(facts).flatMap(([fact, value]): Edit[] => {
    const known: AnyFact = { is: 'known', value };
    // A wish is taken or refused at each door: what is said of the building would be taken without a word.
    const ofBuilding = fieldInfo(fact).scope !== 'opening' && !isWish(fact);
    if (ofBuilding) return [{ kind: 'setBuildingFact', fact, value: known }];
    return mayBeUsual(fact) ? [{ kind: 'setUsual', fact, value: known }] : [];
  });
}

function isWish(key: FactKey): boolean {
  return fieldInfo(key).group === 'wishes';
}

export const setUpWords = {
  title: 'Before the first door',
  building: 'One answer for the whole building.',
  usual: 'What most doors here are like. It is offered at each door and never taken by itself.',
  later: 'Later, at the door',
} as const;
