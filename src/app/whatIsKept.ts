import { mostBackups, newestKept } from '../storage/backups.ts';
import { commandsKept } from '../storage/projectStore.ts';

export { commandsKept } from '../storage/projectStore.ts';
import { mostLines } from './lineLog.ts';

/** What stays in this browser and for how long, as the Files page says it. */
export const whatIsKept: readonly string[] = [
  `Backups of a project: the ${newestKept} newest and the newest of each earlier day, ${mostBackups} in all. Beside them the newest one from before a change of format, and the newest that holds another history of the project, for as long as the project is not erased.`,
  `A backup is made at the first save of a day, and before a file, another backup or a door list takes the place of anything.`,
  `The list of edits: the newest ${commandsKept.toLocaleString('en-US')} of each project, undo and redo included, and of the older ones verdicts, choices by hand, local amendments, the code basis, comments and questions.`,
  `The second copy: the project as it is, in two files written in turn, and at most ${mostLines} edits after each.`,
  'What is typed and not saved yet, until it is saved or discarded. Your name, the look of the screens and the columns you matched by hand, until the data of this site is cleared. How the schedule of a project is looked at and the views saved of it, until the project is erased.',
  '“Remove” takes a project off the list and leaves its backups and its list of edits here. “Erase for good” takes away all of it: project, backups, second copy, list of edits, views and what is typed. Files you saved stay where you put them, and erasing does not overwrite the disk: a lent device wants an encrypted one.',
];
