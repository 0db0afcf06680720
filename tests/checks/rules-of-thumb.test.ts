import { describe, expect, test } from 'vitest';
import { candidateById, candidates } from '../../src/domain/devices/candidates.ts';
import { device, deviceIds } from '../../src/domain/devices/devices.ts';
import { batteryDuty } from '../../src/domain/electrical/supply.ts';
import { fitCell, fitRows } from '../../src/domain/fit/matrix.ts';
import { limitingStrength } from '../../src/domain/fit/strength.ts';
import { latchFigures } from '../../src/domain/fit/strengthFigures.ts';
import { type FactValues, fieldInfo } from '../../src/domain/model/fields.ts';
import { fitRules } from '../../src/domain/rules/fit/list.ts';
import { runCase } from '../../src/domain/rules/runCase.ts';
import { trapsRules } from '../../src/domain/rules/traps/list.ts';

const rules = new Map([...fitRules, ...trapsRules].map((rule) => [rule.id, rule]));
/** Keys of the clauses of one rule that hold for a candidate; "·" for a rule with one clause. */
function says(id: string, on: string, facts: FactValues): readonly string[] {
  const rule = rules.get(id);
  if (!rule) throw new Error(`There is no rule ${id}.`);
  return rule.clauses.flatMap((clause) => {
    const key = clause.key === undefined ? {} : { clause: clause.key };
    return runCase(rule, { name: '', facts, expect: 'yes', on, ...key }) === 'yes' ? [clause.key ?? '·'] : [];
  });
}
const steel = { leafMaterial: 'hollowMetal', frameMaterial: 'hollowMetal', frameGrouted: false } as const;

