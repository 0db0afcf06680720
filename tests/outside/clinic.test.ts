import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { decideAll } from '../../src/domain/decide/decide.ts';
import { importTable } from '../../src/domain/import/csv.ts';
import { bestTable } from '../../src/domain/import/sheets.ts';
import type { Fact } from '../../src/domain/model/fact.ts';
import type { FactKey } from '../../src/domain/model/fields.ts';
import { newProject } from '../../src/domain/model/newProject.ts';
import { readSchedule } from '../../src/intake/readFile.ts';

/**
 * A real schedule of 254 doors, kept outside this repository. It stands where LATCHWARD_SHARED says, or in a
 * folder "shared" beside the repository; `npm run outside` fails without it.
 */
const shared = process.env['LATCHWARD_SHARED'] ?? fileURLToPath(new URL('../../../shared', import.meta.url));
const file = join(shared, 'data/schedules/clinic-door-schedule-derived.csv');

const read = await readSchedule(readFileSync(file));
if (!read.ok) throw new Error(read.says);
const table = bestTable(read.grids);
if (!table.ok) throw new Error(table.says);

function readClinic() {
  if (!table.ok) throw new Error(table.says);
  let count = 0;
  return importTable(table.table, { newId: () => `id${(count += 1)}` });
}

describe('a real schedule of 254 doors', () => {
  const result = readClinic();
  const { openings } = result;
  const count = (key: FactKey, value: unknown, is?: string) =>
    openings.filter((opening) => {
      const fact = opening.facts[key] as Fact<unknown> | undefined;
      return (
        fact !== undefined &&
        fact.is !== 'unknown' &&
        fact.value === value &&
        (is === undefined || fact.is === is)
      );
    }).length;
  const noted = (text: string) =>
    openings.filter((opening) => opening.notes.split(/; |\n/).includes(text)).length;

  it('takes every row and refuses none', () => {
    expect(openings).toHaveLength(254);
    expect(result.refused).toEqual([]);
    expect(result.floors.map((floor) => floor.name)).toEqual(['First Floor', 'Second Floor']);
  });

  it('reads the measures that are written, and nothing else, as known', () => {
    // 915 x 241: two of them stand at folding partitions, where the width may mean one panel or all.
    expect(count('leafWidthIn', 36.02, 'known')).toBe(239);
    expect(noted('Width (mm): 915')).toBe(2);
    expect(count('leafWidthIn', 48.03, 'known')).toBe(1);
    expect(count('leafWidthIn', 24.02, 'known')).toBe(1);
    expect(count('leafHeightIn', 84.06, 'known')).toBe(239);
    expect(count('leafHeightIn', 92.72, 'known')).toBe(2);
    expect(count('leafHeightIn', 93.5, 'known')).toBe(2);
    expect(count('leafThicknessIn', 1.77, 'known')).toBe(243);
  });

  it('assumes a single leaf but for louvred doors, partitions and stall doors', () => {
    expect(count('doorType', 'single', 'assumed')).toBe(242);
    expect(count('doorType', 'folding', 'assumed')).toBe(2);
  });

  it('assumes materials where the words say one thing', () => {
    expect(count('leafMaterial', 'woodSolidCore', 'assumed')).toBe(229);
    expect(count('leafMaterial', 'hollowMetal', 'assumed')).toBe(14);
    expect(noted('Door Material: Stainless Steel')).toBe(8);
    expect(noted('Door Material: Aluminum')).toBe(1);
    expect(count('frameMaterial', 'hollowMetal', 'assumed')).toBe(231);
    expect(count('frameMaterial', 'aluminium')).toBe(12);
  });

  it('never makes up a fire rating', () => {
    expect(openings.filter((opening) => opening.facts.fireRatingMin !== undefined)).toEqual([]);
  });

  it('keeps every cell it does not use in the notes', () => {
    const sets = { 101: 72, 112: 19, 102: 17, 108: 15, 114: 14, 111: 12 };
    for (const [set, doors] of Object.entries(sets)) expect(noted(`Hardware Set: ${set}`)).toBe(doors);
    expect(noted('Weather Stripping: Yes')).toBe(9);
    expect(noted('Shielded: Lead Lined')).toBe(4);
  });

  it('settles nothing on a plan alone: latch, rating and role are not in it', () => {
    const project = {
      ...newProject('clinic', 'Clinic'),
      openings: Object.fromEntries(openings.map((opening) => [opening.id, opening])),
    };
    const states = [...decideAll(project).values()].map((decision) => decision.state);
    expect(states).toHaveLength(254);
    expect(states.filter((state) => state === 'settled')).toEqual([]);
  });
});
