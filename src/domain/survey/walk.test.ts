import { describe, expect, test } from 'vitest';
import { officeDoor, officeProject } from '../../../scripts/proof/officeDoor.ts';
import { roundTheDoor } from '../../../scripts/proof/roundInterview.ts';
import { controlledOffice } from '../../../scripts/proof/usualOffice.ts';
import { applyEdits } from '../commands/command.ts';
import { decide, decideAll } from '../decide/decide.ts';
import { known, unknown } from '../testing/facts.ts';
import { newOpening, newProject } from '../model/newProject.ts';
import type { Opening, Project } from '../model/project.ts';
import { atTheDoor } from './atTheDoor.ts';
import { gapsIn, leaveFloor } from './leaveFloor.ts';
import { floorDoubt, floorOfMark, marksAfter, runInWords, runLike } from './nextDoor.ts';
import { setUpEdits, setUpLeft } from './setUp.ts';

const floors = { a: { id: 'a', name: 'First', level: 1 }, b: { id: 'b', name: 'Second', level: 2 } };
const withDoors = (...doors: readonly (readonly [string, string | null])[]): Project => ({
  ...newProject('p', 'P'),
  floors,
  openings: Object.fromEntries(
    doors.map(([mark, floorId]) => [mark, { ...newOpening(mark, mark), floorId }]),
  ),
});

describe('the next door', () => {
  test('ten doors like one have marks of their own and nothing of them is known', () => {
    const like: Opening = { ...newOpening('o', '2-05'), facts: { leafMaterial: known('hollowMetal') } };
    const marks = marksAfter(['2-05', '2-08'], '2-05', 10);
    expect(marks).toEqual(['2-06', '2-07', '2-09', '2-10', '2-11', '2-12', '2-13', '2-14', '2-15', '2-16']);
    let id = 0;
    const run = runLike(like, marks, () => `n${id++}`);
    expect(run.map((one) => one.facts.leafMaterial?.is)).toEqual(marks.map(() => 'assumed'));
    expect(runInWords(marks, '2-05')).toBe('2-06 to 2-16 as 2-05');
  });

  test('the floor of a mark is the one of its kin, and none where they disagree', () => {
    const project = withDoors(['1-01', 'a'], ['2-01', 'b'], ['2-02', 'b'], ['301', 'a'], ['302', 'b']);
    expect(floorOfMark(project, '2-03')).toBe('b');
    expect(floorOfMark(project, '303')).toBeUndefined();
    expect(floorOfMark(project, 'X')).toBeUndefined();
  });

  test('mark and floor that disagree are said, with the floor that is meant', () => {
    const project = withDoors(['2-01', 'b'], ['2-02', 'a']);
    const wrong = project.openings['2-02'] as Opening;
    expect(floorDoubt(withDoors(['2-01', 'b'], ['2-03', 'b'], ['2-02', 'a']), wrong)).toEqual({
      floorId: 'b',
      says: 'Other marks like 2-02 are on “Second”; this one stands on “First”.',
      move: 'Put it on “Second”',
    });
    expect(floorDoubt(project, { ...wrong, floorId: 'b' })).toBeUndefined();
  });
});

describe('leaving the floor', () => {
  test('a mark left out of a run is missing, and a new hundred is none', () => {
    expect(gapsIn(['2-03', '2-05', '2-01', 'X', '101', '205'])).toEqual(['2-02', '2-04']);
    expect(gapsIn(['101', '105'])).toEqual([]);
  });

  test('done, to come back for, and to report stand apart', () => {
    const at = (mark: string, facts: Opening['facts']): Opening => ({ ...newOpening(mark, mark), facts });
    const padlock = {
      control: known('asToday' as const),
      existingArrangement: known('padlock' as const),
      egressRole: known('exitAccess' as const),
      roomUse: known('office' as const),
    };
    const doors = [
      at('1', { control: known('notControlled'), existingArrangement: known('freeLever') }),
      at('2', padlock),
      at('3', { doorType: known('single'), leafMaterial: known('hollowMetal'), latch: unknown }),
      at('4', {}),
    ];
    const project = { ...officeProject, openings: Object.fromEntries(doors.map((one) => [one.id, one])) };
    const left = leaveFloor(project, null, decideAll(project));
    const marks = (list: readonly { mark: string }[]) => list.map((one) => one.mark);
    expect(marks(left.done)).toEqual(['1', '2']);
    expect(marks(left.unlawful)).toEqual(['2']);
    expect(marks(left.revisit)).toEqual(['3']);
    expect(left.revisit[0]?.why).toBe('Not known: latch or exit device.');
    expect(marks(left.open)).toEqual(['4']);
    expect(left.says).toBe('2 doors of 4 done. Photos are missing at 1 door.');
    expect(left.photosMissing.map(({ why }) => why)).toEqual(['No photo yet of: latch or exit device.']);
  });
});

describe('at the door', () => {
  test('a survey that contradicts itself says why and which answer to look at', () => {
    const opening = { ...officeDoor, facts: { fireRatingMin: known(19) } };
    const said = atTheDoor(officeProject, opening, decide(officeProject, opening));
    expect(said?.rulesOut).toContain('Doors are not rated 19 min');
    expect(said?.lookAt.map(({ key }) => key)).toEqual(['fireRatingMin']);
    expect(said?.lookAt[0]?.says).toMatch(/Now: answered 19 min\.$/);
    expect(atTheDoor(officeProject, officeDoor, decide(officeProject, officeDoor))).toBeUndefined();
  });
});

describe('set-up', () => {
  test('each press says something of the building or of the usual, until nothing is left', () => {
    let project = newProject('p', 'P');
    let presses = 0;
    for (;;) {
      const [look] = setUpLeft(project, new Set());
      const preset = look?.presets[0];
      if (!look || !preset) break;
      const applied = applyEdits(project, setUpEdits(preset));
      if (!applied.ok) throw new Error(look.id);
      project = applied.project;
      presses++;
    }
    expect(presses).toBeLessThanOrEqual(11);
    expect(project.building.sprinklered).toEqual(known(true));
    expect(project.usual.leafMaterial).toEqual(known('hollowMetal'));
    // A wish of the building would be taken at each door without a word.
    expect(project.building.readerSides).toBeUndefined();
    expect(project.usual.readerSides).toEqual(known('secure'));
    // No door has a voltage of its own: one that is not the usual door is not asked for it again.
    expect(project.building.supplyVolts).toEqual(known('24'));
    const other = roundTheDoor(project, newOpening('o', '1'), (key) =>
      key === 'leafWidthIn' ? 42 : controlledOffice(key),
    );
    expect(other.answers).toContain('usualDoor: none of these');
    expect(other.answers.filter((answer) => answer.includes('supplyVolts'))).toEqual([]);
    expect(setUpLeft(newProject('p', 'P'), new Set(['use'])).map(({ id }) => id)).not.toContain('use');
  });
});
