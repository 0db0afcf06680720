import { expect, test } from 'vitest';
import { demoProject } from '../../../scripts/demo/demoProject.ts';
import type { ItemId } from '../devices/items.ts';
import { fitNotes } from '../fit/notes.ts';
import { laborHours } from './labor.ts';
import type { FactKey, FactValues } from '../model/fields.ts';
import { decide } from '../decide/decide.ts';
import { partsOf } from './parts.ts';
import { answered } from '../decide/whatMatters.ts';
import { workNotes } from './workNotes.ts';

const demo = demoProject();

/** The decision for the opening of the demo with this mark, some of it as told instead, and this arrangement. */
function decided(mark: string, otherwise: FactValues = {}, byHand?: string) {
  const found = Object.values(demo.openings).find((one) => one.mark === mark);
  if (!found) throw new Error(`The demo has no opening ${mark}.`);
  const opening = Object.entries(otherwise).reduce(
    (before, [key, value]) => answered(demo, before, key as FactKey, value)[1],
    found,
  );
  const override = byHand ? { candidate: byHand, reason: 'test', by: '', at: '' } : opening.override;
  return decide(demo, { ...opening, override });
}
const line = (decision: ReturnType<typeof decided>, item: ItemId) =>
  partsOf(decision).find((part) => part.item === item);
const bought = (decision: ReturnType<typeof decided>) =>
  partsOf(decision)
    .filter((part) => !part.kept)
    .map((part) => part.item);

test('what goes is a line of the set', () => {
  expect(line(decided('509'), 'removeElectricLock')?.quantity).toBe(1);
  expect(line(decided('402'), 'removeAddedLock')?.quantity).toBe(1);
  expect(line(decided('207A'), 'removeLock')?.quantity).toBe(1);
  expect(line(decided('401'), 'removeLock')).toBeUndefined();
  expect(line(decided('509', { workStatus: 'new' }), 'removeElectricLock')).toBeUndefined();
  const bolts = { inactiveBolts: 'manualFlush', occupancyGroup: 'A-3' } as const;
  expect(line(decided('217', bolts), 'removeFlushBolts')?.quantity).toBe(1);
});

test('an interlock has its logic, a battery lock its hub, a wire its way through the leaf', () => {
  for (const item of ['interlockLogic', 'interlockCable', 'interlockOverride', 'doorPosition'] as const)
    expect(line(decided('504'), item)?.quantity).toBe(1);
  expect(line(decided('409'), 'wirelessHub')).toBeDefined();
  expect(line(decided('102'), 'leafRaceway')).toBeDefined();
  expect(line(decided('102', { leafRaceway: true }), 'leafRaceway')).toBeUndefined();
});

test('a leaf that is not made for the lock is prepared or exchanged, and that is a line of the set', () => {
  // Steel that needs a pocket: a new leaf, which brings the wire way with it.
  expect([line(decided('509'), 'newLeaf')?.quantity, line(decided('509'), 'leafRaceway')]).toEqual([
    1,
    undefined,
  ]);
  expect(line(decided('411'), 'leafPreparation')?.quantity).toBe(1);
  expect(line(decided('509', { workStatus: 'new' }), 'newLeaf')).toBeUndefined();
  expect(line(decided('509', { leafPrepared: true }), 'newLeaf')).toBeUndefined();
  expect(line(decided('508'), 'leafPreparation')).toBeUndefined();
});

test('where the rules leave nothing, what every lock would need is asked for all the same', () => {
  const hall = decided('400');
  expect(hall.state).toBe('none');
  const without = decided('400', { panicPresent: false, latch: 'bored' });
  expect(without.state).toBe('none');
  const asked = (decision: typeof hall) =>
    decision.requires.flatMap(({ clause }) => (clause.effect === 'require' ? clause.items : []));
  expect(asked(without)).toContain('panicHardware');
  expect(asked(hall)).not.toContain('panicHardware');
});

