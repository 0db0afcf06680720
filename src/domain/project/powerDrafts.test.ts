import { describe, expect, test } from 'vitest';
import { newProject } from '../model/newProject.ts';
import { emptyProduct, readPasted, readProduct } from './productDrafts.ts';
import {
  emptyCloset,
  emptySupply,
  hangsOnCloset,
  readCloset,
  readSupply,
  runLengthEdit,
} from './powerDrafts.ts';

const project = newProject('p', 'House');
const said = (read: { ok: boolean; field?: string; says?: string }) =>
  read.ok ? 'taken' : `${read.field}: ${read.says}`;

describe('bad input has a sentence at its field', () => {
  test.each([
    ['-20', 'lengthFt: The run cannot be below 0 ft.'],
    ['−20', 'lengthFt: The run cannot be below 0 ft.'],
    ['9000', 'lengthFt: The run cannot be above 5000 ft; check the unit.'],
    ['120', 'taken'],
    ['40 m', 'taken'],
    ['', 'taken'],
  ])('a run of “%s”: %s', (text, says) => {
    expect(said(runLengthEdit('o', text))).toBe(says);
  });
  test('what is no length is refused with the text in it', () => {
    expect(said(runLengthEdit('o', 'far'))).toContain('“far”');
  });
  test.each([
    [{ amps: '' }, 'amps'],
    [{ amps: '0' }, 'amps: The rating must be above 0 A'],
    [{ amps: 'lots' }, 'amps: The rating must be a number.'],
    [{ amps: '6', outputs: '2.5' }, 'outputs: The number of outputs must be a whole number.'],
    [{ amps: '6', volts: '230' }, 'volts: The voltage cannot be above 60 V; check the unit.'],
    [{ amps: '6', batteryAh: '-7' }, 'batteryAh: The battery cannot be below 0 Ah.'],
    [{ amps: '6 A', batteryAh: '7 Ah' }, 'taken'],
  ])('a supply with %j: %s', (change, says) => {
    expect(said(readSupply(project, 'u', { ...emptySupply, name: 'PS-1', ...change }))).toContain(says);
  });
  test.each([
    [{ steadyA: '0' }, 'steadyA: The current must be above 0 A; leave it empty where it is not known.'],
    [{ steadyA: '0.5', peakA: '0.2' }, 'peakA: The peak cannot be below the steady current.'],
    [
      { steadyA: '0.5', leastVolts: '30' },
      'leastVolts: The least voltage cannot be above the rated voltage.',
    ],
    [{ steadyA: '0.5', of: 'toaster' }, 'of: Choose what the product is.'],
    [{ steadyA: '0.5' }, 'taken'],
  ])('a product with %j: %s', (change, says) => {
    expect(said(readProduct('r', { ...emptyProduct, of: 'magnet', part: 'M', ...change }))).toBe(says);
  });
  test('closets need a name of their own', () => {
    expect(said(readCloset(project, 'k', emptyCloset))).toBe('name: A closet needs a name.');
    const made = readCloset(project, 'k', { ...emptyCloset, name: 'IDF 1' });
    const house = { ...project, closets: made.ok ? { k: made.value } : {} };
    expect(said(readCloset(house, 'l', { ...emptyCloset, name: 'IDF 1' }))).toBe(
      'name: There is a closet IDF 1 already.',
    );
    const runs = { o: { id: 'o', lengthFt: null, closetId: { value: 'k' }, supplyId: null } };
    expect(hangsOnCloset({ ...house, runs }, 'k')).toContain('IDF 1 still feeds o.');
    expect(hangsOnCloset(house, 'k')).toBeUndefined();
  });
});

test('a pasted list: the heading is passed over, bad lines are said, the others taken', () => {
  let made = 0;
  const text = [
    'kind\tmaker\tpart\tvolts\tamps\tpeak amps\tleast volts\tlisting\tprice',
    'Electromagnetic lock\tInvented\tEM-1\t24\t0.38\t\t20.4\tUL 1034\t$120',
    'reader\tInvented\tR-1\t12\t0',
    'toaster\tInvented\tT-1\t24\t1',
  ].join('\n');
  const read = readPasted(text, () => `r${made++}`);
  expect(read.rows).toMatchObject([
    { of: 'magnet', part: 'EM-1', steadyA: 0.38, leastVolts: 20.4, price: 120 },
  ]);
  expect(read.problems).toEqual([
    'Line 3: The current must be above 0 A; leave it empty where it is not known.',
    'Line 4: “toaster” is no kind of device here.',
  ]);
});
