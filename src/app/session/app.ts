import type { Command } from '../../domain/commands/command.ts';
import type { Project } from '../../domain/model/project.ts';
import type { Edition } from '../../storage/database.ts';
import type { FileToSave } from '../../storage/fileAccess.ts';
import type { BackupSummary, ProjectSummary } from '../../storage/projectStore.ts';
import type { Clock, NewId } from '../clock.ts';
import type { DraftDesk } from '../draftDesk.ts';
import type { Meeting, TakeHow } from '../meeting.ts';
import type { PhotoDesk } from '../photoDesk.ts';
import type { PreferenceBox } from '../preferences.ts';
import type { SignerBox } from '../signerBox.ts';
import type { AppStore } from '../store.ts';
import type { Told } from './kit.ts';

export type { BackupSummary, ProjectSummary } from '../../storage/projectStore.ts';

/** What screens ask of the session. */
export interface App {
  readonly store: AppStore;
  readonly preferences: PreferenceBox;
  /** What is typed into the fields of the shown project. */
  readonly drafts: Pick<DraftDesk, 'type' | 'drop' | 'show'>;
  /** Ids for new floors, spaces and openings; works where `crypto.randomUUID` is missing. */
  readonly newId: NewId;
  /** What time it is; screens ask here, so that a test can say. */
  readonly clock: Clock;
  readonly signer: SignerBox;
  /** Pictures of openings: kept, read and sent with a file. */
  readonly photos: PhotoDesk;
  /** Opens the last project, or the demo where nothing is stored. Until it ends, `session.ready` is false. */
  readonly start: () => Promise<void>;
  readonly flush: () => Promise<void>;
  /** Flushes and lets go of the project; for tests and for replacing the app. */
  readonly close: () => Promise<void>;

  /** Puts what is on the screen where the stored project was, after the data of the site was cleared. */
  readonly storeAgain: () => Promise<void>;

  /** With every picture; `says` names what could not be read. */
  readonly copyToSave: () => Promise<CopyToSave>;
  readonly downloadCopy: () => Promise<void>;
  /** The same copy, handed to the device to send; only where it can (`canSend`). */
  readonly sendCopy: () => Promise<Told>;
  /** The same copy, to be opened with a passphrase only. */
  readonly downloadLocked: (passphrase: string) => Promise<Told>;
  /** A file of a project that is here already is only compared; `takeFile` says what becomes of it. */
  readonly openFile: (
    file: Pick<Blob, 'arrayBuffer'>,
    passphrase?: string,
  ) => Promise<Told<{ readonly meets?: Meeting; readonly locked?: string }>>;
  readonly takeFile: (meeting: Meeting, how: TakeHow) => Promise<Told>;

  readonly listProjects: () => Promise<Told<{ readonly projects: readonly ProjectSummary[] }>>;
  readonly openProject: (id: string) => Promise<Told>;
  readonly createProject: (name: string) => Promise<Told>;
  readonly removeProject: (id: string) => Promise<Told>;
  /** Takes a project out of this browser with its backups, second copy, list of edits and drafts. */
  readonly eraseProject: (id: string) => Promise<Told>;
  readonly listBackups: (projectId?: string) => Promise<Told<{ readonly backups: readonly BackupSummary[] }>>;
  /** Keeps the project as it is now, before something changes much of it at once. */
  readonly copyBeforeList: () => Promise<Told>;
  readonly restoreBackup: (backupId: number) => Promise<Told>;
  /** Freezes the project as it is now under a number. */
  readonly issueEdition: (edition: Edition) => Promise<Told>;
  readonly openEdition: (
    backupId: number,
  ) => Promise<Told<{ readonly project: Project; readonly edition: Edition }>>;
  readonly listCommands: () => Promise<Told<{ readonly commands: readonly Command[] }>>;
  /** The user has seen the damaged parts; they stay in the backups only. */
  readonly forgetSetAside: () => void;
  /** Where the work is kept, in sentences. */
  readonly whereKept: () => readonly string[];
  /** When it last went into a file, in a sentence. */
  readonly lastCopy: () => string;
}

export interface CopyToSave extends FileToSave {
  readonly says: string;
}
