import type { Edit } from '../commands/edits.ts';
import { nearTieTenths } from '../decide/score.ts';
import { type DeviceId, deviceIds, devices } from '../devices/devices.ts';
import { mostPreferencePoints, type Preference, type Project, type Weights } from '../model/project.ts';
import { counted } from '../text/counted.ts';

export interface PreferenceLine {
  readonly device: DeviceId;
  readonly name: string;
  readonly preference: Preference;
  /** "2 points. The owner’s locksmiths stock its parts. From District standard, edition 4." */
  readonly says: string;
}

/** What this version knows the device of; others are carried along and rank nothing. */
export function preferenceLines({
  weights: { preferred = {} },
}: Pick<Project, 'weights'>): readonly PreferenceLine[] {
  return deviceIds.flatMap((device): PreferenceLine[] => {
    const preference = Object.hasOwn(preferred, device) ? preferred[device] : undefined;
    return preference === undefined
      ? []
      : [{ device, name: devices[device].name, preference, says: preferenceSays(preference) }];
  });
}

function preferenceSays({ points, says, standard }: Preference): string {
  const from = standard === undefined ? '' : ` From ${standard}.`;
  return `${counted(points, 'point')}: ${says}${from}`;
}

/** How much a preference may weigh, in points of 100. */
export const preferencePoints: readonly (readonly [points: number, says: string])[] = [
  [nearTieTenths / 10, `${nearTieTenths / 10} points: decides near-ties`],
  [5, '5 points: outweighs a small advantage'],
  [mostPreferencePoints, `${mostPreferencePoints} points: outweighs a clear advantage`],
];

export const preferenceMeans =
  'A preferred device gets points in the ranking of what the rules leave. It never brings back what a rule prohibits, and the reason is shown wherever it ranks.';

export type PreferenceRead =
  | { readonly ok: true; readonly edits: readonly Edit[] }
  | { readonly ok: false; readonly says: string };

/** A preference as typed. */
export function preferEdits(project: Project, device: string, points: number, says: string): PreferenceRead {
  if (!deviceIds.some((one) => one === device))
    return { ok: false, says: 'Choose the device that is preferred.' };
  if (says.trim() === '')
    return { ok: false, says: 'Say why it is preferred; the reason is shown where it ranks.' };
  const preferred = { ...project.weights.preferred, [device]: { points, says: says.trim() } };
  return { ok: true, edits: [{ kind: 'setWeights', value: withPreferred(project.weights, preferred) }] };
}

export function noLongerPreferred(project: Project, device: DeviceId): readonly Edit[] {
  const { [device]: _gone, ...rest } = project.weights.preferred ?? {};
  return [{ kind: 'setWeights', value: withPreferred(project.weights, rest) }];
}

/** None is said by leaving the list out, so that a project without preferences is written as it always was. */
export function withPreferred(
  { preferred: _before, ...weights }: Weights,
  preferred: NonNullable<Weights['preferred']>,
): Weights {
  return Object.keys(preferred).length === 0 ? weights : { ...weights, preferred };
}
