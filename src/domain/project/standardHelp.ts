import { mappingKey } from '../import/headers.ts';
import type { Project } from '../model/project.ts';
import type { StandardHelp } from './standardFile.ts';

/** How schedules are read by the standards the project follows; what a person of this browser chose goes before it. */
export function mappingsOf({ standards }: Pick<Project, 'standards'>): {
  readonly columns: Readonly<Record<string, string>>;
  readonly words: Readonly<Record<string, string>>;
} {
  const all = Object.values(standards);
  return {
    columns: Object.assign({}, ...all.map(({ columns = {} }) => columns)) as Record<string, string>,
    words: Object.assign({}, ...all.map(({ words = {} }) => words)) as Record<string, string>,
  };
}

export const templatesHelp =
  'One a line: the mark, and after a colon what the owner calls it. “101: Office on a corridor”.';

export type TemplatesRead =
  | { readonly ok: true; readonly templates: NonNullable<StandardHelp['templates']> }
  | { readonly ok: false; readonly says: string };

/** Lines as typed → openings of this project as templates. What is said of one door alone, such as its mark, stays here. */
export function readTemplates(project: Project, typed: string): TemplatesRead {
  const templates: Record<string, NonNullable<StandardHelp['templates']>[string]> = {};
  for (const line of typed.split('\n').map((one) => one.trim())) {
    if (line === '') continue;
    const [mark = '', name = ''] = line.split(/:(.*)/).map((part) => part.trim());
    const opening = Object.values(project.openings).find((one) => mappingKey(one.mark) === mappingKey(mark));
    if (!opening) return { ok: false, says: `There is no opening ${mark} to take as a template.` };
    const facts = Object.fromEntries(
      Object.entries(opening.facts).flatMap(([key, fact]) => {
        if (fact.is === 'unknown') return [];
        const { at: _at, by: _by, ...bare } = fact;
        return [[key, bare]];
      }),
    );
    templates[opening.id] = { name: (name === '' ? opening.mark : name).slice(0, 300), facts };
  }
  return { ok: true, templates };
}
