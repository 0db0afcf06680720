import type { Keeper } from './keeper.ts';

/** One call of the keeper as it crosses to the worker. */
export type Call = Exclude<keyof Keeper, 'takesLines'>;

/**
 * In which order the calls of one keeper are done: one after the other, since an edit may not overtake the copy it
 * follows. Only a line of a project whose slot is known does not wait for a slot that is being written, which
 * takes long enough for a browser to be killed in it.
 */
export function inTurns(keeper: Keeper): (call: Call, given: readonly unknown[]) => Promise<unknown> {
  let rest: Promise<unknown> = Promise.resolve();
  let lines: Promise<unknown> = Promise.resolve();
  return (call, given) => {
    const work = () => (keeper[call] as (...given: readonly unknown[]) => Promise<unknown>)(...given);
    const isQuick = call === 'append' && keeper.takesLines(String(given[0]));
    const before = isQuick ? lines : Promise.all([lines, rest]);
    const mine = before.then(work);
    const ended = mine.catch(() => undefined);
    if (isQuick) lines = ended;
    else rest = ended;
    return mine;
  };
}
