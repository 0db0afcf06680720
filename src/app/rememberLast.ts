/** Remembers the last answer while the argument stays the same object; selectors need a stable result. */
export function rememberLast<A extends object, T>(fn: (argument: A) => T): (argument: A) => T {
  let last: { readonly argument: A; readonly answer: T } | undefined;
  return (argument) => {
    if (last?.argument !== argument) last = { argument, answer: fn(argument) };
    return last.answer;
  };
}
