import { describe, expect, test } from 'vitest';
import { readFact } from './readFact.ts';
import { known, unknown } from '../testing/facts.ts';
import { factKeys, fieldInfo } from '../model/fields.ts';
import { newOpening } from '../model/newProject.ts';
import {
  alsoWritten,
  amountAsStamped,
  howToWrite,
  stepOf,
  stepped,
  usualAmountsOf,
  valueForSurveyor,
} from './amounts.ts';
import { answersGiven, toConfirm } from './answers.ts';
import { choiceGroupsOf, findChoices } from './choiceGroups.ts';
import { emptyBeside, factsLike, takenOver } from './takeOver.ts';

describe('choices', () => {
  test('under heads, every value of every list stands exactly once', () => {
    for (const key of factKeys) {
      const { kind, options } = fieldInfo(key);
      if (kind !== 'choice') continue;
      const shown = (choiceGroupsOf(key) ?? []).flatMap((group) => group.choices.map((one) => one.value));
      expect({ key, shown: shown.toSorted() }).toEqual({ key, shown: Object.keys(options ?? {}).toSorted() });
    }
  });

  test('are found by any of their words, in any order, and by their head', () => {
    const groups = choiceGroupsOf('roomUse') ?? [];
    const labels = (typed: string) =>
      findChoices(groups, typed).flatMap((group) => group.choices.map((one) => one.label));
    expect(labels('room server')).toEqual(['Server or data room']);
    expect(labels('dwelling')).toHaveLength(3);
    expect(labels('xyz')).toEqual([]);
  });

  test.each([
    ['latch', 'crash bar', ['rimExit', 'verticalRods', 'rimPlusRods', 'railExit']],
    ['latch', 'panic', ['rimExit', 'verticalRods', 'rimPlusRods', 'railExit']],
    ['latch', 'knob', ['bored', 'boredPlusDeadbolt']],
    ['existingArrangement', 'maglock', ['magnetNoSensor', 'magnetAlarmOnly', 'magnetFullSet']],
    ['leafMaterial', 'storefront', ['aluminiumNarrow', 'aluminiumMedium', 'aluminiumWide']],
    ['leafMaterial', 'SCWD', ['woodSolidCore']],
    ['leafMaterial', 'all-glass', ['glassFrameless']],
    ['doorType', 'double doors', ['pair']],
    ['doorType', 'roll-up', ['overhead']],
    ['roomUse', 'restroom', ['singleToilet', 'multiToilet']],
    ['roomUse', 'janitor', ['closet']],
    ['roomUse', 'MDF', ['serverRoom']],
    ['roomUse', 'IDF', ['serverRoom']],
    ['roomUse', 'IT', ['serverRoom']],
    ['roomUse', 'mechanical', ['equipment']],
    ['roomUse', 'daycare', ['dayCare']],
  ] as const)('%s is found by the trade word “%s”', (key, typed, values) => {
    const found = findChoices(choiceGroupsOf(key) ?? [], typed);
    const shown = found.flatMap((group) => group.choices.map((one) => one.value));
    expect(new Set(shown)).toEqual(new Set<string>(values));
  });
});

test('a length is also told in feet and inches and in millimeters', () => {
  expect(alsoWritten('leafWidthIn', 36)).toBe('3\'-0" · 914 mm');
  expect(alsoWritten('leafThicknessIn', 1.75)).toBe('1 3/4" · 44 mm');
  expect(alsoWritten('occupantLoad', 36)).toBe('');
  expect(valueForSurveyor('leafWidthIn', 915 / 25.4)).toBe('36.024 in (3\'-0" · 915 mm)');
});

test('every example of how to write a number can be written so', () => {
  for (const key of factKeys) {
    const { kind, unit } = fieldInfo(key);
    if (kind !== 'number' || unit !== 'in') continue;
    const examples = howToWrite(key)
      .replace(/^Write |\.$/g, '')
      .split(/, | or /);
    expect(examples.length).toBeGreaterThan(2);
    for (const example of examples)
      expect({ key, example, ok: readFact(key, example).ok }).toMatchObject({ ok: true });
  }
});

