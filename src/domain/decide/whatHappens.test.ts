import { describe, expect, test } from 'vitest';
import { defaultBasis } from '../codes/basis.ts';
import type { CodeBasis } from '../codes/basis.ts';
import { decideFacts } from './decide.ts';
import { ruleBookFor } from './ruleBook.ts';
import { candidateById } from '../devices/candidates.ts';
import type { FactValues } from '../model/fields.ts';
import { defaultWeights } from '../model/project.ts';
import { slotsFrom } from '../rules/runCase.ts';
import type { Surroundings } from '../arrangement/arrange.ts';
import type { ConditionId } from '../simulate/conditions.ts';
import { doorInWords } from '../simulate/outcomeWords.ts';
import { type Simulated, simulate } from './whatHappens.ts';

/** An opening with this device on it, the parts being those the rules ask for. */
function run(
  id: string,
  facts: FactValues = {},
  basis: Partial<CodeBasis> = {},
  around: Surroundings = {},
): Simulated {
  const candidate = candidateById(id);
  if (!candidate) throw new Error(`No candidate ${id}.`);
  const under = { ...defaultBasis, ...basis };
  const view = { slots: slotsFrom({ ...room, ...facts }, under), assumed: new Map() };
  const found = simulate(decideFacts(view, ruleBookFor(under, []), defaultWeights, candidate), around);
  if (!found) throw new Error(`${id} was not run.`);
  return found;
}

const room: FactValues = {
  egressRole: 'exitAccess',
  fireAlarm: true,
  sprinklered: true,
  detectionThroughout: true,
  readerSides: 'secure',
  fireRatingMin: 0,
  wallRatingMin: 0,
  latch: 'mortise',
  closing: 'selfClosing',
};
const bare: FactValues = { latch: 'pushPull' };

/** "entry, exit, latched, coil" in one word each: the whole row of the table. */
function row(found: Simulated, id: ConditionId): string {
  const { applies, entry, exit, afterS, latched, coil } = found.outcomes[id];
  if (!applies) return '–';
  return `${entry}, ${exit}${afterS === null ? '' : ` ${afterS}`}, ${latched}, ${coil}`;
}
const kinds = (found: Simulated, severity: string) =>
  found.findings.filter((one) => one.severity === severity).map((one) => one.kind);

describe('magnet with sensor and button (hardware 1.2, 7: any loss of power frees both sides; no latch)', () => {
  const magnet = run('magnet/safe/sensor', bare);
  test.each([
    ['lockedHours', 'locked, free, no, yes'],
    ['validCredential', 'unlocked, free, no, no'],
    ['refusedCredential', 'locked, free, no, yes'],
    ['personLeaving', 'unlocked, free, no, no'],
    ['mainsLost', 'locked, free, no, yes'],
    ['batterySpent', 'unlocked, free, no, no'],
    ['supplyLost', 'unlocked, free, no, no'],
    ['fireAlarm', 'unlocked, free, no, no'],
    ['fireAlarmMainsLost', 'unlocked, free, no, no'],
    ['sprinklerFlow', 'unlocked, free, no, no'],
    ['relayStuckReleased', 'unlocked, free, no, no'],
    // F4 of the egress reference: the button interrupts lock power independent of other electronics.
    ['relayStuckLocked', 'locked, free, no, yes'],
    // F2: loss of sensor power or signal unlocks.
    ['sensorFailed', 'unlocked, free, no, no'],
    ['buttonDeadController', 'unlocked, free, no, no'],
    ['doorHeld', 'unlocked, free, no, yes'],
  ] as const)('%s: %s', (id, expected) => {
    expect(row(magnet, id)).toBe(expected);
  });

  test('a magnet with nothing but a button through the controller traps when the relay sticks', () => {
    const found = run('magnet/safe/buttonOnly', bare);
    expect(row(found, 'personLeaving')).toBe('unlocked, free, no, no');
    expect(row(found, 'relayStuckLocked')).toBe('locked, blocked, no, yes');
    expect(kinds(found, 'severe')).toEqual(['blockedExit']);
    expect(kinds(found, 'serious')).toContain('softwareOnly');
  });

  test('released by the alarm alone: nobody leaves until it sounds (egress 0, sentence 2)', () => {
    const found = run('magnet/safe/alarmOnly', bare);
    expect(found.outcomes.lockedHours.exit).toBe('blocked');
    expect(found.outcomes.fireAlarm.exit).toBe('free');
    expect(found.outcomes.batterySpent.exit).toBe('free');
    expect(kinds(found, 'severe')).toEqual(['blockedExit']);
  });

  test('nobody can be behind a cabinet door: no finding', () => {
    const found = run('magnet/safe/none', { ...bare, egressRole: 'noOccupiedSpace' });
    expect(found.outcomes.lockedHours.exit).toBe('blocked');
    expect(kinds(found, 'severe')).toEqual([]);
  });

  test('on a rated leaf the latch beside it holds whatever the magnet does (egress L2, R-21)', () => {
    const found = run('magnet/safe/sensor', { ...bare, fireRatingMin: 90 });
    expect(row(found, 'fireAlarm')).toBe('unlocked, free, yes, no');
    expect(kinds(found, 'severe')).toEqual([]);
  });
});

