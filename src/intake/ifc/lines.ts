import type { IfcAPI } from 'web-ifc';

/** One argument of a record as web-ifc gives it: nothing, a value with its kind, or a list. */
export type Argument =
  | null
  | undefined
  | { readonly type?: unknown; readonly value?: unknown }
  | readonly Argument[];

/** Records of an open model by their number and kind; what is not there or cannot be read is undefined, never thrown. */
export interface Lines {
  readonly ids: (kind: string) => readonly number[];
  readonly kind: (id: number) => string;
  readonly line: (id: number | undefined) => readonly Argument[] | undefined;
}

export function linesOf(api: IfcAPI, model: number): Lines {
  return {
    ids: (kind) => [...api.GetLineIDsWithType(model, api.GetTypeCodeFromName(kind))],
    kind: (id) => {
      try {
        return api.GetNameFromTypeCode(Number(api.GetLineType(model, id))).toUpperCase();
      } catch {
        return '';
      }
    },
    line: (id) => {
      if (id === undefined) return undefined;
      try {
        const read = api.GetRawLineData(model, id) as { readonly arguments?: unknown } | undefined;
        return Array.isArray(read?.arguments) ? (read.arguments as readonly Argument[]) : undefined;
      } catch {
        return undefined;
      }
    },
  };
}

const isList = (argument: Argument): argument is readonly Argument[] => Array.isArray(argument);
const valueIn = (argument: Argument): unknown =>
  argument === null || argument === undefined || isList(argument) ? undefined : argument.value;

/** Text of a label, an enumeration or a typed value; empty where there is none. */
export function text(argument: Argument): string {
  const value = valueIn(argument);
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return typeof value === 'string' || typeof value === 'number'
    ? String(value).replace(/\s+/g, ' ').trim()
    : '';
}

export function number(argument: Argument): number | null {
  const said = text(argument);
  const value = said === '' ? Number.NaN : Number(said);
  return Number.isFinite(value) ? value : null;
}

const referenceKind = 5;
export function reference(argument: Argument): number | undefined {
  if (argument === null || argument === undefined || isList(argument)) return undefined;
  return argument.type === referenceKind && typeof argument.value === 'number' ? argument.value : undefined;
}

/** All references of a list, of a typed list, or the one that stands alone. */
export function references(argument: Argument): readonly number[] {
  const list = isList(argument) ? argument : valueIn(argument);
  const all = Array.isArray(list) ? (list as readonly Argument[]) : [argument];
  return all.flatMap((one) => reference(one) ?? []);
}

export function texts(argument: Argument): readonly string[] {
  return isList(argument) ? argument.map(text).filter((one) => one !== '') : [text(argument)];
}