test('a rating that is offered as one press is one that can be stored', () => {
  const offering = factKeys.filter((key) => usualAmountsOf(key).length > 0);
  expect(offering).toEqual(expect.arrayContaining(['fireRatingMin', 'leafWidthIn', 'latchProjectionIn']));
  for (const key of offering) {
    for (const amount of usualAmountsOf(key)) {
      expect(readFact(key, String(amount))).toEqual({ ok: true, fact: known(amount) });
    }
  }
});

test('a label is offered as it is stamped, a length as the tape says it, and a step stays in range', () => {
  expect(usualAmountsOf('fireRatingMin').map((one) => amountAsStamped('fireRatingMin', one))).toEqual([
    'None',
    '20 MIN',
    '30 MIN',
    '3/4 HR',
    '1 HR',
    '1-1/2 HR',
    '3 HR',
  ]);
  expect(amountAsStamped('leafThicknessIn', 1.75)).toBe('1 3/4"');
  expect(amountAsStamped('distanceToSupplyFt', 100)).toBe('100');
  expect(stepped('leafWidthIn', '36', 1)).toBe('37');
  expect(stepped('latchProjectionIn', '', 1)).toBe('0.5');
  expect(stepped('latchProjectionIn', '0', -1)).toBe('0');
  expect(stepOf('latch')).toBeUndefined();
});

test('the next opening of a walk is on the same floor and has nothing else of the last', () => {
  const last = {
    ...newOpening('a', '103'),
    floorId: 'f1',
    toSpaceId: 's1',
    facts: { leafWidthIn: known(36) },
  };
  expect(emptyBeside('b', '104', last)).toEqual({ ...newOpening('b', '104'), floorId: 'f1' });
  expect(emptyBeside('b', '104')).toEqual(newOpening('b', '104'));
});

describe('taking over', () => {
  const from = {
    ...newOpening('a', '103'),
    facts: {
      leafWidthIn: known(36),
      frameMaterial: known('wood' as const),
      doorType: known('single' as const),
      latch: unknown,
    },
  };

  test('stands as assumed and says from where; what nobody could tell is not copied', () => {
    expect(factsLike(from)).toEqual({
      doorType: { is: 'assumed', value: 'single', from: 'same as 103' },
      leafWidthIn: { is: 'assumed', value: 36, from: 'same as 103' },
      frameMaterial: { is: 'assumed', value: 'wood', from: 'same as 103' },
    });
  });

  test('keeps to the chosen groups and leaves what is known here, unless told otherwise', () => {
    const to = {
      ...newOpening('b', '104'),
      facts: { leafWidthIn: known(34), doorType: known('single' as const) },
    };
    const keys = (replace: boolean) =>
      takenOver(from, to, { groups: new Set(['door']), replace }).map((one) => one.key);
    expect(keys(false)).toEqual([]);
    expect(keys(true)).toEqual(['leafWidthIn']);
  });

  test('what was taken over is confirmed in one go', () => {
    const opening = { ...newOpening('b', '104'), facts: factsLike(from) };
    expect(toConfirm(opening).map((one) => one.key)).toEqual(['doorType', 'leafWidthIn', 'frameMaterial']);
    expect(toConfirm(opening)[1]?.fact).toEqual({ is: 'known', value: 36 });
  });
});

test('answers are listed with the newest first', () => {
  const opening = {
    ...newOpening('a', '103'),
    facts: {
      doorType: { ...known('single' as const), at: '2026-03-02T10:00:00.000Z' },
      leafWidthIn: { ...known(36), at: '2026-03-02T11:00:00.000Z' },
      latch: unknown,
    },
  };
  expect(answersGiven(opening).map((one) => `${one.label}: ${one.value}`)).toEqual([
    'Leaf width: 36 in (3\'-0" · 914 mm)',
    'Door type: Single swinging leaf',
    'Latch or exit device: Not known',
  ]);
});

test('a figure in another unit is refused, not taken for one of ours', () => {
  expect(readFact('equipmentAmps', '30 min').ok).toBe(false);
  expect(readFact('equipmentAmps', '30 A')).toEqual({ ok: true, fact: { is: 'known', value: 30 } });
});
