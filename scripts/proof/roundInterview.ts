import { decide } from '../../src/domain/decide/decide.ts';
import type { Decision } from '../../src/domain/decide/decision.ts';
import { answered } from '../../src/domain/decide/whatMatters.ts';
import { fieldInfo, type FactKey } from '../../src/domain/model/fields.ts';
import type { Opening, Project } from '../../src/domain/model/project.ts';
import { factsToWrite, nextStop } from '../../src/domain/survey/round.ts';
import type { Value } from './interview.ts';

export interface Round {
  /** Each answer in words: the look and what was pressed, or the fact. */
  readonly answers: readonly string[];
  readonly project: Project;
  readonly opening: Opening;
  readonly decision: Decision;
}

const mostAnswers = 120;

/**
 * A surveyor on the way round one door: presses the answer to a look that says nothing untrue and says most, refuses
 * the look where each answer says something untrue, and answers single questions. What nobody knows is not told.
 */
export function roundTheDoor(
  from: Project,
  about: Opening,
  truth: (key: FactKey) => Value | undefined,
): Round {
  let [project, opening] = [from, about];
  let decision = decide(project, opening);
  const answers: string[] = [];
  const refused = new Set<string>();
  for (;;) {
    const stop = nextStop(project, opening, decision, refused);
    if (!stop) return { answers, project, opening, decision };
    if (answers.length >= mostAnswers) throw new Error(`Asked without end: ${answers.slice(-6).join(', ')}.`);
    const { ask } = stop;
    if (ask.kind === 'look') {
      const fitting = ask.presets
        .filter(({ facts }) => Object.entries(facts).every(([key, value]) => truth(key as FactKey) === value))
        .toSorted((a, b) => Object.keys(b.facts).length - Object.keys(a.facts).length)[0];
      answers.push(`${ask.look.id}: ${fitting?.label ?? 'none of these'}`);
      if (!fitting) refused.add(ask.look.id);
      else
        for (const { key, fact } of factsToWrite(fitting, opening))
          if (fact.is === 'known') [project, opening] = answered(project, opening, key, fact.value);
    } else {
      const value = truth(ask.key);
      answers.push(`${stop.station}: ${ask.key} ${value ?? '?'}`);
      [project, opening] =
        value === undefined ? notTold(project, opening, ask.key) : answered(project, opening, ask.key, value);
    }
    decision = decide(project, opening);
  }
}

function notTold(project: Project, opening: Opening, key: FactKey): [Project, Opening] {
  const fact = { is: 'unknown' } as const;
  if (fieldInfo(key).scope === 'building')
    return [{ ...project, building: { ...project.building, [key]: fact } }, opening];
  return [project, { ...opening, facts: { ...opening.facts, [key]: fact } }];
}
