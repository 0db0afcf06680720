import { describe, expect, test } from 'vitest';
import { demoProject } from '../../../scripts/demo/demoProject.ts';
import { blank, fromSurvey } from '../../../scripts/proof/interview.ts';
import { officeDoor, officeProject } from '../../../scripts/proof/officeDoor.ts';
import { roundTheDoor } from '../../../scripts/proof/roundInterview.ts';
import { controlledOffice, usualOffice } from '../../../scripts/proof/usualOffice.ts';
import { decide } from '../decide/decide.ts';
import { known } from '../testing/facts.ts';
import { type FactKey, factKeys, factSchemas, type FactValues, fieldInfo } from '../model/fields.ts';
import type { Opening } from '../model/project.ts';
import { orderState } from '../sets/forOrder.ts';
import { factsOfLook } from './look.ts';
import { looks } from './looks.ts';
import { nextStop, progressInWords } from './round.ts';
import { stationOf, stationOrder } from './stations.ts';
import { mayBeUsual, usualFrom, usualLooks } from './usual.ts';

describe('the way round the door', () => {
  const round = roundTheDoor(usualOffice, officeDoor, controlledOffice);

  test('an ordinary office door is complete for order in eight answers', () => {
    expect(round.decision.state).toBe('settled');
    expect(orderState(round.project, round.opening, round.decision)).toBe('complete');
    expect(round.answers.length).toBeLessThanOrEqual(8);
  });

  test('without a usual it takes a few more, and no station is gone back to once something is decided', () => {
    const { answers, decision } = roundTheDoor(officeProject, officeDoor, controlledOffice);
    expect(decision.state).toBe('settled');
    expect(answers.length).toBeLessThanOrEqual(14);
  });

  test('who cannot tell the rating of the wall is asked at most two questions more', () => {
    const dark = roundTheDoor(usualOffice, officeDoor, (key) =>
      key === 'wallRatingMin' ? undefined : controlledOffice(key),
    );
    expect(dark.answers.length).toBeLessThanOrEqual(round.answers.length + 2);
    const blind = roundTheDoor(usualOffice, officeDoor, (key) =>
      key === 'wallRatingMin' || key === 'wallKind' ? undefined : controlledOffice(key),
    );
    expect(blind.answers.length).toBeLessThanOrEqual(round.answers.length + 2);
    expect(blind.opening.facts.wallKind).toEqual({ is: 'unknown' });
  });

  test('where nothing is wanted one answer ends it, and a lock that is not told is asked', () => {
    const left = roundTheDoor(usualOffice, officeDoor, (key) =>
      key === 'control' ? 'notControlled' : controlledOffice(key),
    );
    expect(left.answers).toEqual(['wanted: Not controlled; a lever always opens it from inside']);
    expect(left.decision.state).toBe('left');
    const asked = { ...officeDoor, facts: { control: known('asToday' as const) } };
    const stop = nextStop(usualOffice, asked, decide(usualOffice, asked));
    expect(stop?.ask).toMatchObject({ kind: 'fact' });
  });

  test('a wish nobody was asked for is asked of a door that is controlled', () => {
    const opening = { ...officeDoor, facts: { control: known('controlled' as const) } };
    const stop = nextStop(officeProject, opening, decide(officeProject, opening));
    expect(stop?.ask).toMatchObject({ kind: 'look', look: { id: 'wishes' } });
    expect(stop && progressInWords(stop)).toMatch(/^What is wanted, 2 of \d; \d+ to go$/);
  });

  test('a refused look is asked one by one', () => {
    const opening = { ...officeDoor, facts: { control: known('controlled' as const) } };
    const refused = new Set(['wishes']);
    const stop = nextStop(officeProject, opening, decide(officeProject, opening), refused);
    expect(stop?.ask).toEqual({ kind: 'fact', key: 'wishScheduledUnlock' });
  });

  test('an answer that says otherwise than what is known is not offered', () => {
    const facts = { control: known('controlled' as const), fireRatingMin: known(90) };
    const opening = { ...round.opening, facts: { ...facts, doorType: known('single' as const) } };
    const offered: FactValues[] = [];
    for (let given = opening, step = 0; step < 12; step++) {
      const stop = nextStop(usualOffice, given, decide(usualOffice, given));
      if (!stop) break;
      if (stop.ask.kind === 'look') offered.push(...stop.ask.presets.map((preset) => preset.facts));
      const keys = stop.ask.kind === 'look' ? factsOfLook(stop.ask.look) : [stop.ask.key];
      const asked = Object.fromEntries(
        keys.filter((key) => !(key in given.facts)).map((key) => [key, { is: 'unknown' as const }]),
      );
      given = { ...given, facts: { ...given.facts, ...asked } };
    }
    expect(offered.length).toBeGreaterThan(3);
    expect(
      offered.filter((told) => (told.fireRatingMin ?? 90) !== 90 || (told.doorType ?? 'single') !== 'single'),
    ).toEqual([]);
  });

  test('over the demo it ends with what the whole survey leads to', () => {
    const demo = demoProject();
    const wishedFor = (key: FactKey) =>
      key === 'control' ? 'controlled' : fieldInfo(key).group === 'wishes' ? false : undefined;
    const some = Object.values(demo.openings)
      .filter((one) => fromSurvey(demo, one)('readerSides') === 'secure')
      .filter((opening, index) => index % 16 === 3 && decide(demo, opening).state === 'settled');
    // Nobody is asked what the building has answered: where this door differs the surveyor says so unasked.
    const atTheStart = (opening: Opening): Opening => ({
      ...blank(opening),
      facts: Object.fromEntries(
        Object.entries(opening.facts).filter(([key]) => fieldInfo(key as FactKey).scope === 'both'),
      ),
    });
    let ended = 0;
    for (const opening of some) {
      const told = fromSurvey(demo, opening);
      const { decision, opening: asked } = roundTheDoor(
        demo,
        atTheStart(opening),
        (key) => told(key) ?? wishedFor(key),
      );
      if (Object.values(asked.facts).some((fact) => fact.is === 'unknown')) continue;
      ended++;
      expect([opening.mark, decision.state]).toEqual([opening.mark, 'settled']);
      expect(decision.chosen?.candidate.deviceId).toBe(decide(demo, opening).chosen?.candidate.deviceId);
    }
    expect(ended).toBeGreaterThan(1);
  }, 120_000);
});

