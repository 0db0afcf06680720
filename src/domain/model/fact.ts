import { z } from 'zod';
import { type AnyValue, type FactKey, type FactValue, factKeys, factSchemas, isFactKey } from './fields.ts';

/** When and by whom a value was entered; lets two copies of a project be merged field by field. */
const stamp = { at: z.iso.datetime().optional(), by: z.string().optional() };

/**
 * A surveyed fact and its standing. `known` was seen or confirmed; `assumed` is a default and says where it
 * came from; `unknown` was asked and not answered. A key that is absent was not asked yet; both count as unknown.
 */
export function factSchema<T extends z.ZodType>(value: T) {
  return z.discriminatedUnion('is', [
    z.looseObject({ is: z.literal('known'), value, ...stamp }),
    z.looseObject({ is: z.literal('assumed'), value, from: z.string().min(1), ...stamp }),
    z.looseObject({ is: z.literal('unknown'), ...stamp }),
  ]);
}

export type Fact<T> =
  | {
      readonly is: 'known';
      readonly value: T;
      readonly at?: string | undefined;
      readonly by?: string | undefined;
    }
  | {
      readonly is: 'assumed';
      readonly value: T;
      readonly from: string;
      readonly at?: string | undefined;
      readonly by?: string | undefined;
    }
  | { readonly is: 'unknown'; readonly at?: string | undefined; readonly by?: string | undefined };

export type AnyFact = Fact<AnyValue>;

export type Facts = { readonly [K in FactKey]?: Fact<FactValue<K>> };

const shape = Object.fromEntries(
  factKeys.map((key) => [key, factSchema(factSchemas[key]).optional()]),
) as unknown as { [K in FactKey]: z.ZodOptional<z.ZodType<Fact<FactValue<K>>>> };

/** Loose: a fact written by a newer version is carried along, never dropped. */
export const factsSchema = z.looseObject(shape);

/** A fact whose key is known only when the program runs. */
export function factAt(facts: Facts, key: FactKey): AnyFact | undefined {
  return facts[key];
}

/** The facts that stand, with their keys; what only a newer version knows is passed over. */
export function factEntries(facts: Facts): readonly (readonly [FactKey, AnyFact])[] {
  return Object.entries(facts).flatMap(([key, fact]) => (isFactKey(key) ? [[key, fact] as const] : []));
}
