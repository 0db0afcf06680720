import { releaseInWords, failModeWords } from '../words/arrangement.ts';
import { gradeWords, signOffReasons } from '../words/signOff.ts';
import { stateInWords } from '../words/states.ts';
import type { Decision, Decisions, DecisionState } from '../decide/decision.ts';
import { valueIn } from '../logic/slots.ts';
import { worstGrade } from '../decide/signOff.ts';
import { valueInWords } from '../text/format.ts';
import type { FactKey } from '../model/fields.ts';
import { type Opening, openingsInOrder, type Project } from '../model/project.ts';
import { onFireAlarm } from '../simulate/outcomeWords.ts';
import { simulateOpening } from '../decide/whatHappens.ts';
import { nothingToBuy, orderState, orderStateWords } from '../sets/forOrder.ts';
import { missingKeys } from '../sets/missing.ts';
import { labelInWords, sizeInWords } from '../words/openingWords.ts';
import { type SetNumbers, setNumbersOf } from '../sets/sets.ts';
import { signatureOf } from '../review/status.ts';
import { type ReviewState, reviewStateWords } from '../review/words.ts';

export type SignOffFlag = 'must' | 'should' | 'none';

/** One line of the opening schedule. All words are ready to print; empty means that nothing is recorded. */
export interface OpeningRow {
  readonly openingId: string;
  readonly mark: string;
  readonly floor: string;
  readonly from: string;
  readonly to: string;
  readonly doorType: string;
  readonly size: string;
  readonly leaf: string;
  readonly frame: string;
  readonly label: string;
  readonly egressRole: string;
  readonly handing: string;
  /** New, altered or existing. */
  readonly work: string;
  /** Number of the hardware set; empty while nothing is chosen. */
  readonly set: string;
  readonly device: string;
  readonly failMode: string;
  readonly release: string;
  readonly fireAlarm: string;
  /** Voltage of the lock supply; empty where nothing is wired. */
  readonly supply: string;
  readonly state: DecisionState;
  readonly stateWord: string;
  readonly signOff: SignOffFlag;
  readonly signOffWords: string;
  readonly review: ReviewState;
  readonly reviewWords: string;
  /** What is said about names: what is asked for and what is on file; empty where neither is. */
  readonly signature: readonly string[];
  readonly notes: string;
  /** Whether it may be ordered as it is listed; empty while nothing is chosen. */
  readonly order: string;
  /** Unknown facts on which something still waits. */
  readonly missing: number;
}

/** Columns of the schedule in order, with the heading each carries on paper and in files. */
export const openingColumns = {
  mark: 'Mark',
  floor: 'Floor',
  from: 'From',
  to: 'To',
  doorType: 'Door type',
  size: 'Size W × H × T',
  leaf: 'Leaf',
  frame: 'Frame',
  label: 'Fire label',
  egressRole: 'Egress role',
  handing: 'Handing',
  work: 'New or existing',
  set: 'Set',
  device: 'Locking device',
  failMode: 'Fail mode',
  release: 'Release',
  fireAlarm: 'On fire alarm',
  supply: 'Lock supply',
  stateWord: 'State',
  signOffWords: 'Sign-off',
  reviewWords: 'Review',
  order: 'Order',
  missing: 'Facts missing',
  notes: 'Notes',
} as const satisfies Partial<Record<keyof OpeningRow, string>>;
export type OpeningColumn = keyof typeof openingColumns;

/** All openings in the order of the schedule. An opening without a decision is left out: there is nothing to print. */
export function scheduleRows(project: Project, decisions: Decisions): readonly OpeningRow[] {
  const numbers = setNumbersOf(project, decisions);
  return openingsInOrder(project).flatMap((opening) => {
    const decision = decisions.get(opening.id);
    return decision ? [openingRow(project, opening, decision, numbers)] : [];
  });
}

/** What the fire alarm does at an opening; empty while nothing is chosen. */
export function fireAlarmAt(project: Project, opening: Opening, decision: Decision): string {
  const simulated = decision.chosen ? simulateOpening(project, opening, decision) : undefined;
  return simulated ? onFireAlarm(simulated.arrangement, simulated.outcomes) : '';
}

function openingRow(project: Project, opening: Opening, decision: Decision, numbers: SetNumbers): OpeningRow {
  const { slots, chosen } = decision;
  const word = (key: FactKey) => {
    const value = valueIn(slots, key);
    return value === undefined ? '' : valueInWords(key, value);
  };
  const grade = worstGrade(signOffReasons(decision));
  const signOff: SignOffFlag = grade === 'must' || grade === 'should' ? grade : 'none';
  const { state: review, words: signature } = signatureOf(project, opening, decision);
  return {
    openingId: opening.id,
    mark: opening.mark,
    floor: nameOf(project.floors, opening.floorId),
    from: nameOf(project.spaces, opening.fromSpaceId),
    to: nameOf(project.spaces, opening.toSpaceId),
    doorType: word('doorType'),
    size: sizeInWords(decision),
    leaf: word('leafMaterial'),
    frame: word('frameMaterial'),
    label: labelInWords(decision),
    egressRole: word('egressRole'),
    handing: word('handing'),
    work: word('workStatus'),
    set: numbers.get(opening.id) ?? '',
    device: chosen ? chosen.candidate.device.name : '',
    failMode: chosen ? failModeWords[chosen.candidate.failMode] : '',
    release: chosen ? releaseInWords(chosen.candidate) : '',
    fireAlarm: fireAlarmAt(project, opening, decision),
    supply: chosen?.candidate.device.wired ? word('supplyVolts') : '',
    state: decision.state,
    stateWord: stateInWords(decision).word,
    signOff,
    signOffWords: signOff === 'none' ? 'None' : gradeWords[signOff],
    review,
    reviewWords: reviewStateWords[review],
    signature,
    notes: opening.notes,
    order: orderWords(project, opening, decision),
    missing: missingKeys(project, opening, decision).length,
  };
}

function orderWords(project: Project, opening: Opening, decision: Decision): string {
  if (decision.state === 'left') return nothingToBuy;
  return decision.chosen ? orderStateWords[orderState(project, opening, decision)] : '';
}

function nameOf(things: Readonly<Record<string, { readonly name: string }>>, id: string | null): string {
  return id !== null && Object.hasOwn(things, id) ? (things[id]?.name ?? '') : '';
}
