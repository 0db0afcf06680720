import { expect, test } from 'vitest';
import { demoProject } from '../../../scripts/demo/demoProject.ts';
import { decide, decideAll } from '../decide/decide.ts';
import { spacesAround } from './aroundOpening.ts';
import { assessBuilding } from './building.ts';
import { type SpaceEgress, spaceEgress } from './spaceEgress.ts';

/** What is shown of a space; the plan it was read from is numbered otherwise. */
const shown = ({ ways, ...rest }: SpaceEgress) => ({
  ...rest,
  ways: ways.map(({ opening, standing, because, leadsTo, capacity }) => ({
    mark: opening.mark,
    standing,
    because,
    leadsTo,
    capacity,
  })),
});

test('spaces at an opening come out as in the whole building', () => {
  const demo = demoProject();
  const whole = spaceEgress(assessBuilding(demo, decideAll(demo))).map(shown);
  let compared = 0;
  for (const opening of Object.values(demo.openings)) {
    const around = spacesAround(demo, opening, (one) => decide(demo, one)).map(shown);
    const joined = [opening.fromSpaceId, opening.toSpaceId];
    expect(around, opening.mark).toEqual(whole.filter(({ space }) => joined.includes(space.id)));
    compared += around.length;
  }
  expect(compared).toBeGreaterThan(100);
});
