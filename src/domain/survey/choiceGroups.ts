import type { FactKey } from '../model/fields.ts';
import { fieldInfo } from '../model/fields.ts';
import { tradeWordsFor } from './tradeWords.ts';

export interface Choice {
  readonly value: string;
  readonly label: string;
  /** Other words of the trade for it, found by a search and shown nowhere. */
  readonly alsoCalled?: string;
}
export interface ChoiceGroup {
  /** Empty for a list that is short enough to stand without heads. */
  readonly name: string;
  readonly choices: readonly Choice[];
}

/** Long lists under heads, so that an eye finds its part first. Every value stands under exactly one head. */
const heads: { readonly [K in FactKey]?: readonly (readonly [string, readonly string[]])[] } = {
  roomUse: [
    [
      'Offices and rooms for people',
      ['office', 'suiteEntrance', 'conference', 'classroom', 'dayCare', 'courtroom'],
    ],
    ['Corridors and lobbies', ['corridor', 'lobby', 'areaOfRefuge', 'rescueElevatorLobby']],
    ['Valuables and data', ['serverRoom', 'modularDataCenter', 'cashRoom', 'pharmacy', 'safeRoom']],
    ['Storage and small rooms', ['storage', 'closet', 'singleToilet', 'multiToilet', 'kitchen']],
    [
      'Technical and hazardous rooms',
      [
        'equipment',
        'electricalRoom',
        'transformerVault',
        'batteryRoom',
        'refrigerationMachinery',
        'elevatorMachineRoom',
        'hazardousRoom',
        'laboratory',
      ],
    ],
    ['Dwelling', ['dwellingEntrance', 'dwellingBedroom', 'unitBalcony']],
    ['Care and custody', ['patientRoom', 'patientUnit', 'memoryCare', 'detention']],
    ['Outside and other', ['parking', 'site', 'officeTerrace', 'stormShelter', 'other']],
  ],
  doorType: [
    ['Swinging', ['single', 'pair', 'doubleEgressPair', 'doubleActing', 'balanced']],
    [
      'Sliding and turning',
      ['slidingManual', 'slidingAutomatic', 'folding', 'revolving', 'overhead', 'grille'],
    ],
    ['Gates and turnstiles', ['gateSwing', 'gateSlide', 'turnstile', 'turnstileFull', 'turnstileSecurity']],
  ],
  latch: [
    ['In the edge of the leaf', ['bored', 'mortise', 'mortiseDeadbolt', 'boredPlusDeadbolt', 'deadboltOnly']],
    ['Bar across the leaf', ['rimExit', 'verticalRods', 'rimPlusRods', 'railExit']],
    ['Narrow stile and glass', ['deadlatch', 'hookbolt', 'patch']],
    ['Other, or none', ['roller', 'gateLock', 'operatorLock', 'pushPull']],
  ],
};

/** What can be answered, under heads where the list is long; undefined for numbers. */
export function choiceGroupsOf(key: FactKey): readonly ChoiceGroup[] | undefined {
  const info = fieldInfo(key);
  if (info.kind === 'number') return undefined;
  if (info.kind === 'yesNo') {
    return [
      {
        name: '',
        choices: [
          { value: 'yes', label: 'Yes' },
          { value: 'no', label: 'No' },
        ],
      },
    ];
  }
  const options = info.options ?? {};
  const choice = (value: string): Choice => ({
    value,
    label: options[value] ?? value,
    alsoCalled: tradeWordsFor(key, value),
  });
  const grouped = heads[key];
  if (!grouped) {
    return [{ name: '', choices: Object.keys(options).map(choice) }];
  }
  return grouped.map(([name, values]) => ({ name, choices: values.map(choice) }));
}

/** More choices than fit under a thumb: then the list can be searched. */
export const searchedFrom = 12;

const wordsOf = (text: string) =>
  text
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter(Boolean);

/**
 * The groups with only the choices in which every typed word begins a word: of the label, of the head above it, or of
 * what the trade also calls it. Beginnings only, or “IT” would find every suite and kitchen.
 */
export function findChoices(groups: readonly ChoiceGroup[], typed: string): readonly ChoiceGroup[] {
  const wanted = wordsOf(typed);
  const found = ({ label, alsoCalled = '' }: Choice, group: ChoiceGroup) => {
    const words = wordsOf(`${label} ${group.name} ${alsoCalled}`);
    return wanted.every((word) => words.some((one) => one.startsWith(word)));
  };
  return groups
    .map((group) => ({ ...group, choices: group.choices.filter((choice) => found(choice, group)) }))
    .filter((group) => group.choices.length > 0);
}