test('a narrow stile with push and pull gets the narrow-stile latch, never a bored or mortise lock', () => {
  const storefront = decided('102', { latch: 'pushPull' });
  expect(storefront.chosen?.candidate.deviceId).toBe('narrowStileLatch');
  const out = storefront.rejected.map(({ candidate }) => candidate.deviceId);
  expect(out).toEqual(expect.arrayContaining(['cylindricalLock', 'mortiseLock']));
  expect(bought(storefront)).toContain('narrowStileLatch');
});

test('what is sealed off buys nothing electric, whatever reader is usual in the building', () => {
  const sealed = decided('110', { egressRole: 'sealedOff', readerSides: 'secure' });
  expect(sealed.chosen?.candidate.device.family).toBe('mechanical');
  for (const item of ['reader', 'accessController', 'lockSupply', 'lockCable'] as const)
    expect(line(sealed, item)).toBeUndefined();
  expect(sealed.findings.map(({ rule }) => rule.id)).toContain('B-90');
});

test('on a bar a battery drives the trim and brings no lockset', () => {
  const onBar = decided('S2-1', { powerAtDoor: false, cablePath: false }, 'batteryLock/asIs/free');
  expect(line(onBar, 'batteryTrim')).toBeDefined();
  expect(line(onBar, 'batteryLock')).toBeUndefined();
  expect(line(decided('409'), 'batteryLock')).toBeDefined();
});

test('nothing is bought where nothing is asked, and rails that are there are kept', () => {
  // The one thing asked of these toilets is a thing left out.
  expect(bought(decided('114'))).toEqual(['noInsideLock']);
  expect(bought(decided('P08'))).toEqual([]);
  expect(line(decided('407'), 'glassRails')?.kept ?? true).toBe(true);
  expect(workNotes(decided('407', { glassRails: 'none' }))).toContain(29);
  expect(workNotes(decided('407', { glassRails: 'both' }))).not.toContain(29);
});

test('grout in a frame in place costs hours and points, in a new frame none', () => {
  const hollow = decided('P05', { frameGrouted: false, workStatus: 'existing' });
  const grouted = decided('P05', { frameGrouted: true, workStatus: 'existing' }, hollow.chosen?.candidate.id);
  const fresh = decided('P05', { frameGrouted: true, workStatus: 'new' }, hollow.chosen?.candidate.id);
  const effort = ({ chosen }: typeof hollow) =>
    chosen?.score.parts.find(({ part }) => part === 'effort')?.value ?? Number.NaN;
  expect(hollow.chosen?.candidate.deviceId).toMatch(/^strike/);
  expect(effort(hollow) - effort(grouted)).toBeCloseTo(12 * (fitNotes[8]?.hours ?? 0));
  expect(effort(fresh)).toBe(effort(hollow));
  expect(workNotes(grouted)).toContain(8);
  expect(workNotes(fresh)).not.toContain(8);
  const hours = (decision: typeof hollow) => laborHours(decision).get('locksmith') ?? 0;
  expect(hours(hollow)).toBe(1.5);
  expect(hours(grouted) - hours(hollow)).toBe(fitNotes[8]?.hours);
  expect(hours(fresh)).toBe(hours(hollow));
});

test('a transfer is an hour of the locksmith, and what stays in place takes none', () => {
  const lock = decided('P05', { latch: 'mortise' }, 'mortiseLock/secure/free');
  expect(line(lock, 'powerTransfer')?.quantity).toBe(1);
  const notes = workNotes(lock).reduce((sum, note) => sum + (fitNotes[note]?.hours ?? 0), 0);
  const all = [...laborHours(lock).values()].reduce((sum, hours) => sum + hours, 0);
  expect(all).toBe((lock.chosen?.candidate.device.laborH ?? 0) + notes + 1);
  const kept = decided('114');
  expect([...laborHours(kept)]).toEqual([]);
});