describe('electric strike, fail secure (hardware 1.1, 7)', () => {
  const strike = run('strikeMortise/secure/free');
  test.each([
    ['lockedHours', 'locked, free, yes, no'],
    ['validCredential', 'unlocked, free, no, yes'],
    ['personLeaving', 'locked, free, yes, no'],
    ['mainsLost', 'locked, free, yes, no'],
    ['batterySpent', 'locked, free, yes, no'],
    ['supplyLost', 'locked, free, yes, no'],
    ['fireAlarm', 'locked, free, yes, no'],
    ['relayStuckReleased', 'unlocked, free, no, yes'],
    ['relayStuckLocked', 'locked, free, yes, no'],
    ['unlockedHours', '–'],
    ['sensorFailed', '–'],
    ['buttonDeadController', '–'],
  ] as const)('%s: %s', (id, expected) => {
    expect(row(strike, id)).toBe(expected);
  });
  test('raises an alarm when forced and when held, not when somebody leaves', () => {
    expect(strike.outcomes.doorForced.alarm).toBe(true);
    expect(strike.outcomes.doorHeld.alarm).toBe(true);
    expect(strike.outcomes.personLeaving.alarm).toBe(false);
  });
  test('on a push/pull leaf nothing inside opens it (R-27)', () => {
    expect(run('strikeMortise/secure/free', bare).outcomes.lockedHours.exit).toBe('blocked');
  });
  test('rated and unlocked by hours: detection drops it back to latched (R-33)', () => {
    const found = run('strikeMortise/secure/free', { fireRatingMin: 45, wishScheduledUnlock: true });
    expect(row(found, 'unlockedHours')).toBe('unlocked, free, no, yes');
    expect(found.outcomes.fireAlarm.latched).toBe('yes');
    expect(kinds(found, 'severe')).toEqual([]);
  });
});

