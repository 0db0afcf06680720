import type { FieldGroup } from '../model/field.ts';

/** The parts of a survey, in the order a person looks at a door: the leaf first, its surroundings last. */
export const surveyGroups: readonly { readonly group: FieldGroup; readonly name: string }[] = [
  { group: 'door', name: 'Door' },
  { group: 'frame', name: 'Frame' },
  { group: 'latch', name: 'Latch and exit hardware' },
  { group: 'pair', name: 'Pair' },
  { group: 'fire', name: 'Fire and smoke' },
  { group: 'egress', name: 'Egress' },
  { group: 'stair', name: 'Stair and roof' },
  { group: 'use', name: 'Room and use' },
  { group: 'health', name: 'Health care' },
  { group: 'wishes', name: 'What the owner wants' },
  { group: 'site', name: 'Power, cable path and surroundings' },
];
