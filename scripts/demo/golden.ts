import { decideInBuilding } from '../../src/domain/building/joined.ts';
import { signOffReasons } from '../../src/domain/decide/signOff.ts';
import { openingsInOrder, type Project } from '../../src/domain/model/project.ts';

export interface GoldenDecision {
  readonly mark: string;
  readonly state: string;
  readonly candidate: string | null;
  /** Rules behind every sign-off that must be given, in order of their ids; "override" for a choice by hand, "severe" for what was found. */
  readonly must: readonly string[];
}

/** What each opening is decided to be, short enough that a change of it can be read in a diff. */
function goldenDecisions(project: Project): readonly GoldenDecision[] {
  const decisions = decideInBuilding(project);
  return openingsInOrder(project).flatMap((opening) => {
    const decision = decisions.get(opening.id);
    if (!decision) return [];
    const isSevere = (sentence: string) => decision.severe.some(({ says }) => says === sentence);
    const must = signOffReasons(decision).filter((reason) => reason.grade === 'must');
    return [
      {
        mark: opening.mark,
        state: decision.state,
        candidate: decision.chosen?.candidate.id ?? null,
        must: [
          ...new Set(
            must.map(({ ruleId, sentence }) => ruleId ?? (isSevere(sentence) ? 'severe' : 'override')),
          ),
        ].toSorted(),
      },
    ];
  });
}

/** One JSON object per line, in the order of the schedule. */
export function goldenText(project: Project): string {
  return goldenDecisions(project)
    .map((decision) => `${JSON.stringify(decision)}\n`)
    .join('');
}
