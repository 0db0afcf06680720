import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { inRoot } from '../../../scripts/lib/repo.mjs';
import { decideAll } from '../../domain/decide/decide.ts';
import { reportOf } from '../../domain/words/report.ts';
import type { Decision } from '../../domain/decide/decision.ts';
import type { Project } from '../../domain/model/project.ts';
import { letterToAuthority } from '../../domain/review/packet.ts';
import { type Question, questionsOf } from '../../domain/review/questions.ts';
import { reviewState } from '../../domain/review/status.ts';
import { isApproval } from '../../domain/review/words.ts';
import { verdictOn, withVerdict } from '../../domain/testing/verdicts.ts';
import { packetSheet, type PacketSheet } from './packetSheet.ts';

const { project } = JSON.parse(readFileSync(inRoot('demo-data/demo-building.json'), 'utf8')) as {
  project: Project;
};
const decisions = decideAll(project);
let questions: readonly Question[];
let sheet: PacketSheet;
beforeAll(() => {
  questions = questionsOf(project, decisions, []);
  sheet = packetSheet(project, questions, reportOf);
});

describe('the packet for the authority', () => {
  it('asks everything that must be signed, at every opening it is asked at', () => {
    const marks = Object.values(project.openings).flatMap((opening) => {
      const { flags } = reviewState(project, opening, decisions.get(opening.id) as Decision);
      const open = flags.some(({ reason, state }) => reason.grade === 'must' && !isApproval(state));
      return open ? [opening.mark] : [];
    });
    expect(sheet.openings.map(({ mark }) => mark).toSorted()).toEqual(marks.toSorted());
    for (const { asked, proposed } of sheet.questions) {
      const at = asked.flatMap((one) => one.marks);
      expect(proposed.flatMap((one) => one.marks).toSorted()).toEqual(at.toSorted());
    }
  });

  it('cites no book that is not adopted here', () => {
    const cited = sheet.questions.flatMap(({ sections }) => sections).join(' ');
    expect(cited).toContain('IBC 2021');
    expect(cited).not.toContain('not adopted');
  });

  it('asks no more what was approved, and asks again what was refused', () => {
    const question = questions[1];
    if (!question) throw new Error('The demo asks less than two questions.');
    const answered = (verdict: 'approved' | 'refused') => {
      const after = withVerdict(
        project,
        verdictOn(project, question.at, { verdict, questions: [...question.flags], reference: 'Letter 7' }),
      );
      const asked = packetSheet(after, questionsOf(after, decisions, []), reportOf).questions;
      return asked.some(({ title, asked: at }) => title === question.title && at.length > 0);
    };
    expect(answered('refused')).toBe(true);
    expect(answered('approved')).toBe(false);
  });

  it('begins with a letter that counts what is asked', () => {
    const letter = letterToAuthority(project, questions.slice(0, 1), 'March 2, 2026');
    expect(letter).toContain('on 1 question about');
    expect(letter).toContain(project.name);
  });
});
