import type { IfcAPI } from 'web-ifc';

export interface Engine {
  readonly ready: () => Promise<IfcAPI>;
  /** The next model gets a fresh one. */
  readonly discard: () => void;
}

/** The library with its program, loaded when the first model comes. `place` is where a browser finds the program. */
export function ifcEngine(place?: string): Engine {
  let waiting: Promise<IfcAPI> | undefined;
  const discard = () => {
    waiting = undefined;
  };
  const ready = () => {
    waiting ??= load(place);
    return waiting;
  };
  return { ready, discard };
}

async function load(place: string | undefined): Promise<IfcAPI> {
  const { IfcAPI, LogLevel } = await import('web-ifc');
  const api = new IfcAPI();
  await api.Init(place === undefined ? undefined : () => place, true);
  api.SetLogLevel(LogLevel.LOG_LEVEL_OFF);
  return api;
}