describe('what fails at a bad moment', () => {
  test('mains lost in unlocked hours: on battery the strike stays open, and a battery nobody confirmed is said', () => {
    const day = run('strikeMortise/secure/free', { wishScheduledUnlock: true });
    expect(row(day, 'mainsLostUnlocked')).toBe('unlocked, free, no, yes');
    expect(run('strikeMortise/secure/free').outcomes.mainsLostUnlocked.applies).toBe(false);
    const lock = run('magnet/safe/sensor', { ...bare, wishScheduledUnlock: true });
    expect(row(lock, 'mainsLostUnlocked')).toBe('unlocked, free, no, no');
    const fed = run('strikeMortise/secure/free', { wishScheduledUnlock: true, lockPowerSource: 'poe' });
    expect(row(fed, 'mainsLostUnlocked')).toBe('locked, free, yes, no');
    expect(fed.outcomes.mainsLostUnlocked.says).toMatch(/no battery is confirmed/i);
  });

  test('a battery lock with its own cells spent: nobody comes in by card, and leaving stays free', () => {
    const lock = run('batteryLock/asIs/free', { wishScheduledUnlock: true });
    expect(row(lock, 'cellsSpent')).toBe('locked, free, yes, none');
    expect(row(run('batteryLock/asIs/clinical'), 'cellsSpent')).toBe('locked, byStaff, yes, none');
    expect(run('mortiseLock/secure/free').outcomes.cellsSpent.applies).toBe(false);
  });

  test('sensor and button both failed: a note where alarm and lost power still free it', () => {
    const magnet = run('magnet/safe/sensor', bare);
    expect(row(magnet, 'exitReleasesFailed')).toBe('locked, blocked, no, yes');
    expect(kinds(magnet, 'note')).toContain('restsOnTwo');
    expect(kinds(magnet, 'severe')).toEqual([]);
    expect(run('magnet/safe/doorSwitch', bare).outcomes.exitReleasesFailed.applies).toBe(false);
  });

  test('sensor and button both failed where no alarm and no sprinklers free it: serious, and no bar to what R-16 allows', () => {
    const alone = run('magnet/safe/sensor', {
      ...bare,
      fireAlarm: false,
      detectionThroughout: false,
      sprinklered: false,
    });
    expect(row(alone, 'exitReleasesFailed')).toBe('locked, blocked, no, yes');
    expect(kinds(alone, 'serious')).toContain('restsOnTwo');
    expect(kinds(alone, 'severe')).toEqual([]);
  });

  test('an interlock that has failed: entry alone leaves the button, one that holds leaves nothing (R-100)', () => {
    const door: FactValues = { ...bare, wishInterlock: true, interlockHoldsEgress: false };
    expect(row(run('magnet/safe/sensor', door), 'interlockFailed')).toBe('locked, free, no, yes');
    for (const interlockHoldsEgress of [true, undefined]) {
      const held = run('magnet/safe/sensor', {
        ...bare,
        wishInterlock: true,
        ...(interlockHoldsEgress === undefined ? {} : { interlockHoldsEgress }),
      });
      expect(row(held, 'interlockFailed')).toBe('locked, blocked, no, yes');
      expect(kinds(held, 'severe')).toEqual(['interlockHolds']);
    }
    const lever = run('mortiseLock/secure/free', { ...door, interlockHoldsEgress: true, latch: 'mortise' });
    expect(row(lever, 'interlockFailed')).toBe('locked, free, yes, no');
    expect(run('magnet/safe/sensor', bare).outcomes.interlockFailed.applies).toBe(false);
  });

  test('controlled egress with a dead controller: staff open by a switch that breaks lock power (R-90, R-170)', () => {
    const ward: FactValues = {
      ...bare,
      occupancyGroup: 'I-2',
      clinicalNeed: 'containment',
      staffCanUnlock: true,
    };
    const remote = run('magnet/safe/controlled', { ...ward, clinicalArea: 'other' });
    expect(remote.outcomes.relayStuckLocked.exit).toBe('byStaff');
    const key = run('magnet/safe/controlled', { ...ward, clinicalArea: 'psychiatric' });
    expect([key.arrangement.commandCuts, key.outcomes.relayStuckLocked.exit]).toEqual([false, 'byStaff']);
    // No rule asks for either where nobody leaves, and then nobody is let out.
    const neither = run('magnet/safe/controlled', { ...ward, egressRole: 'noOccupiedSpace' });
    expect(neither.outcomes.relayStuckLocked.exit).toBe('blocked');
  });
});

test('electric strike, fail safe, on a rated leaf gives up the latch with the power (R-31)', () => {
  const found = run('strikeMortise/safe/free', { fireRatingMin: 45, wishScheduledUnlock: true });
  expect(row(found, 'batterySpent')).toBe('unlocked, free, no, no');
  expect(kinds(found, 'severe')).toEqual(['ratedNotLatched']);
});

