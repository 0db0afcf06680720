import { describe, expect, test } from 'vitest';
import { type DelayEvent, runDelay } from './delay.ts';

// P22 of the hardware reference: a push shorter than the nuisance time goes back to locked; one that lasts is
// irreversible. H3, H4, H5, H7 of the egress reference: what ends the delay, and who re-arms.
const at = (is: DelayEvent['is'], atS: number): DelayEvent => ({ is, atS });

describe('delayed egress in time', () => {
  test('a push shorter than the nuisance time returns to locked', () => {
    expect(runDelay([at('push', 0), at('letGo', 2.9), at('wait', 60)])).toEqual({ is: 'armed' });
  });
  test('a push that lasts starts a count that letting go does not stop', () => {
    const events = [at('push', 0), at('letGo', 3.1)];
    expect(runDelay([...events, at('wait', 17.9)])).toEqual({ is: 'counting', sinceS: 3 });
    expect(runDelay([...events, at('wait', 18)])).toEqual({ is: 'released', because: 'delay' });
  });
  test('without a nuisance time the count begins with the touch', () => {
    const times = { nuisanceS: 0, delayS: 15 };
    expect(runDelay([at('push', 0), at('letGo', 0.1), at('wait', 15)], times)).toEqual({
      is: 'released',
      because: 'delay',
    });
  });
  test('two short pushes are not one long one', () => {
    expect(runDelay([at('push', 0), at('letGo', 2), at('push', 2.5), at('wait', 4)])).toEqual({
      is: 'pushed',
      sinceS: 2.5,
    });
  });
  test.each([
    ['alarm', 'alarm'],
    ['powerLost', 'power'],
    ['command', 'command'],
  ] as const)('%s ends it at once, from rest and during the count', (event, because) => {
    expect(runDelay([at(event, 1)])).toEqual({ is: 'released', because });
    expect(runDelay([at('push', 0), at(event, 5)])).toEqual({ is: 'released', because });
  });
  test('only a hand re-arms it, and never during the count', () => {
    expect(runDelay([at('alarm', 0), at('wait', 3600)]).is).toBe('released');
    expect(runDelay([at('alarm', 0), at('rearm', 60)])).toEqual({ is: 'armed' });
    expect(runDelay([at('push', 0), at('rearm', 5)]).is).toBe('counting');
  });
  test('thirty seconds where approved', () => {
    const times = { nuisanceS: 3, delayS: 30 };
    expect(runDelay([at('push', 0), at('wait', 32.9)], times).is).toBe('counting');
    expect(runDelay([at('push', 0), at('wait', 33)], times).is).toBe('released');
  });
});
