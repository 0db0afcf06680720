import { z } from 'zod';
import { type Project, projectSchema } from '../model/project.ts';
import { migrations, newestFormat } from './migrations.ts';
import { isRecord, type SetAside, withoutDamage } from './quarantine.ts';

export type { SetAside } from './quarantine.ts';

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
      return `The file could not be brought up to date in step “${problem.step}”: ${problem.says}. It was left untouched.`;
    case 'invalid':
      return `The file is damaged: ${problem.problems.slice(0, 3).join('; ')}. It was left untouched.`;
  }
}

/** Text → project. Recognise, check the version, migrate, validate; openings that cannot be read are set aside. */
export function openProjectText(text: string): Opened {
  let raw: unknown;
  try {
    raw = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch (error) {
    return {
      ok: false,
      problem: { kind: 'notJson', says: error instanceof Error ? error.message : String(error) },
    };
  }
  return openProjectData(raw);
}

const envelope = z.looseObject({ format: z.literal(fileMarker), formatVersion: z.number().int().min(1) });

export function openProjectData(raw: unknown): Opened {
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
  return readProject(data, migrated);
}

/** Parts that cannot be read are set aside one by one; only a damaged frame makes the file unreadable. */
function readProject(data: unknown, migrated: readonly string[]): Opened {
  const setAside: SetAside[] = [];
  const parsed = projectSchema.safeParse(isRecord(data) ? withoutDamage(data, setAside) : data);
  if (!parsed.success) {
    const problems = parsed.error.issues.map(
      (issue) => `${issue.path.join('.') || 'project'}: ${issue.message}`,
    );
    return { ok: false, problem: { kind: 'invalid', problems } };
  }
  return { ok: true, project: parsed.data as Project, migrated, setAside };
}
/** Project → text, with keys in a fixed order: saving what was opened gives identical bytes. */
export function saveProjectText(project: Project): string {
  const file: ProjectFile = { format: fileMarker, formatVersion: newestFormat, project };
  return `${JSON.stringify(sortKeys(file), null, 1)}\n`;
}

function sortKeys(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sortKeys);
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([, inner]) => inner !== undefined)
      .toSorted(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0))
      .map(([key, inner]) => [key, sortKeys(inner)]),
  );
}
