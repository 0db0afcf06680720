/**
 * Which state of a project something holds: how many edits went into it, and the name of the last one. Two states
 * of one position are the same state; a number alone could not tell two histories of equal length apart.
 */
export interface Position {
  readonly revision: number;
  /** Id of the last command, or of whatever put the project here; '' where an older release stored it. */
  readonly tip: string;
}

export const samePosition = (a: Position, b: Position): boolean =>
  a.revision === b.revision && a.tip === b.tip;
