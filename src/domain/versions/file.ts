import { z } from 'zod';
import { type Project, projectSchema, type SetAside } from '../model/project.ts';
import { sortKeys } from '../model/sorted.ts';
import { migrations, newestFormat } from './migrations.ts';
import { inWords } from './plainWords.ts';
import { holdsNothing, isRecord, withoutDamage } from './quarantine.ts';
import { repeatedNames } from './repeatedNames.ts';

/** The project file: a JSON object that names its format and carries one project. */
export const fileMarker = 'latchward-project';

export interface ProjectFile {
  readonly format: typeof fileMarker;
  readonly formatVersion: number;
  readonly project: Project;
}

export type OpenProblem =
  | { readonly kind: 'notJson'; readonly says: string }
  | { readonly kind: 'notOurFile' }
  | { readonly kind: 'tooNew'; readonly found: number; readonly newest: number }
  | { readonly kind: 'migrationFailed'; readonly step: string; readonly says: string }
  | { readonly kind: 'invalid'; readonly problems: readonly string[] };

export type Opened =
  | {
      readonly ok: true;
      readonly project: Project;
      /** Names of the migrations that were needed, oldest first. */
      readonly migrated: readonly string[];
      readonly setAside: readonly SetAside[];
    }
  | { readonly ok: false; readonly problem: OpenProblem };

export function openProblemInWords(problem: OpenProblem): string {
  switch (problem.kind) {
    case 'notJson':
      return `This file is not readable as JSON: ${problem.says}. Nothing was changed.`;
    case 'notOurFile':
      return 'This is not a Latchward project file. Nothing was changed.';
    case 'tooNew':
      return `This file was written by a newer version (format ${problem.found}; this version reads up to ${problem.newest}). Open it with that version; it was left untouched.`;
    case 'migrationFailed':
      return `The file could not be updated in step “${problem.step}”: ${problem.says}. It was left untouched.`;
    case 'invalid':
      return `The file is damaged: ${problem.problems.slice(0, 3).join('; ')}. It was left untouched.`;
  }
}

/** Text → project. Recognize, check the version, migrate, validate; openings that cannot be read are set aside. */
export function openProjectText(text: string): Opened {
  const body = text.replace(/^\uFEFF/, '');
  let raw: unknown;
  try {
    raw = JSON.parse(body);
  } catch (error) {
    return {
      ok: false,
      problem: { kind: 'notJson', says: error instanceof Error ? error.message : String(error) },
    };
  }
  return openProjectData(raw, droppedByParsing(body));
}

/** Of two entries with one name parsing keeps the later one and drops the earlier without a word. */
function droppedByParsing(text: string): SetAside[] {
  return repeatedNames(text).map(({ path, dropped }) => {
    const [frame, table, id] = path;
    return {
      where: path.join('.'),
      says: 'This name appears twice in the file. The later entry was kept; this is the earlier one.',
      raw: dropped,
      // What comes in a second opening of one id is no part of the first.
      ...(frame === 'project' && table === 'openings' && id !== undefined && path.length > 3
        ? { openingId: id }
        : {}),
    };
  });
}

const envelope = z.looseObject({ format: z.literal(fileMarker), formatVersion: z.number().int().min(1) });

export function openProjectData(raw: unknown, dropped: readonly SetAside[] = []): Opened {
  const head = envelope.safeParse(raw);
  if (!head.success) return { ok: false, problem: { kind: 'notOurFile' } };
  const version = head.data.formatVersion;
  if (version > newestFormat) {
    return { ok: false, problem: { kind: 'tooNew', found: version, newest: newestFormat } };
  }
  let data: unknown = head.data.project;
  const migrated: string[] = [];
  for (const step of migrations.filter((one) => one.to > version)) {
    try {
      data = step.up(data);
      migrated.push(step.name);
    } catch (error) {
      const says = error instanceof Error ? error.message : String(error);
      return { ok: false, problem: { kind: 'migrationFailed', step: step.name, says } };
    }
  }
  return readProject(data, migrated, dropped);
}

/** Parts that cannot be read are set aside one by one, in the project itself; only an empty frame is refused. */
function readProject(data: unknown, migrated: readonly string[], dropped: readonly SetAside[]): Opened {
  if (!isRecord(data) || holdsNothing(data)) {
    const problems = ['it holds no floors, spaces or openings that could be read'];
    return { ok: false, problem: { kind: 'invalid', problems } };
  }
  const setAside: SetAside[] = [...dropped];
  const clean = withoutDamage(data, setAside);
  const parsed = projectSchema.safeParse(clean);
  if (!parsed.success) return { ok: false, problem: { kind: 'invalid', problems: [inWords(parsed.error)] } };
  const project = parsed.data as Project;
  const here = setAside.map(({ openingId, ...one }) =>
    openingId !== undefined && Object.hasOwn(project.openings, openingId) ? { ...one, openingId } : one,
  );
  if (here.length === 0) return { ok: true, project, migrated, setAside: [] };
  return {
    ok: true,
    project: { ...project, setAside: [...(project.setAside ?? []), ...here] },
    migrated,
    setAside: here,
  };
}

/** Project → text, with keys in a fixed order: saving what was opened gives identical bytes. */
export function saveProjectText(project: Project): string {
  const file: ProjectFile = { format: fileMarker, formatVersion: newestFormat, project };
  return `${JSON.stringify(sortKeys(file), null, 1)}\n`;
}
