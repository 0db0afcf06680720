import { describe, expect, test } from 'vitest';
import { type CodeBasis, defaultBasis } from '../codes/basis.ts';
import type { FactValues } from '../model/fields.ts';
import { defaultWeights } from '../model/project.ts';
import { slotsFrom } from '../rules/runCase.ts';
import { decideFacts } from './decide.ts';
import { silentDefaults } from './defaults.ts';
import { ruleBookFor } from './ruleBook.ts';
import { signOffReasons } from '../words/signOff.ts';
import { unmetNeeds } from './unmetNeeds.ts';

const wishes = Object.fromEntries(silentDefaults.map(({ fact, value }) => [fact, value])) as FactValues;
const door: FactValues = {
  ...wishes,
  doorType: 'single',
  leafMaterial: 'hollowMetal',
  frameMaterial: 'hollowMetal',
  latch: 'mortise',
  lockFunction: 'storeroom',
  panicPresent: false,
  existingArrangement: 'none',
  fireRatingMin: 0,
  wallRatingMin: 0,
  wallKind: 'none',
  closing: 'selfClosing',
  egressRole: 'exitAccess',
  exitDirection: 'towardSecure',
  roomUse: 'office',
  occupancyGroup: 'B',
  occupantLoad: 10,
  readerSides: 'none',
  operator: 'none',
  workStatus: 'existing',
  clearWidthIn: 34,
  swingsWithEgress: true,
  sprinklered: true,
  sprinklerKind: 'nfpa13',
  fireAlarm: true,
  detectionThroughout: true,
  securityNeed: 'low',
  powerAtDoor: true,
  cablePath: true,
  leafRaceway: true,
};
const ward: FactValues = {
  ...door,
  occupancyGroup: 'I-2',
  roomUse: 'other',
  readerSides: 'both',
  workStatus: 'new',
  clearWidthIn: 42,
  suiteDoor: 'none',
  wishControlledEgress: true,
  clinicalNeed: 'containment',
  clinicalArea: 'other',
  staffCanUnlock: true,
};
function decided(facts: FactValues, basis: Partial<CodeBasis> = {}) {
  const under = { ...defaultBasis, nfpa101: null, ...basis };
  const view = { slots: slotsFrom(facts, under), assumed: new Map() };
  return decideFacts(view, ruleBookFor(under, []), defaultWeights);
}
const unmet = (facts: FactValues, basis: Partial<CodeBasis> = {}) =>
  unmetNeeds(decided(facts, basis)).map(({ fact, ruleId }) => `${fact} ${ruleId ?? ''}`.trim());

describe('needs that the choice does not meet', () => {
  test('a lockdown that nothing but a hand can bring about goes to the reviewer', () => {
    const byHand = { ...door, wishLockdown: true };
    expect(decided(byHand).chosen?.candidate.device.family).toBe('mechanical');
    expect(unmet(byHand)).toEqual(['wishLockdown']);
    expect(
      signOffReasons(decided(byHand))
        .map((one) => one.sentence)
        .join(),
    ).toMatch(/Lockdown: recorded as needed/);
    expect(unmet({ ...byHand, readerSides: 'secure' })).toEqual([]);
    expect(unmet(door)).toEqual([]);
  });

  test('a classroom lock that is set from inside meets it', () => {
    const room: FactValues = { ...door, roomUse: 'classroom', occupancyGroup: 'E', wishLockdown: true };
    expect(unmet(room, { nfpa101: 2021 })).toEqual([]);
  });

  test('a delay, containment and protection that are ruled out name the rule', () => {
    expect(
      unmet({ ...door, wishDelayedEgress: true, sprinklered: false, detectionThroughout: false }),
    ).toEqual(['wishDelayedEgress R-84']);
    expect(unmet(ward)).toEqual([]);
    const unwatched: FactValues = { ...ward, clinicalNeed: 'protection', lockedUnitWatch: 'neither' };
    expect(unmet(unwatched, { ibc: null, nfpa101: 2021 })).toEqual([
      'wishControlledEgress R-92',
      'clinicalNeed R-92',
    ]);
    expect(unmet({ ...unwatched, lockedUnitWatch: 'attended' }, { ibc: null, nfpa101: 2021 })).toEqual([]);
  });
});

describe('what ends badly only until a part comes that may yet be asked for', () => {
  const nursery: FactValues = {
    ...ward,
    clinicalNeed: 'protection',
    clinicalArea: 'nurseryObstetric',
    controlledDoorsOnPath: 0,
  };

  test('is not passed over, and the fact is asked', () => {
    const notAsked = decided(nursery);
    expect(notAsked.state).toBe('open');
    expect(notAsked.chosen?.candidate.release).toBe('controlled');
    expect(notAsked.passedOver).toEqual([]);
    expect(notAsked.depends.map(({ rule }) => rule.id)).toContain('R-170');
    expect(unmet(nursery)).toEqual([]);
  });

  test.each([true, false])(
    'either answer leaves it first (listed child-abduction system: %s)',
    (abductionSystem) => {
      const answered = decided({ ...nursery, abductionSystem });
      expect(answered.depends.map(({ rule }) => rule.id)).not.toContain('R-170');
      expect(answered.severe).toEqual([]);
      expect(answered.chosen?.candidate.release).toBe('controlled');
    },
  );
});

describe('how what holds people is ranked', () => {
  test('on a rated leaf a lock that latches goes before a magnet beside a second lock', () => {
    const rated: FactValues = {
      ...ward,
      fireRatingMin: 45,
      wallRatingMin: 60,
      wallKind: 'fireBarrier',
      fireLabel: 'seen',
    };
    const chosen = decided(rated);
    expect(chosen.rejected.some(({ candidate }) => candidate.id === 'magnet/safe/controlled')).toBe(false);
    expect(chosen.chosen?.candidate.id).toBe('mortiseLock/safe/controlled');
    const lobby: FactValues = {
      ...rated,
      ...wishes,
      clinicalNeed: 'none',
      clinicalArea: 'none',
      occupancyGroup: 'B',
      egressRole: 'elevatorLobby',
      lobbyHasOtherExit: false,
      exitDirection: 'both',
      readerSides: 'secure',
      attendedStation: true,
    };
    expect(decided(lobby, { ibc: 2024 }).chosen?.candidate.id).toBe('mortiseLock/safe/lobby');
  });

  test('a lock that could stay locked is still marked down where the code lets it', () => {
    const parts = (securityNeed: 'low' | 'critical') =>
      decided({ ...door, readerSides: 'secure', securityNeed }).chosen?.candidate.failMode;
    expect(parts('critical')).toBe('secure');
  });

  test('a critical need marks nothing down for unlocking where the code leaves nothing else', () => {
    const security = (facts: FactValues) =>
      decided(facts).chosen?.score.parts.find((one) => one.part === 'security')?.value;
    // The lock and its frame hold 1,200 lbf of the 1,500 lbf that count in full, and nothing is taken off that.
    expect(security({ ...ward, securityNeed: 'critical' })).toBe(80);
  });
});
