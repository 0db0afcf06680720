import type { ReadModel } from '../../domain/import/buildingModel.ts';
import { entriesOf } from '../zip.ts';

/** Reads a building model; in a browser this is done in a worker, elsewhere at once. */
export type ModelReader = (bytes: Uint8Array) => Promise<ReadModel>;

export const startOf = (bytes: Uint8Array) => new TextDecoder('latin1').decode(bytes.subarray(0, 4_000));
export const isZip = (bytes: Uint8Array) => bytes[0] === 0x50 && bytes[1] === 0x4b;

/** A building model by what stands in it, whatever the file is called. */
export function isModel(bytes: Uint8Array): boolean {
  if (isZip(bytes)) {
    const entries = entriesOf(bytes);
    return typeof entries !== 'string' && entries.some(({ name }) => /\.ifc(xml)?$/i.test(name));
  }
  const text = startOf(bytes);
  return /^(ï»¿)?\s*ISO-10303-21\s*;/.test(text) || /FILE_SCHEMA\s*\(|<ifcXML|<(ifc:)?ifcXML/i.test(text);
}
