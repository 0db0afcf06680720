import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decide, decideAll } from '../decide/decide.ts';
import { isIncluded } from '../hardware/counting.ts';
import { type Part, partsOf } from '../hardware/parts.ts';
import type { ItemId } from '../devices/items.ts';
import { slotOf } from '../logic/slots.ts';
import { type Facts } from '../model/fact.ts';
import { known } from '../testing/facts.ts';
import { newOpening, newProject } from '../model/newProject.ts';
import type { Opening, Project } from '../model/project.ts';
import { aProject } from '../testing/arbitraries.ts';
import { gaugeInWords } from '../power/lockCable.ts';
import { powerPlan } from '../power/powerPlan.ts';
import { setContent } from '../hardware/content.ts';
import { hardwareSets } from './sets.ts';
import { sharedEquipment } from './shared.ts';
import { withoutSet } from './withoutSet.ts';

const base: Facts = {
  doorType: known('single'),
  leafMaterial: known('hollowMetal'),
  frameMaterial: known('hollowMetal'),
  latch: known('mortise'),
  handing: known('LH'),
  readerSides: known('secure'),
  fireRatingMin: known(0),
  wallRatingMin: known(0),
  wallKind: known('none'),
  egressRole: known('exitAccess'),
  occupantLoad: known(4),
  roomUse: known('office'),
  occupancyGroup: known('B'),
};
function withOpenings(...list: readonly [string, Facts, Opening['override']?][]): Project {
  const openings = Object.fromEntries(
    list.map(([mark, facts, override]) => [
      mark,
      { ...newOpening(mark, mark), facts: { ...base, ...facts }, override: override ?? null },
    ]),
  );
  return { ...newProject('p', 'Project'), openings };
}
const setsOf = (project: Project) => hardwareSets(project, decideAll(project));
const byHand = (candidate: string) => ({ candidate, reason: 'x', by: 'x', at: '2026-03-02T09:00:00Z' });

