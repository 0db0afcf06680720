import { egressReasons, type ReasonGroup, standingWords } from '../../domain/building/egressReasons.ts';
import { notComputedHere } from '../../domain/building/egressSentences.ts';
import type { SpaceEgress } from '../../domain/building/spaceEgress.ts';
import { neededInWords, noOccupants } from '../../domain/egress/exitsNeeded.ts';
import { figure } from '../../domain/egress/reason.ts';
import type { Reason } from '../../domain/egress/reason.ts';
import { compareMarks, type Project } from '../../domain/model/project.ts';
import { floorsInOrder } from '../../domain/project/places.ts';
import { type Severity, severityWords } from '../../domain/simulate/outcome.ts';
import { counted } from '../../domain/text/counted.ts';

export interface LoadDoor {
  readonly id: string;
  readonly mark: string;
  readonly says: string;
  readonly reasons: readonly Reason[];
}
/** One space as it stands in the table of loads and exits. */
export interface LoadLine {
  readonly spaceId: string;
  readonly space: string;
  readonly people: string;
  /** How the load is known: given, worked out, or nothing. */
  readonly standing: string;
  readonly needed: string;
  readonly found: string;
  readonly passes: string;
  readonly narrowest: string;
  readonly findings: readonly { readonly severity: Severity; readonly word: string; readonly says: string }[];
  /** Said where there is no finding. */
  readonly otherwise: string;
  readonly reasons: readonly ReasonGroup[];
  readonly doors: readonly LoadDoor[];
}
export interface LoadsSheet {
  readonly says: string;
  readonly floors: readonly {
    readonly name: string;
    readonly says: string;
    readonly lines: readonly LoadLine[];
  }[];
  readonly notes: readonly string[];
}

/** Loads and exits by floor from the lowest up, stairs and the outside left out; spaces on no floor last. */
export function loadsSheet(project: Project, spaces: readonly SpaceEgress[]): LoadsSheet {
  const floors = [
    ...floorsInOrder(project).map(({ id, name }) => ({ id, name })),
    { id: null, name: 'On no floor' },
  ];
  const known = new Set(floors.map((floor) => floor.id));
  const groups = floors.flatMap(({ id, name }) => {
    const lines = spaces
      .filter(({ space }) => (known.has(space.floorId) ? space.floorId : null) === id)
      .toSorted((a, b) => compareMarks(a.space.name, b.space.name))
      .map(lineOf);
    return lines.length === 0 ? [] : [{ name, says: counted(lines.length, 'space'), lines }];
  });
  return { says: counted(spaces.length, 'space'), floors: groups, notes };
}

const notes = [
  notComputedHere,
  'Clear widths marked “about” are estimates from leaf and hinges. Findings follow from the survey; they are not a determination of code compliance.',
];

function lineOf(egress: SpaceEgress): LoadLine {
  const { space, load, judged, needed, found, perhaps, capacity, narrowest, ways } = egress;
  const unknownWidth = capacity.unknown.length > 0;
  return {
    spaceId: space.id,
    space: space.name,
    people: load.people === null ? 'not known' : figure(load.people),
    standing: load.people === null ? '' : load.typed === null ? 'worked out' : 'given',
    needed: judged ? neededInWords(needed) : 'not judged',
    found: perhaps === 0 ? String(found) : `${found} to ${found + perhaps}`,
    passes:
      found === 0
        ? 'none'
        : unknownWidth
          ? capacity.people === 0
            ? 'not known'
            : `at least ${figure(capacity.people)}`
          : figure(capacity.people),
    narrowest:
      narrowest === null
        ? 'not known'
        : `${narrowest.estimated ? 'about ' : ''}${figure(narrowest.clearIn)} in (${narrowest.mark})`,
    findings: egress.findings.map(({ severity, says }) => ({
      severity,
      word: severityWords[severity],
      says: withoutName(says, space.name),
    })),
    otherwise: otherwise(egress),
    reasons: egressReasons(egress),
    doors: ways.map((way) => ({
      id: way.opening.id,
      mark: way.opening.mark,
      says: `To ${way.leadsTo}; ${standingWords[way.standing]}.${way.because === '' ? '' : ` ${way.because}`}`,
      reasons: way.reasons,
    })),
  };
}

/** The row is headed by the space already. */
function withoutName(says: string, name: string): string {
  if (!says.startsWith(`${name}: `)) return says;
  const rest = says.slice(name.length + 2);
  return `${rest.charAt(0).toUpperCase()}${rest.slice(1)}`;
}

function otherwise({ load, judged, hasDoors }: SpaceEgress): string {
  if (!judged) return 'Not judged: a corridor carries the people from its rooms.';
  if (load.people === null) return load.says;
  if (load.people === 0) return noOccupants;
  return hasDoors ? 'Nothing found.' : 'No opening connects to it yet.';
}
