import { describe, expect, test } from 'vitest';
import { migrations } from './migrations.ts';

/** Before and after of each step, written out: today's types and defaults must not reach into them. */
function step(name: string) {
  const found = migrations.find((one) => one.name === name);
  if (!found) throw new Error(`No migration is called ${name}.`);
  return found.up;
}

describe('SpacesGetUseAndArea, format 1 to 2', () => {
  const up = step('SpacesGetUseAndArea');
  const before = {
    id: 'p',
    spaces: {
      s: { id: 's', name: 'Hall', kind: 'room', occupantLoad: 40, colour: 'from a newer version' },
      t: { id: 't', name: 'Street', kind: 'outside', occupantLoad: null },
    },
    openings: { o: { id: 'o' } },
  };

  test('spaces get what is not known yet, the project an empty list of set numbers, and the rest stays', () => {
    const untouched = structuredClone(before);
    expect(up(before)).toEqual({
      id: 'p',
      spaces: {
        s: {
          id: 's',
          name: 'Hall',
          kind: 'room',
          occupantLoad: 40,
          colour: 'from a newer version',
          use: null,
          areaFt2: null,
          commonPathFt: null,
        },
        t: {
          id: 't',
          name: 'Street',
          kind: 'outside',
          occupantLoad: null,
          use: null,
          areaFt2: null,
          commonPathFt: null,
        },
      },
      openings: { o: { id: 'o' } },
      setNumbers: {},
    });
    expect(before).toEqual(untouched);
  });

  test('what was damaged before is passed on as it was, to be set aside and shown', () => {
    expect(up('porridge')).toBe('porridge');
    expect(up({ id: 'p', spaces: [] })).toEqual({ id: 'p', spaces: [], setNumbers: {} });
    expect(up({ spaces: { s: 'a hall' } })).toEqual({ spaces: { s: 'a hall' }, setNumbers: {} });
  });
});
