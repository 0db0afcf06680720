import { z } from 'zod';

/** Where a fact is asked: of one opening, of the whole building, or of the building with an exception at one opening. */
export type FieldScope = 'opening' | 'building' | 'both';

export type FieldGroup =
  | 'door'
  | 'frame'
  | 'latch'
  | 'pair'
  | 'fire'
  | 'egress'
  | 'stair'
  | 'use'
  | 'health'
  | 'wishes'
  | 'site'
  | 'building';

/** What a person needs to see beside a field. Units stand in the key's last word as well (`leafWidthIn`). */
export interface FieldInfo {
  readonly label: string;
  readonly group: FieldGroup;
  readonly scope: FieldScope;
  /** The question a surveyor is asked, as a whole sentence. */
  readonly ask: string;
  readonly help?: string;
  readonly unit?:
    | 'in'
    | 'ft'
    | 'ft²'
    | 'min'
    | 'people'
    | 'stories'
    | 'A'
    | 'V'
    | 'lbf'
    | 'doors'
    | 's'
    | 'h';
  /** Label of each value, for choices. */
  readonly options?: Readonly<Record<string, string>>;
  readonly kind: 'yesNo' | 'choice' | 'number';
  readonly min?: number;
  readonly max?: number;
}

/** The facts about a field are kept with its schema, so form, import, print and manual read one source. */
export const fieldRegistry = z.registry<FieldInfo>();

type Said = Omit<FieldInfo, 'kind' | 'options' | 'min' | 'max' | 'scope'> & { readonly scope?: FieldScope };

export function yesNo(said: Said) {
  return z
    .boolean(`${said.label} is answered by yes or no.`)
    .register(fieldRegistry, { scope: 'opening', ...said, kind: 'yesNo' });
}

export function choice<const K extends string>(options: Readonly<Record<K, string>>, said: Said) {
  const keys = Object.keys(options) as [K, ...K[]];
  return z
    .enum(keys, `${said.label} must be one of the answers offered.`)
    .register(fieldRegistry, { scope: 'opening', ...said, kind: 'choice', options });
}

/** A number within a closed range; the message names what is wrong, so it can stand beside the field. */
export function amount(range: { min: number; max: number; whole?: boolean }, said: Said) {
  const unit = said.unit ? ` ${said.unit}` : '';
  const base = z
    .number(`${said.label} must be a number.`)
    .min(range.min, `${said.label} cannot be below ${range.min}${unit}.`)
    .max(range.max, `${said.label} cannot be above ${range.max}${unit}; check the unit.`);
  const schema = range.whole ? base.int(`${said.label} must be a whole number.`) : base;
  return schema.register(fieldRegistry, {
    scope: 'opening',
    ...said,
    kind: 'number',
    min: range.min,
    max: range.max,
  });
}
