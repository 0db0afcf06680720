export interface Timers {
  readonly set: (work: () => void, milliseconds: number) => unknown;
  readonly clear: (timer: unknown) => void;
}

export const browserTimers: Timers = {
  set: (work, milliseconds) => setTimeout(work, milliseconds),
  clear: (timer) => clearTimeout(timer as ReturnType<typeof setTimeout>),
};
