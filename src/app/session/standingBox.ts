import { atFirst, type Standing, type StandingEvent, step } from '../standing.ts';

/** Where the shown project stands, read as it is at the moment of reading. */
export interface StandingBox extends Standing {
  readonly move: (event: StandingEvent) => void;
}

export function createStandingBox(): StandingBox {
  let standing = atFirst;
  return {
    get base() {
      return standing.base;
    },
    get now() {
      return standing.now;
    },
    get setAside() {
      return standing.setAside;
    },
    move: (event) => {
      standing = step(standing, event);
    },
  };
}