describe('hardware sets', () => {
  it('puts openings alike in every item into one set and multiplies', () => {
    const sets = setsOf(withOpenings(['101', {}], ['102', {}], ['9', {}]));
    expect(sets.map((set) => set.id)).toEqual(['HS-01']);
    expect(sets[0]?.openings.map((one) => one.mark)).toEqual(['9', '101', '102']);
    for (const line of sets[0]?.lines ?? [])
      expect(line.total).toBe(line.counting === 'bought' ? (line.each ?? 0) * 3 : 0);
    expect(sets[0]?.lines.length).toBeGreaterThan(0);
  });

  it('never puts two fail modes into one', () => {
    const sets = setsOf(
      withOpenings(
        ['101', {}, byHand('strikeMortise/secure/free')],
        ['102', {}, byHand('strikeMortise/safe/free')],
      ),
    );
    expect(sets).toHaveLength(2);
  });

  it('puts rated and unrated openings into one where the label makes no other part number', () => {
    const rated: Facts = { fireRatingMin: known(20) };
    // A lockset, a fail secure strike and an electrified lock are listed as they come.
    for (const candidate of [
      'mechanicalLock/none/free',
      'mortiseLock/secure/free',
      'strikeMortise/secure/free',
    ]) {
      const by = byHand(candidate);
      const project = withOpenings(
        ['101', {}, by],
        ['102', rated, by],
        ['103', { fireRatingMin: { is: 'unknown' } }, by],
      );
      const [set, ...others] = setsOf(project);
      expect(others).toEqual([]);
      expect(set?.label).toBe('None: 101; 20 min: 102; not surveyed: 103');
    }
  });

  it('says which openings of such a set the listed strike is for', () => {
    const by = byHand('strikeMortise/secure/free');
    const [set] = setsOf(withOpenings(['101', {}, by], ['102', { fireRatingMin: known(20) }, by]));
    const strikes = set?.lines.filter(
      (line) => line.item === 'electricStrike' || line.item === 'fireListedStrike',
    );
    expect(strikes?.map((line) => [line.item, line.total, line.marks])).toEqual([
      ['fireListedStrike', 1, ['102']],
      ['electricStrike', 1, ['101']],
    ]);
  });

  it('keeps fire exit hardware apart from panic hardware: without dogging it is another device', () => {
    const by = byHand('strikeRim/secure/free');
    const rim: Facts = { latch: known('rimExit'), workStatus: known('new') };
    const [first, second] = setsOf(
      withOpenings(['101', rim, by], ['102', { ...rim, fireRatingMin: known(90) }, by]),
    );
    expect([first, second].map((set) => set?.openings.map((one) => one.mark))).toEqual([['101'], ['102']]);
    expect(first?.lines.map((line) => line.item)).toContain('panicHardware');
    expect(second?.lines.map((line) => line.item)).toContain('fireExitHardware');
  });

  it('never puts a pair and a single into one', () => {
    const by = byHand('mechanicalLock/none/free');
    expect(setsOf(withOpenings(['101', {}, by], ['102', { doorType: known('pair') }, by]))).toHaveLength(2);
  });

  it('keeps label, hand and size with the opening, and says them in the line that is ordered by them', () => {
    const handed = byHand('mortiseLock/secure/free');
    const other: Facts = { handing: known('RH'), fireRatingMin: known(45), leafWidthIn: known(34) };
    const sets = setsOf(withOpenings(['101', { fireRatingMin: known(90) }, handed], ['102', other, handed]));
    expect(sets).toHaveLength(1);
    expect(sets[0]?.lines.find((line) => line.item === 'mortiseLock')?.detail).toMatch(/: 101; .*: 102/);
    expect(sets[0]?.label).toBe('90 min: 101; 45 min: 102');
  });

  it('says of a lock what it has to be ordered with, and with which openings where they differ', () => {
    const by = byHand('strikeRim/secure/free');
    const rim: Facts = { latch: known('rimExit'), supplyVolts: known('24'), workStatus: known('existing') };
    const [set, other] = setsOf(
      withOpenings(['101', rim, by], ['102', { ...rim, supplyVolts: known('12') }, by], ['103', rim, by]),
    );
    const line = (item: string) => set?.lines.find((one) => one.item === item);
    expect(line('electricStrike')?.detail).toContain('Electric strike for a rim exit device, fail secure');
    expect(line('electricStrike')?.detail).toContain('24 V DC');
    expect(line('lockSupply')?.detail).toBe('24 V DC');
    // Another voltage is another part number.
    expect(other?.openings.map((one) => one.mark)).toEqual(['102']);
    expect(line('reader')?.detail).toBe('');
    expect(set?.work).toBe('Existing, not altered');
  });

  it('says what nobody surveyed', () => {
    const [set] = setsOf(withOpenings(['101', {}, byHand('mechanicalLock/none/free')]));
    expect(set?.work).toBe('new or existing not surveyed');
    expect(set?.lines.find((one) => one.item === 'mechanicalLock')?.detail).toBe(
      'Mortise latch · lock function not surveyed · LH',
    );
  });

  it('counts one lock once: what asks something of it is included', () => {
    const part = (item: ItemId, quantity = 1): Part => ({ item, quantity, ruleId: undefined, kept: false });
    const included = (parts: readonly Part[], leaves = 1) =>
      parts.filter((one) => isIncluded(one.item, parts, leaves)).map((one) => one.item);
    expect(included([part('fireListedStrike'), part('preloadStrike'), part('fireLabelledHardware')])).toEqual(
      ['preloadStrike', 'fireLabelledHardware'],
    );
    expect(included([part('preloadStrike'), part('reader')])).toEqual([]);
    expect(included([part('electricStrike'), part('storeroomLockset')])).toEqual([]);
    expect(included([part('mortiseLock'), part('storeroomLockset')])).toEqual(['storeroomLockset']);
    expect(included([part('latchingHardware'), part('electricStrike')])).toEqual([]);
    expect(included([part('latchingHardware'), part('mechanicalLock')])).toEqual(['latchingHardware']);
    const bars = [part('delayedExitDevice'), part('fireExitHardware')];
    expect(included(bars)).toEqual(['fireExitHardware']);
    expect(included(bars, 2)).toEqual([]);
  });

  describe('what a rated leaf closes by', () => {
    const fire: Facts = {
      fireRatingMin: known(45),
      wallRatingMin: known(60),
      wallKind: known('fireBarrier'),
    };
    const closerOf = (facts: Facts) => {
      const project = withOpenings(['101', { ...fire, ...facts }, byHand('mechanicalLock/none/free')]);
      const parts = partsOf(decide(project, project.openings['101'] as Opening));
      const one = parts.find((part) => part.item === 'closer');
      return one && `${one.quantity}${one.kept ? ' kept' : ''}`;
    };
    it.each([
      ['new, to close by itself', { workStatus: known('new'), closing: known('selfClosing') }, '1'],
      ['new, to be held open', { workStatus: known('new'), closing: known('automaticClosing') }, '1'],
      ['nobody knows what closes it', { workStatus: known('existing') }, '1'],
      ['nothing closes it', { workStatus: known('existing'), closing: known('none') }, '1'],
      ['a closer is there', { workStatus: known('existing'), closing: known('selfClosing') }, '1 kept'],
      ['new or existing not known', { closing: known('selfClosing') }, '1'],
      ['pair', { workStatus: known('new'), closing: known('selfClosing'), doorType: known('pair') }, '2'],
      [
        'pair with an operator on one leaf',
        {
          workStatus: known('new'),
          closing: known('selfClosing'),
          doorType: known('pair'),
          operator: known('lowEnergy'),
        },
        '1',
      ],
      [
        'unrated, nothing closes it, no reader',
        {
          workStatus: known('existing'),
          closing: known('none'),
          readerSides: known('none'),
          fireRatingMin: known(0),
          wallRatingMin: known(0),
          wallKind: known('none'),
        },
        undefined,
      ],
    ] as const)('%s', (_, facts, expected) => {
      expect(closerOf(facts as Facts)).toBe(expected);
    });
    it('held open: the holder belongs in the set', () => {
      const project = withOpenings([
        '101',
        { ...fire, workStatus: known('new'), closing: known('automaticClosing') },
      ]);
      const parts = partsOf(decide(project, project.openings['101'] as Opening));
      expect(parts.map((part) => part.item)).toContain('smokeHoldOpen');
    });
  });

  it('counts what a pair needs twice', () => {
    const bare: Facts = { doorType: known('pair'), latch: known('pushPull'), workStatus: known('new') };
    const project = withOpenings(
      ['101', { ...bare, readerSides: known('none') }, byHand('noLock/none/free')],
      ['102', { ...bare, leafRaceway: known(false) }, byHand('magnet/safe/doorSwitch')],
    );
    const count = (mark: string, item: ItemId) =>
      partsOf(decide(project, project.openings[mark] as Opening)).find((part) => part.item === item)
        ?.quantity;
    expect(count('101', 'pushPull')).toBe(2);
    expect(count('102', 'doorSwitchHardware')).toBe(2);
    // Each bar's switch is wired over its own hinge line.
    expect(count('102', 'powerTransfer')).toBe(2);
    expect(count('102', 'leafRaceway')).toBe(2);
  });

  it('asks for an exit signal that can be wired: in the lock where it is wired, over the door where it is not', () => {
    const project = withOpenings(
      ['101', {}, byHand('mortiseLock/secure/free')],
      ['102', {}, byHand('strikeMortise/secure/free')],
    );
    const signals = (mark: string) =>
      partsOf(decide(project, project.openings[mark] as Opening))
        .map((part) => part.item)
        .filter((item) => item === 'requestToExit' || item === 'exitShuntSensor');
    expect(signals('101')).toEqual(['requestToExit']);
    expect(signals('102')).toEqual(['exitShuntSensor']);
  });

  it('lists sensor and button also where nobody leaves and no rule asks for them', () => {
    const project = withOpenings([
      'G-01',
      {
        doorType: known('overhead'),
        leafMaterial: known('rollingSteel'),
        frameMaterial: known('track'),
        latch: known('operatorLock'),
        egressRole: known('noOccupiedSpace'),
        occupantLoad: known(0),
        roomUse: { is: 'unknown' },
      },
      byHand('boltMotor/secure/sensor'),
    ]);
    const items = partsOf(decide(project, project.openings['G-01'] as Opening)).map((part) => part.item);
    expect(items).toContain('exitSensor');
    expect(items).toContain('pushToExit');
  });

  it('keeps what an existing opening has and buys it for a new one', () => {
    const there: Facts = {
      lockFunction: known('storeroom'),
      closing: known('selfClosing'),
      existingArrangement: known('freeLever'),
    };
    const by = byHand('strikeMortise/secure/free');
    const sets = setsOf(
      withOpenings(
        ['101', { ...there, workStatus: known('existing') }, by],
        ['102', { ...there, workStatus: known('new') }, by],
      ),
    );
    const counting = (mark: string, item: ItemId) =>
      sets
        .find((set) => set.openings.some((one) => one.mark === mark))
        ?.lines.find((line) => line.item === item)?.counting;
    for (const item of ['storeroomLockset', 'keyCylinder', 'closer'] as const) {
      expect(counting('101', item)).toBe('kept');
      expect(counting('102', item)).toBe('bought');
    }
    expect(counting('101', 'electricStrike')).toBe('bought');
    expect(counting('101', 'lockSupply')).toBe('shared');
  });

  it('parts locksets of another kind or function, which are other articles', () => {
    const by = byHand('mechanicalLock/none/free');
    const isNew: Facts = { workStatus: known('new'), lockFunction: known('storeroom') };
    const sets = setsOf(
      withOpenings(
        ['101', isNew, by],
        ['102', { ...isNew, latch: known('bored') }, by],
        ['103', { ...isNew, lockFunction: known('classroom') }, by],
        ['104', isNew, by],
      ),
    );
    expect(sets.map((set) => set.openings.map((one) => one.mark))).toEqual([
      ['101', '104'],
      ['102'],
      ['103'],
    ]);
  });

  it('lists what is shared once, with the openings it serves and the load it must carry', () => {
    const by = byHand('strikeMortise/secure/free');
    const project = withOpenings(
      ['101', { supplyVolts: known('24') }, by],
      ['102', { supplyVolts: known('24') }, byHand('mortiseLock/safe/free')],
      ['103', { supplyVolts: known('12') }, by],
    );
    const shared = sharedEquipment(project, decideAll(project));
    const supplies = shared.filter((line) => line.item === 'lockSupply');
    expect(supplies.map((line) => line.marks)).toEqual([['103'], ['101', '102']]);
    // Reader 0.25 A, its half of a controller 0.25 A, motion detector 0.05 A; strike 0.6 A at 12 V, 0.4 A more at its start.
    expect(supplies[0]?.detail).toContain(
      '0.6 A held all day, 1.6 A with every lock released and one starting',
    );
    // Fail-safe lock 0.5 A, electronics of two doors 0.55 A; strike 0.3 A released, largest start 0.7 A more.
    expect(supplies[1]?.detail).toContain('1.1 A held all day, 2.1 A');
    expect(shared.find((line) => line.item === 'accessController')?.detail).toBe(
      '3 lock outputs, 3 reader ports',
    );
  });

  it('names the work on door and frame, and where not every opening of the set needs it', () => {
    const by = byHand('mortiseLock/secure/free');
    const same: Facts = { workStatus: known('altered'), closing: known('selfClosing') };
    const [set, ...others] = setsOf(
      withOpenings(
        ['101', same, by],
        ['102', { ...same, latch: known('bored') }, by],
        ['103', { ...same, latch: known('bored') }, by],
      ),
    );
    expect(others).toEqual([]);
    expect(set?.siteWork.map((job) => [job.trade, job.marks])).toContainEqual([
      'Door and frame supplier',
      ['102', '103'],
    ]);
    expect(set?.siteWork.find((job) => job.marks.includes('102'))?.says).toMatch(/new lock preparation/);
  });

  it('lists the rails an all-glass leaf must get, and no cylinder beside a magnet with a delay', () => {
    const glass: Facts = {
      leafMaterial: known('glassFrameless'),
      frameMaterial: known('none'),
      latch: known('patch'),
      workStatus: known('existing'),
    };
    const project = withOpenings(
      ['101', glass, byHand('glassRailExit/secure/free')],
      ['102', glass, byHand('delayedMagnet/safe/delayed')],
    );
    const itemsOf = (mark: string) =>
      partsOf(decide(project, project.openings[mark] as Opening)).map((part) => part.item);
    expect(itemsOf('101')).toContain('glassRails');
    expect(itemsOf('102')).not.toContain('keyCylinder');
  });

  it('says which conductor starts the lock at the end of its run', () => {
    const gauge = (facts: Facts) => {
      const project = withOpenings(['101', facts, byHand('strikeMortise/secure/free')]);
      const fed = powerPlan(project, decideAll(project)).byId.get('101');
      return fed ? gaugeInWords(fed) : 'nothing is fed';
    };
    // 0.3 A may lose 1.2 V and the start of 1 A 2.4 V; 63 ft with slack at 50 °C lose 2.3 V on 22 AWG at the start.
    expect(gauge({ supplyVolts: known('24'), distanceToSupplyFt: known(50) })).toMatch(
      /^22 AWG or thicker \(0\.5 mm²\) for the lock, to be listed to work at 20\.\d V on battery$/,
    );
    expect(gauge({ supplyVolts: known('24'), distanceToSupplyFt: known(100) })).toMatch(/^18 AWG/);
    expect(gauge({ supplyVolts: known('24'), distanceToSupplyFt: known(200) })).toMatch(/^16 AWG/);
    expect(gauge({ supplyVolts: known('12'), distanceToSupplyFt: known(2000) })).toContain(
      'put a supply near the door',
    );
    expect(gauge({ supplyVolts: known('24') })).toBe('');
  });

  it('gives the reason for every opening without a set', () => {
    const project = withOpenings(
      ['101', { fireRatingMin: known(75) }],
      ['102', { roomUse: known('detention'), occupancyGroup: known('I-3') }],
      ['103', {}],
    );
    const without = withoutSet(project, decideAll(project));
    expect(without.map((one) => [one.mark, one.state])).toEqual([
      ['101', 'Refused'],
      ['102', 'To a reviewer'],
    ]);
    expect(without[0]?.because).toContain('75 min');
    expect(without[1]?.because).toMatch(/R-103/);
  });

  it('holds for any project: alike inside a set, every chosen opening in exactly one', () => {
    fc.assert(
      fc.property(aProject, (project) => {
        const sensible = { ...project, amendments: [] };
        const decisions = decideAll(sensible);
        const sets = hardwareSets(sensible, decisions);
        const chosen = Object.values(sensible.openings).filter(
          (one) => setContent(decide(sensible, one)) !== undefined,
        );
        const listed = sets.flatMap((set) => set.openings.map((one) => one.id));
        // Two entries of a made-up project may carry one id; they are then one decision.
        expect(new Set(listed)).toEqual(new Set(chosen.map((one) => one.id)));
        for (const set of sets) {
          const members = set.openings.map((one) => decisions.get(one.id));
          const alike = new Set(
            members.map((one) =>
              JSON.stringify([
                one?.chosen?.candidate.id,
                one?.slots[slotOf('isPair')] ?? null,
                one && setContent(one),
              ]),
            ),
          );
          expect(alike.size).toBe(1);
        }
      }),
      { numRuns: 60 },
    );
  });
});
