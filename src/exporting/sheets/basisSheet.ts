import { basisInWords } from '../../domain/codes/basis.ts';
import type { Project } from '../../domain/model/project.ts';
import {
  type ComparedOpening,
  compareProject,
  type Difference,
  differenceWords,
  type OtherBasis,
  otherBasisInWords,
} from '../../domain/schedules/otherBasis.ts';
import { counted } from '../../domain/text/counted.ts';

/** One difference as it is read: what kind, both sides, and the rules that make it. */
export interface BasisLine {
  readonly id: string;
  readonly kind: string;
  readonly now: string;
  readonly instead: string;
  readonly rules: readonly string[];
}
export interface BasisGroup {
  readonly mark: string;
  readonly says: string;
  readonly lines: readonly BasisLine[];
}
export interface BasisSheet {
  readonly says: string;
  /** Heads of the two sides. */
  readonly now: string;
  readonly instead: string;
  readonly groups: readonly BasisGroup[];
  readonly notes: readonly string[];
}

/** What stands on the side that says nothing. */
const silent = '—';

/** Another basis side by side with the project’s, opening by opening. Screen and paper lay out the same lines. */
export function basisSheet(
  project: Project,
  other: OtherBasis,
  compared: readonly ComparedOpening[] = compareProject(project, other),
): BasisSheet {
  return comparedSheet(compared, {
    now: `Project: ${basisInWords(project.basis)}`,
    instead: `Instead: ${otherBasisInWords(project, other)}`,
    notes: [
      'A rule is cited under the basis in which it applies. A dash means that side has nothing comparable.',
      'Survey, weights and choices by hand are the same on both sides. Of the findings about the whole building only severe ones are compared, at the openings they name.',
      'Rules that were not read in a code’s own text say so in the rule book. The authority names the basis that governs.',
    ],
  });
}

/** The project as it stands, and as it would be under another edition of an owner’s standard. */
export function standardSheet(compared: readonly ComparedOpening[], instead: string): BasisSheet {
  return comparedSheet(compared, {
    now: 'Project as it stands',
    instead: `With ${instead}`,
    notes: [
      'Survey, code basis and choices by hand are the same on both sides. An owner’s standard lifts no rule of a code.',
    ],
  });
}

function comparedSheet(
  compared: readonly ComparedOpening[],
  heads: Pick<BasisSheet, 'now' | 'instead' | 'notes'>,
): BasisSheet {
  const differing = compared.filter((one) => one.differences.length > 0);
  return {
    says: `${counted(differing.length, 'opening')} of ${compared.length} would come out differently.`,
    ...heads,
    groups: differing.map(({ mark, differences }) => ({
      mark,
      says: counted(differences.length, 'difference'),
      lines: differences.map(lineOf),
    })),
  };
}

function lineOf({ kind, now, instead, behind }: Difference, index: number): BasisLine {
  return {
    id: `${index}`,
    kind: differenceWords[kind],
    now: now === '' ? silent : now,
    instead: instead === '' ? silent : instead,
    rules: behind.map(({ ruleId, cites }) => [ruleId, ...cites].join(' · ')),
  };
}