describe('electrified lock (hardware 1.4: inside lever always free, latched in both modes)', () => {
  test('fail secure: power loss leaves the outside locked', () => {
    const found = run('mortiseLock/secure/free');
    expect(row(found, 'batterySpent')).toBe('locked, free, yes, no');
    expect(row(found, 'validCredential')).toBe('unlocked, free, yes, yes');
  });
  test('fail safe: power loss unlocks the outside and leaves it latched', () => {
    const found = run('mortiseLock/safe/free');
    expect(row(found, 'lockedHours')).toBe('locked, free, yes, yes');
    expect(row(found, 'batterySpent')).toBe('unlocked, free, yes, no');
  });
  test('card needed to leave: blocked on power, free without (R-04)', () => {
    const found = run('mortiseLock/safe/credentialOut');
    expect(found.outcomes.lockedHours.exit).toBe('blocked');
    expect(found.outcomes.batterySpent.exit).toBe('free');
    expect(kinds(run('mortiseLock/secure/credentialOut'), 'severe')).toEqual(['blockedExit']);
  });
  test('an operator drives against its latch (T-45)', () => {
    expect(kinds(run('mortiseLock/secure/free', { operator: 'lowEnergy' }), 'serious')).toEqual([
      'operatorDrivesLatch',
    ]);
    expect(kinds(run('strikeMortise/secure/free', { operator: 'lowEnergy' }), 'serious')).toEqual([]);
  });
});

describe('stair side (egress D3, D4, D7)', () => {
  const stair: FactValues = {
    egressRole: 'stairEntry',
    stairLockWanted: 'stairSide',
    stairStories: 6,
    stairReleasePoint: 'fireCommandCenter',
    fireRatingMin: 90,
    latch: 'rimExit',
    panicPresent: true,
  };
  test('IBC 2021: released on command and by power loss, latched throughout', () => {
    const found = run('exitTrim/safe/stairReentry', stair);
    expect(row(found, 'lockedHours')).toBe('locked, free, yes, yes');
    expect(row(found, 'releaseCommand')).toBe('unlocked, free, yes, no');
    expect(row(found, 'batterySpent')).toBe('unlocked, free, yes, no');
    expect(row(found, 'fireAlarm')).toBe('locked, free, yes, yes');
    expect(kinds(found, 'severe')).toEqual([]);
  });
  test.each([
    ['IBC 2024', { ibc: 2024 as const }],
    ['NFPA 101', { ibc: null, nfpa101: 2021 as const }],
  ])('%s: the alarm frees the stair side too', (_name, basis) => {
    const found = run('exitTrim/safe/stairReentry', stair, basis);
    expect(row(found, 'fireAlarm')).toBe('unlocked, free, yes, no');
    expect(kinds(found, 'severe')).toEqual([]);
  });
  test('fail-secure trim on the stair side cannot be released and stays locked under alarm', () => {
    const found = run('exitTrim/secure/free', stair, { ibc: 2024 });
    expect(kinds(found, 'severe')).toEqual(['stairSideLocked', 'stairSideLocked']);
  });
});

describe('latch retraction (hardware 1.5, 7: alarm drops it and it latches)', () => {
  const found = run('latchRetractionMotor/secure/free', {
    fireRatingMin: 90,
    latch: 'rimExit',
    wishScheduledUnlock: true,
  });
  test.each([
    ['lockedHours', 'locked, free, yes, no'],
    ['unlockedHours', 'unlocked, free, no, yes'],
    ['fireAlarm', 'locked, free, yes, no'],
    ['batterySpent', 'locked, free, yes, no'],
  ] as const)('%s: %s', (id, expected) => {
    expect(row(found, id)).toBe(expected);
  });
});

