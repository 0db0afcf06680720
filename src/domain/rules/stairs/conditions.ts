import { all, ibc, is, isKnown, nfpa101, not, yes } from '../../logic/condition.ts';

/** NFPA 101 is the only adopted book, so its easier text may stand. */
export const nfpaAlone = all(nfpa101(), not(ibc()));

/**
 * Stairs the IBC leaves out of the re-entry rule: the one exit stair that is the only way into a tenant space or
 * unit. Nobody having said so counts as no, so a missing answer never opens the exception.
 */
export const loneStair = all(isKnown('singleExitStair'), yes('singleExitStair'));
export const loneStairIbc = all(loneStair, is('occupancyGroup', 'B', 'F-1', 'F-2', 'M', 'S-1', 'S-2', 'R-2'));
/** Chosen for the stair and said so; a missing answer counts as no. */
export const selectedReentry = all(isKnown('selectedReentry'), yes('selectedReentry'));
