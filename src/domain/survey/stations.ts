import type { FieldGroup } from '../model/field.ts';
import { type FactKey, fieldInfo } from '../model/fields.ts';

/** Places round a door, in the order in which somebody who stands before it looks: each is looked at once. */
export const stations = {
  wanted: 'What is wanted',
  face: 'Face',
  edge: 'Edge and label',
  frame: 'Frame and strike',
  head: 'Head',
  wall: 'Ceiling and wall',
  room: 'Room and people',
  building: 'Building',
} as const;
export type Station = keyof typeof stations;
export const stationOrder = Object.keys(stations) as readonly Station[];

const ofGroup: Readonly<Record<FieldGroup, Station>> = {
  wishes: 'wanted',
  door: 'face',
  latch: 'edge',
  pair: 'edge',
  fire: 'edge',
  frame: 'frame',
  site: 'wall',
  egress: 'room',
  stair: 'room',
  use: 'room',
  health: 'room',
  building: 'building',
};

/** Facts that are seen elsewhere than the rest of their part of the survey. */
const elsewhere: { readonly [K in FactKey]?: Station } = {
  // The leaf tells its thickness and what it hangs on at its edge; its bar and its trim are on its face.
  leafThicknessIn: 'edge',
  hinges: 'edge',
  frameMaterial: 'face',
  panicPresent: 'face',
  exitHardwareFireListed: 'face',
  egressHardwareHeightIn: 'face',
  hardwareForceLbf: 'face',
  inactiveHasHardware: 'face',
  mullion: 'face',
  clearWidthIn: 'face',
  barrierHeightIn: 'face',
  breakaway: 'face',
  exterior: 'face',
  workStatus: 'face',
  latchProjectionIn: 'frame',
  latchPreload: 'frame',
  framePrepared: 'frame',
  smokeSeals: 'frame',
  leafRaceway: 'edge',
  closing: 'head',
  holdOpen: 'head',
  operator: 'head',
  coordinator: 'head',
  activeCouldCloseFirst: 'head',
  headerRoom: 'head',
  exitSign: 'head',
  // It counts by how many people there are.
  swingsWithEgress: 'room',
  wallConstruction: 'wall',
  wallKind: 'wall',
  wallRatingMin: 'wall',
  // Nobody asks for people to be kept in before the room is known: few uses allow it.
  wishControlledEgress: 'room',
  wishDelay30s: 'room',
  delay30sApproved: 'room',
};

export function stationOf(key: FactKey): Station {
  const { group, scope } = fieldInfo(key);
  return scope === 'building' ? 'building' : (elsewhere[key] ?? ofGroup[group]);
}
