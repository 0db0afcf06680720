import { figure, type Reason, surveyed } from '../egress/reason.ts';
import { corridorInWords, throughInWords } from './egressSentences.ts';
import type { SpaceEgress } from './spaceEgress.ts';
import type { Standing } from './waysOut.ts';

export interface ReasonGroup {
  readonly head: string;
  readonly reasons: readonly Reason[];
}

/** What the figures of a space rest on, head by head; its doors stand beside it, because they are links. */
export function egressReasons(egress: SpaceEgress): readonly ReasonGroup[] {
  const { load, group, judged, needed, panic, through, space } = egress;
  const path =
    space.commonPathFt === null
      ? 'The common path is not measured.'
      : `Common path ${figure(space.commonPathFt)} ft.`;
  const groups: readonly ReasonGroup[] = [
    { head: 'Load', reasons: [surveyed(load.says), ...load.reasons] },
    {
      head: 'Exits required',
      reasons: judged
        ? [
            group.reason,
            surveyed(path),
            ...(needed?.reasons ?? []),
            ...(through.length > 0 ? [surveyed(throughInWords(through))] : []),
          ]
        : [surveyed(corridorInWords)],
    },
    { head: 'Panic hardware', reasons: judged ? (panic?.reasons ?? [surveyed(panicOpen)]) : [] },
  ];
  return groups.filter((one) => one.reasons.length > 0);
}

const panicOpen = 'Whether group and load require it is not known while one of the two is missing.';

export const standingWords: Readonly<Record<Standing, string>> = {
  counts: 'counts as an exit',
  perhaps: 'may count',
  no: 'does not count',
};
