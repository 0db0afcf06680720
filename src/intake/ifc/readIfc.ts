import type { IfcAPI } from 'web-ifc';
import type { ReadModel } from '../../domain/import/buildingModel.ts';
import { counted } from '../../domain/text/counted.ts';
import { filesOf } from '../zip.ts';
import type { Engine } from './engine.ts';
import { modelIn, type Step } from './ifcModel.ts';
import { isZip, startOf } from './isModel.ts';
import { linesOf } from './lines.ts';
import { damagedLine } from './damagedLine.ts';

const mostBytes = 300_000_000;

/** The bytes of an IFC file, taken out of its archive, or why there are none. */
function stepBytes(bytes: Uint8Array): Uint8Array | string {
  if (!isZip(bytes)) return bytes;
  const files = filesOf(bytes);
  if (typeof files === 'string') return files;
  const models = [...files].filter(([name]) => /\.ifc$/i.test(name));
  const [only] = models;
  if (!only)
    return 'The archive holds no IFC file in plain form (.ifc). Save the model as IFC (STEP) and open that.';
  if (models.length > 1) {
    return `The archive holds ${models.length} IFC files. Take out the one with the doors and open that.`;
  }
  return only[1];
}

/** A sentence where the file is no whole IFC file in plain form. */
function refusalOf(bytes: Uint8Array): string | undefined {
  const head = startOf(bytes);
  if (/<ifcXML|<\?xml/i.test(head))
    return 'This is IFC as XML. Save the model as IFC (STEP, .ifc) and open that.';
  if (!/(?<!END-)ISO-10303-21\s*;/.test(head))
    return 'The file does not begin as an IFC file does (ISO-10303-21).';
  if (!/FILE_SCHEMA\s*\(\s*\(\s*'[^']*'/.test(head))
    return 'The file does not say which version of IFC it is written in.';
  const tail = new TextDecoder('latin1').decode(bytes.subarray(-400));
  if (!/END-ISO-10303-21\s*;/.test(tail)) {
    return 'The file is cut off: its last line (END-ISO-10303-21) is missing. Export or send it again.';
  }
  return undefined;
}

/** Door records by their names in the text, to be held against what the library gives. */
function doorsNamed(bytes: Uint8Array): number {
  const text = new TextDecoder('latin1').decode(bytes);
  return [...text.matchAll(/#\d+\s*=\s*IFCDOOR(?:STANDARDCASE)?\s*\(/gi)].length;
}

/** How much of the time each part takes on a large model, in hundredths of the whole. */
const whole = 100;
interface Part {
  readonly from: number;
  readonly to: number;
}
const checking: Part = { from: 0, to: 40 };
const loading: Part = { from: 40, to: 90 };
const taking: Part = { from: 90, to: whole };

const partOf =
  (step: Step, { from, to }: Part): Step =>
  (done, total) =>
    step(Math.floor(from + ((to - from) * Math.min(done, total)) / Math.max(total, 1)), whole);

/** The library fetches the file twice from beginning to end: once for its words, once for what stands in them. */
const passes = 2;
/** So much at a time, so that it can be told how far it is. */
const pieceBytes = 1 << 20;

function open(api: IfcAPI, bytes: Uint8Array, step: Step): number {
  let served = 0;
  return api.OpenModelFromCallback(
    (offset, size) => {
      const piece = bytes.subarray(offset, offset + size);
      step((served += piece.length), bytes.length * passes);
      return piece;
    },
    { TAPE_SIZE: pieceBytes },
  );
}

/** Bytes of an IFC file or ifcZIP → doors, rooms and floors, or a sentence. Nothing is thrown. */
export async function readIfc(
  packed: Uint8Array,
  engine: Engine,
  step: Step = () => undefined,
): Promise<ReadModel> {
  const bytes = stepBytes(packed);
  if (typeof bytes === 'string') return { ok: false, says: bytes };
  if (bytes.length > mostBytes) {
    return { ok: false, says: `The model is ${Math.round(bytes.length / 1e6)} MB; up to 300 MB are read.` };
  }
  const refusal = refusalOf(bytes);
  if (refusal !== undefined) return { ok: false, says: refusal };
  // Nothing is told before the program is loaded, which may take long: from the first word on silence means something.
  const api = await engine.ready();
  const stray = damagedLine(bytes, partOf(step, checking));
  if (stray !== undefined) {
    return {
      ok: false,
      says: `The file is damaged near line ${stray}: a record there does not end, or holds a sign that no IFC file has.`,
    };
  }
  const named = doorsNamed(bytes);
  step(loading.from, whole);
  let model = -1;
  try {
    model = open(api, bytes, partOf(step, loading));
    if (model < 0) {
      const schema = /FILE_SCHEMA\s*\(\s*\(\s*'([^']*)'/.exec(startOf(bytes))?.[1] ?? '';
      const says = /^IFC(2X3|4|4X3)(_|$)/i.test(schema)
        ? 'The file is damaged: its records cannot be told apart.'
        : `The model is written in “${schema.slice(0, 40)}”, which is not read. IFC2x3, IFC4 and IFC4.3 are.`;
      return { ok: false, says };
    }
    const read = modelIn(linesOf(api, model), partOf(step, taking));
    const lost = named - read.doors.length;
    const notes =
      lost > 0 && !read.notes.some((note) => note.includes('could not be read'))
        ? [...read.notes, `${counted(lost, 'door record')} of the model could not be read.`]
        : read.notes;
    if (read.doors.length === 0) {
      const says =
        named > 0
          ? `None of its ${counted(named, 'door record')} could be read; the file is damaged.`
          : 'The model holds no doors (IfcDoor).';
      return { ok: false, says };
    }
    return { ok: true, model: { ...read, notes } };
  } catch (error) {
    // What went wrong inside the library may have left it in pieces.
    engine.discard();
    const why = error instanceof Error ? error.message : String(error);
    return { ok: false, says: `The model cannot be read (${why.slice(0, 120)}).` };
  } finally {
    if (model >= 0) close(api, model);
  }
}

/** A model that could not be read may not be closed either; the next one is not its concern. */
function close(api: IfcAPI, model: number): void {
  try {
    api.CloseModel(model);
  } catch {
    // Nothing is left to be done for it.
  }
}
