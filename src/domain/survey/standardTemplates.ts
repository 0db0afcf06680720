import { newOpening } from '../model/newProject.ts';
import type { Opening, Project } from '../model/project.ts';
import { standardInWords } from '../model/standard.ts';

/**
 * The openings an owner’s standards bring to start others from. Each stands under its name and the edition it comes from,
 * which a door keeps as the origin of every fact it takes over.
 */
export function standardTemplates({ standards }: Pick<Project, 'standards'>): readonly Opening[] {
  return Object.values(standards).flatMap((standard) =>
    Object.entries(standard.templates ?? {}).map(
      ([id, { name, facts }]): Opening => ({
        ...newOpening(`${standard.id}/${id}`, `${name} (${standardInWords(standard)})`),
        facts: facts as Opening['facts'],
      }),
    ),
  );
}

/** An opening of the project, or one that a standard brings. */
export function templateById(project: Project, id: string): Opening | undefined {
  return Object.hasOwn(project.openings, id)
    ? project.openings[id]
    : standardTemplates(project).find((one) => one.id === id);
}
