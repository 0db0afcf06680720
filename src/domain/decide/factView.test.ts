import { describe, expect, test } from 'vitest';
import { assumed, known, unknown } from '../testing/facts.ts';
import { newOpening, newProject, newSpace } from '../model/newProject.ts';
import type { Opening, Project } from '../model/project.ts';
import { silentDefaults } from './defaults.ts';
import { viewFacts } from './factView.ts';
import { valueIn } from '../logic/slots.ts';

const hall = { ...newSpace('s', 'Hall'), occupantLoad: 80 };
const project: Project = {
  ...newProject('p', 'P'),
  building: { occupancyGroup: known('B'), sprinklered: assumed(true, 'drawings') },
  spaces: { s: hall },
};
const view = (facts: Opening['facts'], more: Partial<Opening> = {}) =>
  viewFacts(project, { ...newOpening('o', '1'), facts, ...more });

describe('what is known of an opening', () => {
  test('comes from the building unless the opening says otherwise, "not known" included', () => {
    expect(valueIn(view({}).slots, 'occupancyGroup')).toBe('B');
    expect(valueIn(view({ occupancyGroup: known('A-3') }).slots, 'occupancyGroup')).toBe('A-3');
    expect(valueIn(view({ occupancyGroup: unknown }).slots, 'occupancyGroup')).toBeUndefined();
    // The next opening of the same building is not touched by what another one said.
    expect(valueIn(view({}).slots, 'occupancyGroup')).toBe('B');
  });

  test('lists what is only assumed, with where it came from', () => {
    const { assumed: list } = view({ latch: assumed('bored', 'typical door') });
    expect(list.get('latch')).toBe('typical door');
    expect(list.get('sprinklered')).toBe('drawings');
    expect(list.has('occupancyGroup')).toBe(false);
    expect([...list.keys()]).toEqual(expect.arrayContaining(silentDefaults.map((one) => one.fact)));
  });

  test('holds no assumption where somebody answered or could not say', () => {
    expect(view({ wishLockdown: known(true) }).assumed.has('wishLockdown')).toBe(false);
    expect(view({ wishLockdown: unknown }).assumed.has('wishLockdown')).toBe(false);
    expect(valueIn(view({ wishLockdown: unknown }).slots, 'wishLockdown')).toBeUndefined();
    expect(view({ sprinklered: known(false) }).assumed.has('sprinklered')).toBe(false);
  });

  test('takes the load of the space it leads to, also where nobody could tell it', () => {
    const led = { toSpaceId: 's' };
    expect(valueIn(view({}, led).slots, 'occupantLoad')).toBe(80);
    expect(view({}, led).assumed.get('occupantLoad')).toBe('from the plan: the load of Hall');
    expect(valueIn(view({ occupantLoad: unknown }, led).slots, 'occupantLoad')).toBe(80);
    expect(valueIn(view({}, { toSpaceId: 'gone' }).slots, 'occupantLoad')).toBeUndefined();
  });

  test('takes the load that use and area of the space make, as long as nobody gave one', () => {
    const room = { ...newSpace('s', 'Music room'), use: 'classroom' as const, areaFt2: 1120 };
    const behind = (space: Project['spaces'][string], facts: Opening['facts'] = {}) =>
      viewFacts({ ...project, spaces: { s: space } }, { ...newOpening('o', '1'), facts, toSpaceId: 's' });
    expect(valueIn(behind(room).slots, 'occupantLoad')).toBe(56);
    expect(behind(room).assumed.get('occupantLoad')).toBe('from the plan: the load of Music room');
    expect(valueIn(behind({ ...room, occupantLoad: 90 }).slots, 'occupantLoad')).toBe(90);
    expect(valueIn(behind({ ...room, areaFt2: null }).slots, 'occupantLoad')).toBeUndefined();
    expect(valueIn(behind(room, { occupantLoad: known(70) }).slots, 'occupantLoad')).toBe(70);
    expect(valueIn(behind(room, { occupantLoad: known(5) }).slots, 'occupantLoad')).toBe(56);
  });

  test('leaves the load a question where the people of other spaces leave by the same way', () => {
    const hall = { ...newSpace('s', 'Hall'), occupantLoad: 7 };
    const load = (facts: Opening['facts'], kind: typeof hall.kind = 'room') =>
      valueIn(
        viewFacts(
          { ...project, spaces: { s: { ...hall, kind } } },
          { ...newOpening('o', '1'), facts, toSpaceId: 's' },
        ).slots,
        'occupantLoad',
      );
    expect(load({ egressRole: known('exitAccess') })).toBe(7);
    expect(load({ egressRole: known('exteriorExit') })).toBeUndefined();
    expect(load({ egressRole: known('stairEntry') })).toBeUndefined();
    expect(load({ egressRole: known('exitAccess') }, 'corridor')).toBeUndefined();
    expect(load({ egressRole: known('exteriorExit'), occupantLoad: known(320) })).toBe(320);
  });
});
