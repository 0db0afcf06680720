import type { ReadModel } from '../../domain/import/buildingModel.ts';
import type { Engine } from './engine.ts';
import { readIfc } from './readIfc.ts';

/** What a worker tells while it reads, and at its end. */
export type ModelNews =
  | { readonly is: 'step'; readonly done: number; readonly total: number }
  | { readonly is: 'end'; readonly read: ReadModel };

/** Reads in a worker, of a page or of the command line: ten words a second at most, and always an end. */
export async function readAndTell(
  bytes: Uint8Array,
  engine: Engine,
  tell: (news: ModelNews) => void,
): Promise<void> {
  let told = Number.NEGATIVE_INFINITY;
  try {
    const answer = await readIfc(bytes, engine, (done, total) => {
      const now = performance.now();
      if (now - told < 100) return;
      told = now;
      tell({ is: 'step', done, total });
    });
    tell({ is: 'end', read: answer });
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    tell({ is: 'end', read: { ok: false, says: `The reader of building models could not start (${why}).` } });
  }
}
