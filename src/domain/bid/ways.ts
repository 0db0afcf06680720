import { candidates, type Release } from '../devices/candidates.ts';
import { decide } from '../decide/decide.ts';
import type { Decision } from '../decide/decision.ts';
import type { Opening, Project } from '../model/project.ts';
import { setContent } from '../hardware/content.ts';

/** One arrangement an opening could have, and what it would be bought as. */
export interface Way {
  readonly candidateId: string;
  readonly content: string;
  /** Tenths of a point of 1000 below the recommendation. */
  readonly lost: number;
  readonly decision: Decision;
}

/**
 * What an opening may be given instead of the recommendation for at most so many tenths of a point: nothing a rule
 * forbids or may yet forbid, nothing that ends badly or less settled, nothing that needs a signature the recommendation
 * does not need. The recommendation is the first.
 */
export function waysOf(
  project: Project,
  opening: Opening,
  decision: Decision,
  mostLost: number,
): readonly Way[] {
  const { chosen, overridden } = decision;
  const content = setContent(decision);
  if (!chosen || content === undefined) return [];
  const best: Way = { candidateId: chosen.candidate.id, content, lost: 0, decision };
  // What a person chose stands, and what is not settled is not bought yet.
  if (overridden || decision.state !== 'settled') return [best];
  const out = new Set([...decision.rejected, ...decision.open].map((one) => one.candidate));
  const others = candidates.flatMap((candidate): Way[] => {
    if (candidate === chosen.candidate || out.has(candidate)) return [];
    const override = { candidate: candidate.id, reason: '-', by: '', at: noTime };
    const instead = decide(project, { ...opening, override });
    const lost = chosen.score.tenths - (instead.chosen?.score.tenths ?? 0);
    const made = setContent(instead);
    if (lost > mostLost || made === undefined || !isAsGood(instead, decision)) return [];
    return [{ candidateId: candidate.id, content: made, lost, decision: instead }];
  });
  return [best, ...others.toSorted((a, b) => a.lost - b.lost)];
}
const noTime = '2000-01-01T00:00:00Z';

/** Releases an owner asks for by name: to leave by one of them is what the lock is wanted for. */
const wanted: readonly Release[] = ['delayed', 'controlled', 'clinical', 'lobby', 'stairReentry', 'attended'];

function isAsGood(instead: Decision, before: Decision): boolean {
  const [release, other] = [before, instead].map(({ chosen }) => chosen?.candidate.release);
  if (release !== undefined && wanted.includes(release) && other !== release) return false;
  return instead.state === 'settled' && instead.stands && mustSign(instead) <= mustSign(before);
}

/** What the rules ask to be signed; that it was chosen by hand is signed for in any case. */
function mustSign({ signOffs }: Decision): number {
  return signOffs.filter(({ clause }) => clause.effect === 'signOff' && clause.grade === 'must').length;
}
