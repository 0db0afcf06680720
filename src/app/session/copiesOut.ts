import type { Project } from '../../domain/model/project.ts';
import { counted } from '../../domain/text/counted.ts';
import type { Position } from '../../storage/copy/position.ts';
import type { App, CopyToSave } from './app.ts';
import { fileAccess } from './ahead.ts';
import type { Kit } from './kit.ts';

const picturesNotSent = (count: number) =>
  count === 0
    ? ''
    : `${counted(count, 'photo')} of this project could not be read in this browser, so the copy does not hold the picture. What is written about it is in the copy.`;

/** Files of the shown project, and which state of it the last one holds: leaving that unsaved loses nothing. */
export function createCopiesOut(kit: Kit): Pick<
  App,
  'copyToSave' | 'downloadCopy' | 'downloadLocked' | 'sendCopy'
> & {
  readonly isCopied: (project: Project) => boolean;
} {
  const { clock, known, photos, shown, standing, tellProblem } = kit;
  let copied: Project | undefined;

  const copyOf = async (project: Project): Promise<CopyToSave> => {
    const { pictures, missing } = await photos.ofProject(project);
    const { fileOf } = await fileAccess();
    return { ...fileOf(project, clock(), pictures), says: picturesNotSent(missing.length) };
  };

  /** What has left this browser in a file. */
  function noteCopied(project: Project, { revision }: Position): void {
    if (project.id === shown().id) copied = project;
    known.note(project.id, { name: project.name, copiedAt: clock(), copiedRevision: revision });
  }

  return {
    isCopied: (project) => copied === project,
    copyToSave: () => copyOf(shown()),
    downloadCopy: async () => {
      const [project, position] = [shown(), standing.now];
      const file = await copyOf(project);
      (await fileAccess()).downloadFile(file);
      tellProblem(file.says);
      noteCopied(project, position);
    },
    sendCopy: async () => {
      const [project, position] = [shown(), standing.now];
      try {
        const file = await copyOf(project);
        if (!(await (await fileAccess()).sendFile(file))) return { ok: true };
        tellProblem(file.says);
      } catch (error) {
        const why = error instanceof Error ? error.message : String(error);
        return { ok: false, says: `This device did not take the file (${why}). Save a copy and send that.` };
      }
      noteCopied(project, position);
      return { ok: true };
    },
    downloadLocked: async (passphrase) => {
      const [project, position] = [shown(), standing.now];
      try {
        const file = await copyOf(project);
        const { downloadFile, locked } = await fileAccess();
        downloadFile(await locked(file, passphrase));
        tellProblem(file.says);
      } catch (error) {
        const why = error instanceof Error ? error.message : String(error);
        return { ok: false, says: `The copy could not be locked (${why}). Nothing was saved.` };
      }
      noteCopied(project, position);
      return { ok: true };
    },
  };
}
