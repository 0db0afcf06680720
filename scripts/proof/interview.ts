import { decide } from '../../src/domain/decide/decide.ts';
import type { Decision } from '../../src/domain/decide/decision.ts';
import { answered } from '../../src/domain/decide/whatMatters.ts';
import { nextQuestion } from '../../src/domain/survey/nextQuestion.ts';
import { buildingFactKeys, type FactKey, fieldInfo } from '../../src/domain/model/fields.ts';
import type { Opening, Project } from '../../src/domain/model/project.ts';

export type Value = string | number | boolean;

export interface Interview {
  readonly asked: readonly FactKey[];
  /** Answers given, "not known" among them, until the state was no longer open; undefined when it stayed open. */
  readonly untilDecided: number | undefined;
  readonly project: Project;
  readonly opening: Opening;
  readonly decision: Decision;
}

/** More questions than there are facts would mean that one is asked twice. */
const mostQuestions = 200;

/** Asks what the engine wants to know next, until nothing more can change the decision. */
export function interview(
  from: Project,
  about: Opening,
  answer: (key: FactKey) => Value | undefined,
): Interview {
  let [project, opening] = [from, about];
  const asked: FactKey[] = [];
  // Nobody is asked what the building has answered, so where this door differs the surveyor says so unasked.
  for (const key of buildingFactKeys) {
    const value = answer(key);
    const usual = project.building[key];
    if (fieldInfo(key).scope !== 'both' || value === undefined) continue;
    if (usual === undefined || usual.is === 'unknown' || usual.value === value) continue;
    [project, opening] = answered(project, opening, key, value);
    asked.push(key);
  }
  let decision = decide(project, opening);
  let untilDecided = decision.state === 'open' ? undefined : asked.length;
  for (;;) {
    const key = nextQuestion(project, opening, decision);
    if (key === undefined) break;
    if (asked.length >= mostQuestions) throw new Error(`Asked without end: ${asked.slice(-8).join(', ')}.`);
    asked.push(key);
    const value = answer(key);
    [project, opening] =
      value === undefined ? notKnown(project, opening, key) : answered(project, opening, key, value);
    decision = decide(project, opening);
    if (decision.state === 'open') untilDecided = undefined;
    else untilDecided ??= asked.length;
  }
  return { asked, untilDecided, project, opening, decision };
}

function notKnown(project: Project, opening: Opening, key: FactKey): [Project, Opening] {
  const fact = { is: 'unknown' } as const;
  if (fieldInfo(key).scope === 'building') {
    return [{ ...project, building: { ...project.building, [key]: fact } }, opening];
  }
  return [project, { ...opening, facts: { ...opening.facts, [key]: fact } }];
}

/** Answers as the finished survey of an opening has them. */
export function fromSurvey(project: Project, opening: Opening): (key: FactKey) => Value | undefined {
  return (key) => {
    const fact = opening.facts[key] ?? project.building[key];
    return fact === undefined || fact.is === 'unknown' ? undefined : fact.value;
  };
}

export const blank = (opening: Opening): Opening => ({
  ...opening,
  facts: {},
  override: null,
});
