import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { decideAll } from '../decide/decide.ts';
import { worstGrade } from '../decide/signOff.ts';
import { signOffReasons } from '../words/signOff.ts';
import type { Opening, Project } from '../model/project.ts';
import type { Verdict, VerdictKind } from '../model/verdict.ts';
import { verdictOn, withVerdict } from '../testing/verdicts.ts';
import { openProjectText } from '../versions/file.ts';
import { orderState } from './forOrder.ts';
import { openingLines } from './openingLines.ts';
import { hardwareSets } from './sets.ts';

const opened = openProjectText(readFileSync('demo-data/demo-building.json', 'utf8'));
if (!opened.ok) throw new Error('The demo building does not open.');
const demo: Project = { ...opened.project, verdicts: {}, verdictIndex: {} };
const decisions = decideAll(demo);
/** Settled, complete, and somebody must sign. */
const due = Object.values(demo.openings).filter((opening) => {
  const decision = decisions.get(opening.id);
  return decision && orderState(demo, opening, decision) === 'unsigned';
});

function stateWith(opening: Opening, verdict: VerdictKind | null, other: Partial<Verdict> = {}): string {
  const decision = decisions.get(opening.id);
  if (!decision) throw new Error(opening.mark);
  if (verdict === null) return orderState(demo, opening, decision);
  const entry = verdictOn(demo, [{ opening, decision }], { verdict, ...other });
  return orderState(withVerdict(demo, entry), opening, decision);
}

describe('what may be ordered', () => {
  it('waits for the signature that is due, and for nothing but an approval that still stands', () => {
    expect(due.length).toBeGreaterThan(3);
    const [first] = due;
    if (!first) throw new Error('none');
    expect(stateWith(first, null)).toBe('unsigned');
    expect(stateWith(first, 'approved')).toBe('complete');
    expect(stateWith(first, 'refused')).toBe('unsigned');
    expect(stateWith(first, 'approvedWithConditions')).toBe('complete');
    expect(stateWith(first, 'passedToAuthority')).toBe('unsigned');
    const saw = {
      basis: '',
      program: '',
      amendments: {},
      openings: { [first.id]: { mark: '', candidate: 'x', facts: {} } },
    };
    expect(stateWith(first, 'approved', { saw })).toBe('unsigned');
  });

  it('is said alike of the set, of each line, and never of an opening that somebody must still sign', () => {
    const project = demo;
    const sets = hardwareSets(project, decisions);
    const bySet = new Map(sets.flatMap((set) => set.openings.map((one) => [one.id, one.order] as const)));
    for (const line of openingLines(project, decisions, sets)) {
      expect(line.order).toBe(bySet.get(line.openingId));
      const decision = decisions.get(line.openingId);
      if (line.order !== 'complete' || !decision) continue;
      expect(decision.state).toBe('settled');
      expect(worstGrade(signOffReasons(decision))).not.toBe('must');
    }
  });
});