describe('delayed egress (hardware 1.6, egress H)', () => {
  const delayed = run('delayedExitDevice/safe/delayed', { latch: 'rimExit', wishDelayedEgress: true });
  test.each([
    ['lockedHours', 'locked, after 15, yes, yes'],
    ['mainsLost', 'locked, after 15, yes, yes'],
    ['batterySpent', 'unlocked, free, yes, no'],
    ['fireAlarm', 'unlocked, free, yes, no'],
    ['sprinklerFlow', 'unlocked, free, yes, no'],
    ['releaseCommand', 'unlocked, free, yes, no'],
  ] as const)('%s: %s', (id, expected) => {
    expect(row(delayed, id)).toBe(expected);
  });
  test('sounds while the delay runs', () => {
    expect(delayed.outcomes.personLeaving.alarm).toBe(true);
  });
  test('thirty seconds only where approved (H6)', () => {
    const asked = { latch: 'rimExit', wishDelayedEgress: true, wishDelay30s: true } as const;
    expect(run('delayedExitDevice/safe/delayed', asked).outcomes.lockedHours.afterS).toBe(15);
    const approved = { ...asked, delay30sApproved: true } as const;
    expect(run('delayedExitDevice/safe/delayed', approved).outcomes.lockedHours.afterS).toBe(30);
  });
});

describe('controlled egress (egress I)', () => {
  const ward: FactValues = {
    ...bare,
    occupancyGroup: 'I-2',
    clinicalNeed: 'containment',
    clinicalArea: 'other',
    staffCanUnlock: true,
    wishControlledEgress: true,
  };
  test('staff open; alarm, flow, power loss and the remote switch free it', () => {
    const { outcomes } = run('magnet/safe/controlled', ward);
    const freed = ['fireAlarm', 'sprinklerFlow', 'batterySpent', 'releaseCommand'] as const;
    expect(outcomes.lockedHours.exit).toBe('byStaff');
    expect(freed.map((id) => outcomes[id].exit)).toEqual(['free', 'free', 'free', 'free']);
  });
  test('a psychiatric area is excused from automatic release: staff in every condition but power loss', () => {
    const found = run('magnet/safe/controlled', { ...ward, clinicalArea: 'psychiatric' });
    expect(found.outcomes.fireAlarm.exit).toBe('byStaff');
  });
});

describe('battery lockset and mechanical lock (hardware 1.8: stay as they are)', () => {
  test('no loss of mains, supply or alarm changes a battery lockset', () => {
    const found = run('batteryLock/asIs/free');
    const rows = (['lockedHours', 'mainsLost', 'batterySpent', 'fireAlarm'] as const).map((id) =>
      row(found, id),
    );
    expect(new Set(rows)).toEqual(new Set(['locked, free, yes, none']));
    expect(row(found, 'supplyLost')).toBe('–');
    expect(row(found, 'validCredential')).toBe('unlocked, free, yes, none');
  });
  test('a fire finds a scheduled strike in one of two states, and both are told apart', () => {
    const day = run('strikeMortise/secure/free', { wishScheduledUnlock: true });
    for (const id of ['fireAlarm', 'fireAlarmMainsLost', 'sprinklerFlow'] as const) {
      const { hours } = day.outcomes[id];
      expect([hours?.locked, hours?.unlocked]).toEqual([
        { entry: 'locked', exit: 'free', afterS: null, latched: 'yes', coil: 'no' },
        { entry: 'unlocked', exit: 'free', afterS: null, latched: 'no', coil: 'yes' },
      ]);
      // What a finding asks is the worse of both.
      expect(day.outcomes[id].latched).toBe('no');
    }
    expect(doorInWords(day.outcomes.fireAlarm)).toBe(
      'In locked hours outside locked, leaving free, latched; in unlocked hours outside unlocked, leaving free, not latched',
    );
    expect(day.outcomes.fireAlarm.says).toMatch(
      /needs no power to stay locked.* In unlocked hours outside unlocked, leaving free, not latched\.$/,
    );
    expect(run('strikeMortise/secure/free').outcomes.fireAlarm.hours).toBeNull();
  });

  test('no power feeds a mechanical lock, so nobody is told to turn it off', () => {
    const lock = run('mechanicalLock/none/free', { lockFunction: 'storeroom' });
    for (const id of ['mainsLost', 'batterySpent'] as const) {
      expect(lock.outcomes[id].applies).toBe(false);
      expect(lock.outcomes[id].says).toBe('No power feeds this lock, so losing it changes nothing.');
    }
  });

  test('mechanical: a storeroom lock stays locked, a passage set is open, a bare leaf gets a lock that latches', () => {
    const of = (facts: FactValues) => row(run('mechanicalLock/none/free', facts), 'lockedHours');
    expect(of({ lockFunction: 'storeroom' })).toBe('locked, free, yes, none');
    expect(of({ lockFunction: 'passage' })).toBe('unlocked, free, yes, none');
    expect(of({ latch: 'pushPull' })).toBe('locked, free, yes, none');
    expect(row(run('noLock/none/free', { latch: 'pushPull' }), 'lockedHours')).toBe(
      'unlocked, free, no, none',
    );
  });
  test('function not surveyed: counted as locked, and said', () => {
    expect(kinds(run('mechanicalLock/none/free'), 'note')).toEqual(['functionUnknown']);
  });
});

