/** Fetched when they are first needed, or ahead of that while nobody waits (`ahead`). */
export const fileAccess = () => import('../../storage/fileAccess.ts');
export const meetings = () => import('../meeting.ts');
/** What a first screen does without and an action may need when there is no network any more. */
export const ahead: readonly (() => Promise<unknown>)[] = [fileAccess, meetings];
