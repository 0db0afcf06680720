import { type OpenProblem, openProblemInWords } from '../domain/versions/file.ts';

/** What can go wrong with keeping a project. Each kind has one sentence: what happened and what to do. */
export type StorageProblem =
  | { readonly kind: 'noDatabase'; readonly says: string }
  | { readonly kind: 'databaseTooNew' }
  | { readonly kind: 'databaseReplaced' }
  | { readonly kind: 'full' }
  | { readonly kind: 'writeFailed'; readonly says: string }
  | { readonly kind: 'readFailed'; readonly says: string }
  | { readonly kind: 'recordTooNew'; readonly name: string; readonly found: number; readonly newest: number }
  | { readonly kind: 'changedElsewhere' }
  /** Asked, and no answer came within the time given. */
  | {
      readonly kind: 'noAnswer';
      readonly doing: 'opening' | 'reading' | 'writing';
      readonly seconds: number;
      /** The browser said that another window holds the database. */
      readonly blocked: boolean;
    }
  /** Opened from the second copy, because the database is out of reach. */
  | { readonly kind: 'onlyInCopy'; readonly because: StorageProblem }
  /** Stored here before, and gone now although nobody removed it. */
  | { readonly kind: 'storedGone' }
  | { readonly kind: 'noSuchProject' }
  | { readonly kind: 'noSuchBackup' }
  | { readonly kind: 'editionTaken'; readonly number: string }
  | { readonly kind: 'unreadable'; readonly open: OpenProblem };

export type Result<T> =
  | ({ readonly ok: true } & T)
  | { readonly ok: false; readonly problem: StorageProblem };

export function storageProblemInWords(problem: StorageProblem): string {
  switch (problem.kind) {
    case 'noDatabase':
      return `This browser does not let the project be stored (${problem.says}). Your work is only on this screen: save a copy to a file.`;
    case 'databaseTooNew':
      return 'The projects in this browser were stored by a newer version. They were left untouched: reload the page to get that version.';
    case 'databaseReplaced':
      return 'A newer version was started in another window, so this window no longer saves. Save a copy if something is missing there, then reload this page.';
    case 'full':
      return 'The disk or the browser’s storage is full, so the last edits are not saved. Make room or save a copy to a file; saving is tried again.';
    case 'writeFailed':
      return `The last edits could not be saved (${problem.says}). Save a copy to a file; saving is tried again.`;
    case 'readFailed':
      return `The stored projects could not be read (${problem.says}). Nothing was changed.`;
    case 'recordTooNew':
      return `The project “${problem.name}” was stored by a newer version (format ${problem.found}; this version reads up to ${problem.newest}). It was left untouched: reload the page to get that version.`;
    case 'changedElsewhere':
      return 'This project was changed in another window after it was opened here, so this window no longer saves. Save a copy of what is on this screen, then reload the page.';
    case 'noAnswer':
      return noAnswerInWords(problem);
    case 'onlyInCopy':
      return `${outOfReachInWords(problem.because)} This project was opened from its second copy, and what you change is kept there alone. The database is tried again; save a copy to a file.`;
    case 'storedGone':
      return 'The stored project is gone from this browser: its data was cleared while the project was open. What is on this screen may be the only copy. Save a copy to a file, or store the project again.';
    case 'noSuchProject':
      return 'This project is no longer stored in this browser.';
    case 'noSuchBackup':
      return 'This backup is no longer stored in this browser.';
    case 'editionTaken':
      return `Edition ${problem.number} was issued already; an issued edition cannot be changed.`;
    case 'unreadable':
      return openProblemInWords(problem.open);
  }
}

function noAnswerInWords({ doing, seconds, blocked }: Extract<StorageProblem, { kind: 'noAnswer' }>): string {
  const waited = `has not answered for ${seconds} seconds`;
  const closeOthers = 'Close the other windows of this app, then reload this page.';
  if (doing === 'writing') {
    return `The last edits are not saved: the database of this browser ${waited}. Saving is tried again. Save a copy to a file before you close this page.`;
  }
  return blocked
    ? `Another window holds the database of this browser, and it ${waited}. ${closeOthers}`
    : `The database of this browser ${waited}. Nothing in it was changed. ${closeOthers} If that does not help, restart the browser.`;
}

/** Nothing of the database can be read now; a project can still be opened from its second copy. */
export function isOutOfReach({ kind }: StorageProblem): boolean {
  return kind === 'noDatabase' || kind === 'noAnswer' || kind === 'readFailed';
}

function outOfReachInWords(problem: StorageProblem): string {
  switch (problem.kind) {
    case 'noDatabase':
      return `The database of this browser cannot be opened (${problem.says}).`;
    case 'noAnswer':
      return `The database of this browser has not answered for ${problem.seconds} seconds. ${problem.blocked ? 'Another window holds it: close the other windows of this app.' : 'Close the other windows of this app, or restart the browser.'}`;
    case 'readFailed':
      return `The database of this browser cannot be read (${problem.says}).`;
    default:
      return storageProblemInWords(problem);
  }
}

/** Trying again cannot help; writing on would harm what another window or version stored. */
export function isFinal(problem: StorageProblem): boolean {
  return (
    problem.kind === 'databaseTooNew' ||
    problem.kind === 'databaseReplaced' ||
    problem.kind === 'recordTooNew' ||
    problem.kind === 'changedElsewhere' ||
    problem.kind === 'storedGone'
  );
}

/** Carries a problem out of a transaction, so that the transaction is rolled back with it. */
export class Refused extends Error {
  readonly problem: StorageProblem;
  constructor(problem: StorageProblem) {
    super(problem.kind);
    this.name = 'Refused';
    this.problem = problem;
  }
}

/** A full disk arrives bare, or as the inner reason of an aborted transaction. */
export function problemFrom(error: unknown, doing: 'reading' | 'writing'): StorageProblem {
  for (let layer = error, depth = 0; layer instanceof Object && depth < 5; depth += 1) {
    if (layer instanceof Refused) return layer.problem;
    const { name, inner } = layer as { name?: unknown; inner?: unknown };
    if (name === 'QuotaExceededError') return { kind: 'full' };
    layer = inner;
  }
  const says = error instanceof Error ? error.message.split('\n')[0] || error.name : String(error);
  return { kind: doing === 'reading' ? 'readFailed' : 'writeFailed', says };
}
