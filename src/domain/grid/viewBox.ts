import { z } from 'zod';

const boxSchema = z.record(z.string(), z.unknown());
/** What this browser keeps of the views of all projects, by their ids; nothing where it cannot be read. */
export function boxOf(kept: string): Readonly<Record<string, unknown>> {
  try {
    const read = boxSchema.safeParse(JSON.parse(kept));
    return read.success ? read.data : {};
  } catch {
    return {};
  }
}

/** The views of a project that is erased: their filters hold names of it. */
export function withoutProject(kept: string, projectId: string): string {
  return JSON.stringify(Object.fromEntries(Object.entries(boxOf(kept)).filter(([id]) => id !== projectId)));
}