describe('rules of thumb of the trade (common practice, no source)', () => {
  test('a strike’s strength is that of the latch and lock it works with', () => {
    const pairs = [
      ['strikeCylindrical', 'bored'],
      ['strikeCylindrical', 'deadlatch'],
      ['strikeMortise', 'mortise'],
      ['strikeRim', 'rimExit'],
    ] as const;
    for (const [strike, latch] of pairs) {
      const figure = latchFigures[latch];
      const found = limitingStrength(strike, {
        ...steel,
        latch,
        latchProjectionIn: figure?.ratedProjectionIn ?? 0,
      });
      expect([found.lbf, found.limitedBy]).toEqual([figure?.lbf[0], 'latch']);
      expect(found.lbf).toBeLessThan(device(strike).strengthLbf);
    }
  });
  test('a magnet needs constant power and lets go when power is cut', () => {
    const magnets = deviceIds.filter((id) => device(id).family === 'magnet' || id === 'delayedMagnet');
    expect(magnets).toEqual(['magnet', 'shearMagnet', 'delayedMagnet']);
    for (const id of magnets) {
      expect(device(id)).toMatchObject({
        failModes: ['safe'],
        holdsWith: 'power',
        keepsLatch: false,
        freeEgress: false,
      });
      expect(batteryDuty('safe', false)).toBe(1);
    }
    expect(candidates.some((one) => magnets.includes(one.deviceId) && one.failMode !== 'safe')).toBe(false);
  });
  test('fail safe is used where people’s safety needs the door open: re-entry and release on command exist fail safe only', () => {
    for (const release of ['stairReentry', 'lobby', 'controlled'] as const) {
      const modes = new Set(
        candidates
          .filter((one) => one.release === release && one.device.family === 'lock')
          .map((one) => one.failMode),
      );
      expect([...modes]).toEqual(['safe']);
    }
    expect(candidateById('mortiseLock/safe/stairReentry')).toBeDefined();
    expect(candidateById('exitTrim/secure/stairReentry')).toBeUndefined();
    expect(
      says('T-40', 'strikeMortise/secure/free', { egressRole: 'stairEntry', stairLockWanted: 'stairSide' }),
    ).toEqual(['·']);
  });
  test('fail secure is used only where life safety is not affected: it is waved through only with free mechanical egress', () => {
    const allowed = candidates.filter((one) => says('T-03', one.id, { egressRole: 'exitAccess' }).length > 0);
    expect(allowed.length).toBeGreaterThan(3);
    expect(
      allowed.every((one) => one.failMode === 'secure' && one.release === 'free' && one.device.freeEgress),
    ).toBe(true);
  });
  test('a fail-secure strike suits a labeled door, a fail-safe one never (trade commentary on NFPA 80)', () => {
    expect(says('T-02', 'strikeMortise/safe/free', { fireLabel: 'seen' })).toEqual(['·']);
    expect(says('T-02', 'strikeMortise/secure/free', { fireLabel: 'seen' })).toEqual([]);
  });
  test('a steel frame usually comes with a standard strike preparation, from which the strike that fits is read', () => {
    const at = (
      strike: 'strikeMortise' | 'strikeCylindrical',
      strikePrep: NonNullable<FactValues['strikePrep']>,
      workStatus: NonNullable<FactValues['workStatus']> = 'altered',
    ) => says('F-01', `${strike}/secure/free`, { strikePrep, workStatus, frameMaterial: 'hollowMetal' });
    expect([at('strikeMortise', 'ansi478'), at('strikeCylindrical', 'ansi478')]).toEqual([[], []]);
    expect([at('strikeMortise', 'light234'), at('strikeCylindrical', 'light234')]).toEqual([['b'], ['c']]);
    expect([at('strikeMortise', 'none'), at('strikeMortise', 'residential')]).toEqual([['a'], ['d']]);
    expect([at('strikeMortise', 'none', 'new'), at('strikeMortise', 'light234', 'new')]).toEqual([
      ['g'],
      ['h'],
    ]);
    expect(at('strikeCylindrical', 'aluminium458')).toContain('f');
  });
  test('a mortise lock takes a mortise strike, a bored lock a cylindrical one, a rim device a rim strike', () => {
    const row = (number: number) => fitRows.find((one) => one.row === number);
    const verdicts = (number: number) =>
      (['strikeMortise', 'strikeCylindrical', 'strikeRim'] as const).map((id) => {
        const found = row(number);
        return found && fitCell(found, id).verdict;
      });
    expect([verdicts(1), verdicts(2), verdicts(4)]).toEqual([
      ['no', 'ok', 'no'],
      ['ok', 'no', 'no'],
      ['no', 'no', 'ok'],
    ]);
  });
  test('electric bolts belong to thin, glass or specialty doors: never plain work on an ordinary leaf, locks for glass only on glass', () => {
    expect(
      fitRows.filter(
        (row) => fitCell(row, 'boltSolenoid').verdict === 'ok' || fitCell(row, 'boltMotor').verdict === 'ok',
      ),
    ).toEqual([]);
    expect(
      fitRows.filter((row) => fitCell(row, 'glassPatchLock').verdict === 'ok').map((row) => row.row),
    ).toEqual([17, 37]);
    expect(
      fitRows.find((row) => row.row === 17 && fitCell(row, 'boltSolenoid').verdict === 'mod'),
    ).toBeDefined();
  });
  test('a thin leaf takes no bored or mortise lock', () => {
    expect(
      says('F-04', 'mortiseLock/secure/free', { leafMaterial: 'woodSolidCore', leafThicknessIn: 1 }),
    ).toEqual(['b']);
    expect(
      says('F-04', 'boltSolenoid/safe/sensor', { leafMaterial: 'woodSolidCore', leafThicknessIn: 1 }),
    ).toEqual([]);
  });
  test('locks run on 12 or 24 V DC, never on AC', () => {
    expect(fieldInfo('supplyVolts').options).toEqual({ '12': '12 V DC', '24': '24 V DC' });
  });
  test('magnets hold hundreds to over a thousand pounds', () => {
    const strengths = (['magnet', 'shearMagnet', 'delayedMagnet'] as const).map(
      (id) => device(id).strengthLbf,
    );
    expect(Math.min(...strengths)).toBeGreaterThanOrEqual(300);
    expect(Math.max(...strengths)).toBeGreaterThan(1000);
    expect(Math.max(...strengths)).toBeLessThanOrEqual(2700);
  });
  test('a strike needs a lever that is always locked outside', () => {
    const at = (lockFunction: NonNullable<FactValues['lockFunction']>) =>
      says('T-37', 'strikeCylindrical/secure/free', { lockFunction });
    expect([at('storeroom'), at('passage'), at('classroom'), at('office')]).toEqual([
      [],
      ['a', 'b'],
      ['b', 'c'],
      ['b', 'c'],
    ]);
  });
  test('an operator needs the latch out of the way: retraction and strikes serve, trim and lever locks do not', () => {
    const refused = candidates.filter(
      (one) =>
        says('T-23', one.id, { operator: 'lowEnergy' }).includes('a') ||
        says('T-45', one.id, { operator: 'lowEnergy' }).includes('a'),
    );
    expect([...new Set(refused.map((one) => one.deviceId))]).toEqual([
      'mortiseLock',
      'cylindricalLock',
      'exitTrim',
      'narrowStileLatch',
      'batteryLock',
    ]);
  });
  test('a power retraction by solenoid peaks at 12 to 16 A, by motor near 1 A (retraction notes of the trade, read)', () => {
    expect(device('latchRetractionSolenoid').inrushA24).toBeGreaterThanOrEqual(12);
    expect(device('latchRetractionMotor').inrushA24).toBeLessThan(2);
  });
});
