/**
 * Delayed egress as it runs in time. A push shorter than the nuisance time does nothing; one that lasts starts a
 * count that nobody at the door can stop; alarm or loss of power ends it at once; only a hand re-arms it.
 * Source: NFPA 101 / IBC delayed egress conditions as listed in the reference; nuisance time at most 3 s.
 */
export type DelayState =
  | { readonly is: 'armed' }
  | { readonly is: 'pushed'; readonly sinceS: number }
  | { readonly is: 'counting'; readonly sinceS: number }
  | { readonly is: 'released'; readonly because: 'delay' | 'alarm' | 'power' | 'command' };

export type DelayEvent = {
  readonly is: 'push' | 'letGo' | 'wait' | 'alarm' | 'powerLost' | 'command' | 'rearm';
  readonly atS: number;
};

export interface DelayTimes {
  readonly nuisanceS: number;
  readonly delayS: number;
}
const usualDelay: DelayTimes = { nuisanceS: 3, delayS: 15 };

function nextDelayState(before: DelayState, event: DelayEvent, times: DelayTimes): DelayState {
  const now = elapsed(before, event.atS, times);
  switch (event.is) {
    case 'alarm':
      return { is: 'released', because: 'alarm' };
    case 'powerLost':
      return { is: 'released', because: 'power' };
    case 'command':
      return { is: 'released', because: 'command' };
    case 'rearm':
      return now.is === 'released' ? { is: 'armed' } : now;
    case 'push':
      // With no nuisance time the count begins with the touch itself.
      return now.is === 'armed' ? elapsed({ is: 'pushed', sinceS: event.atS }, event.atS, times) : now;
    case 'letGo':
      return now.is === 'pushed' ? { is: 'armed' } : now;
    case 'wait':
      return now;
  }
}

/** What time alone has made of the state. The count runs from the moment the nuisance time has passed. */
function elapsed(state: DelayState, nowS: number, times: DelayTimes): DelayState {
  if (state.is === 'pushed' && nowS - state.sinceS >= times.nuisanceS) {
    return elapsed({ is: 'counting', sinceS: state.sinceS + times.nuisanceS }, nowS, times);
  }
  if (state.is === 'counting' && nowS - state.sinceS >= times.delayS) {
    return { is: 'released', because: 'delay' };
  }
  return state;
}

export function runDelay(events: readonly DelayEvent[], times: DelayTimes = usualDelay): DelayState {
  return events.reduce((state, event) => nextDelayState(state, event, times), { is: 'armed' } as DelayState);
}