describe('a leaf without a frame', () => {
  const bare: Readonly<Record<string, string | number | boolean | undefined>> = {
    leafMaterial: 'glassFrameless',
    frameMaterial: 'none',
    existingArrangement: 'none',
    lockFunction: undefined,
    handing: 'LH',
    hinges: 'pivots',
    // An entrance: the lock that is chosen is wired.
    roomUse: 'suiteEntrance',
    securityNeed: 'medium',
    traffic: 'heavy',
    appearance: 'visible',
  };
  const ofAFrame = /strike|frameGrouted|frameConduit|latchProjectionIn|latchPreload/;
  test.each([
    { latch: 'patch', wallConstruction: 'glass' },
    { latch: 'patch', wallConstruction: 'masonry', wallKind: 'corridor', wallRatingMin: undefined },
    { latch: 'patch', wallConstruction: 'gypsum', workStatus: 'new', fireLabel: undefined },
    { latch: 'pushPull', wallConstruction: 'glass' },
  ])('is asked for no cutout, grout or conduit: $latch in $wallConstruction', (door) => {
    const told: typeof bare = { ...bare, ...door };
    const { answers } = roundTheDoor(usualOffice, officeDoor, (key) =>
      Object.hasOwn(told, key) ? told[key] : controlledOffice(key),
    );
    expect(answers.length).toBeGreaterThan(8);
    expect(answers.filter((answer) => ofAFrame.test(answer))).toEqual([]);
  });
});

describe('looks', () => {
  test('say only what can be stored, and every fact has its station', () => {
    for (const { presets } of looks)
      for (const { facts } of presets)
        for (const [key, value] of Object.entries(facts))
          expect(factSchemas[key as FactKey].safeParse(value).success).toBe(true);
    for (const key of factKeys) expect(stationOrder).toContain(stationOf(key));
  });

  test('what most doors share holds no label, no rating, no preparation and no lock', () => {
    const never = factKeys.filter((key) => fieldInfo(key).group === 'fire' && key !== 'holdOpen');
    expect(never.filter(mayBeUsual)).toEqual([]);
    expect(
      ['latch', 'strikePrep', 'framePrepared', 'leafPrepared'].filter((key) => mayBeUsual(key as FactKey)),
    ).toEqual([]);
  });

  test('the usual of a finished door is offered at the next one', () => {
    const usual = Object.fromEntries(
      usualFrom({ leafMaterial: known('hollowMetal'), fireRatingMin: known(20) }).map(({ key, fact }) => [
        key,
        fact,
      ]),
    );
    expect(usual).toEqual({ leafMaterial: known('hollowMetal') });
    expect(usualLooks({ usual }).map(({ presets }) => presets[0]?.label)).toEqual([
      'As usual: leaf material hollow metal',
    ]);
    expect(usualLooks({ usual: {} })).toEqual([]);
  });
});
