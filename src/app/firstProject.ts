import { newProject } from '../domain/model/newProject.ts';
import type { Project } from '../domain/model/project.ts';
import { openProjectText } from '../domain/versions/file.ts';
import type { NewId } from './clock.ts';

/** Its address alone: the demo building is fetched only by somebody who has no project yet. */
const demos = import.meta.glob<string>('../../demo-data/demo-building.json', {
  query: '?url',
  import: 'default',
  eager: true,
});

/** The demo building, or an empty project when it cannot be had: a missing demo must not keep the app shut. */
export async function firstProject(ids: NewId): Promise<Project> {
  try {
    const address = Object.values(demos)[0];
    if (address !== undefined) {
      const answer = await fetch(address);
      const opened = answer.ok ? openProjectText(await answer.text()) : undefined;
      if (opened?.ok) return opened.project;
    }
  } catch {
    // Offline before the demo was ever fetched.
  }
  return newProject(ids(), 'My building');
}
