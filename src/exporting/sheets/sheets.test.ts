import { describe, expect, it } from 'vitest';
import { verdictOn, withVerdict } from '../../domain/testing/verdicts.ts';
import { decide } from '../../domain/decide/decide.ts';
import { standingCaution } from '../../domain/text/cautions.ts';
import { known } from '../../domain/testing/facts.ts';
import { newOpening, newProject } from '../../domain/model/newProject.ts';
import type { Opening, Project } from '../../domain/model/project.ts';
import { dayInWords } from './day.ts';
import { scheduleColumns, scheduleSheet } from './doorSchedule.ts';
import { cssString, pageRules } from './pageRules.ts';
import { registerInWords, reviewRegister } from './reviewRegister.ts';
import { setSheet } from './setSheet.ts';
import { sheetIds } from './sheetKinds.ts';
import { draftOf, type Stamp } from './stamp.ts';
import { titleBlock } from './titleBlock.ts';

const plain: Opening = { ...newOpening('a', '101'), facts: { doorType: known('single') } };
const interlock: Opening = { ...newOpening('b', 'G-01'), facts: { wishInterlock: known(true) } };
const project: Project = { ...newProject('p', 'House'), openings: { a: plain, b: interlock } };
const decisionsOf = (of: Project) =>
  new Map(Object.values(of.openings).map((opening) => [opening.id, decide(of, opening)]));

describe('page rules', () => {
  it('carry caution, code basis and day on every page, whatever the project is called', () => {
    const rules = pageRules({ ...project, name: 'A "B" </style> \\ {}\n' }, draftOf('2026-03-02'), 'a3');
    // One for each kind of sheet, and one for the wiring of a set, which stands upright.
    const names = [...rules.matchAll(/@page (\S+)/g)].map(([, name]) => name);
    expect(names).toEqual([...sheetIds.map((id) => `sheet-${id}`), 'sheet-wiring']);
    // Every sheet stands on a page that there is.
    const placed = [...rules.matchAll(/^\.paper-(\S+) \{ page: (\S+);/gm)];
    expect(placed.map(([, id]) => id)).toEqual(sheetIds);
    for (const [, , page] of placed) expect(names).toContain(page);
    expect(rules.split(standingCaution)).toHaveLength(names.length + 1);
    expect(rules).toContain('IBC 2021');
    expect(rules).toContain('March 2, 2026');
    expect(rules).toContain('size: 420mm 297mm');
    expect(rules).not.toContain('</style>');
  });

  it('keep a name inside its string', () => {
    expect(cssString('a"b\\c\n')).toBe('"a\\22 b\\5c c\\a "');
  });
});

describe('sheets', () => {
  it('list every opening once, with a cell for every column behind the mark', () => {
    const lines = scheduleSheet(project, decisionsOf(project)).floors.flatMap((floor) => floor.lines);
    expect(lines.map((line) => line.mark)).toEqual(['101', 'G-01']);
    for (const line of lines) expect(line.cells).toHaveLength(scheduleColumns.length - 1);
  });

  it('leave no opening out of the hardware sets', () => {
    const sheet = setSheet(project, decisionsOf(project));
    const listed = [...sheet.sets.flatMap((set) => set.marks), ...sheet.without.map((one) => one.mark)];
    expect(listed.toSorted()).toEqual(['101', 'G-01']);
  });

  it('say in the title block what is not stated', () => {
    const cells = titleBlock(project, 'schedule', draftOf('2026-03-02'));
    expect(cells.find((cell) => cell.label === 'Prepared by')?.value).toBe('not stated');
    expect(cells.find((cell) => cell.label === 'Basis confirmed')?.value).toBe('not asked yet');
    expect(dayInWords('2026-12-31')).toBe('December 31, 2026');
  });

  it('name edition, its day and purpose, and the status on every kind of sheet', () => {
    const issued = { number: '2', on: '2026-03-02', purpose: 'bid', by: 'Demo estimator' };
    for (const id of sheetIds) {
      const told = (stamp: Stamp) => {
        const cells = titleBlock(project, id, stamp);
        return ['Edition', 'Status', 'Printed'].map(
          (label) => cells.find((one) => one.label === label)?.value,
        );
      };
      expect(told({ day: '2026-04-01', issued, standing: 'PRELIMINARY: 1 opening unsigned' })).toEqual([
        '2, March 2, 2026, for bid',
        'Issued, preliminary',
        'April 1, 2026',
      ]);
      expect(told(draftOf('2026-04-01'))).toEqual(['not issued', 'Draft, complete', 'April 1, 2026']);
    }
    expect(pageRules(project, { day: '2026-04-01', issued, standing: '' }, 'letter')).toContain('Edition 2');
  });
});

describe('the review register', () => {
  it('names the rule with its section and edition', () => {
    const entry = reviewRegister(project, decisionsOf(project)).find((one) => one.mark === 'G-01');
    expect(entry?.grade).toBe('must');
    expect(entry?.reasons[0]?.source).toMatch(/^[A-Z]+-\d+ · .+/);
  });

  it('keeps an opening whose mark went stale', () => {
    const verdict = verdictOn(project, [{ opening: interlock, decision: decide(project, interlock) }]);
    const changed = { ...interlock, facts: { wishInterlock: known(false) } };
    const after = withVerdict({ ...project, openings: { [interlock.id]: changed } }, verdict);
    const entries = reviewRegister(after, decisionsOf(after));
    expect(entries[0]?.status.state).toBe('stale');
    expect(registerInWords(entries)).toContain('1 stale');
  });
});