describe('a door by which people leave both ways', () => {
  const lobby: FactValues = { egressRole: 'elevatorLobby', exitDirection: 'both', lobbyHasOtherExit: false };
  test('a lock that is free from one side only holds the people of the other (J1, R-94)', () => {
    expect(kinds(run('batteryLock/asIs/free', lobby), 'severe')).toEqual(['blockedOtherWay']);
  });
  test('a passage set holds nobody', () => {
    expect(kinds(run('mechanicalLock/none/free', { ...lobby, lockFunction: 'passage' }), 'severe')).toEqual(
      [],
    );
  });
  test('a leaf without lock or latch: both ways free, and never latched', () => {
    const found = run('noLock/none/free', { ...lobby, latch: 'pushPull' });
    expect(found.outcomes.fireAlarm.latched).toBe('no');
    expect(kinds(found, 'severe')).toEqual([]);
  });
});

describe('power behind the lock', () => {
  test('a secure room behind a magnet opens with the battery, after the hours stated (N-06)', () => {
    const open = run('magnet/safe/sensor', { ...bare, securityNeed: 'critical' });
    expect(open.findings.find((one) => one.severity === 'serious')?.says).toContain('not stated');
    const stated = run('magnet/safe/sensor', bare, {}, { toLevel: 'restricted', batteryHours: 4 });
    expect(stated.findings.find((one) => one.severity === 'serious')?.says).toContain('4 h');
  });
  test('a supply whose battery nobody knows: the worst of both is shown', () => {
    const found = run('magnet/safe/sensor', { ...bare, lockPowerSource: 'other' });
    expect(found.outcomes.mainsLost.entry).toBe('unlocked');
  });
  test('the fire alarm panel may not hold people for hours (NFPA 72, K3)', () => {
    const facts = { ...bare, lockPowerSource: 'fireAlarmPanel' } as const;
    expect(kinds(run('magnet/safe/sensor', facts), 'serious')).toEqual(['batteryHolds']);
    expect(kinds(run('magnet/safe/sensor', facts, {}, { batteryHours: 0.1 }), 'serious')).toEqual([]);
    expect(kinds(run('mortiseLock/safe/free', { ...facts, latch: 'mortise' }), 'serious')).toEqual([]);
  });
  test('a rated leaf that nothing closes is not latched, unless a closer comes with it', () => {
    expect(
      kinds(run('mortiseLock/secure/free', { fireRatingMin: 45, closing: 'none' }), 'severe'),
      'R-36 adds the closer',
    ).toEqual([]);
  });
});

test('every outcome says why, in one sentence', () => {
  for (const id of ['magnet/safe/sensor', 'strikeMortise/secure/free', 'boltMotor/safe/sensor']) {
    for (const outcome of Object.values(run(id).outcomes)) {
      expect(outcome.says).toMatch(/^[A-Z].*\.$/);
      expect(outcome.says.match(/\./g)).toHaveLength(1);
    }
  }
});
