declare const unitOf: unique symbol;

/** Units a quantity can carry. A new one is added here, so a slip of spelling does not compile. */
export type Unit =
  | 'in'
  | 'ft'
  | 'mm'
  | 'm'
  | 'km'
  | 'ft²'
  | 'mm²'
  | 'cmil'
  | 'lbf'
  | 'ft·lbf'
  | 'V'
  | 'A'
  | 'Ω'
  | 'Ω/kft'
  | 'Ω/km'
  | 'W'
  | 'VA'
  | 'Ah'
  | 'h'
  | '°C'
  | '°'
  | 'people'
  | 'min';

/** A number that knows its unit. It costs nothing at run time and cannot be handed over in another unit. */
export type Qty<U extends Unit> = number & { readonly [unitOf]: U };

/** The one place where a bare number gets a unit: `qty(36, 'in')`. */
export function qty<U extends Unit>(value: number, _unit: U): Qty<U> {
  return value as Qty<U>;
}
