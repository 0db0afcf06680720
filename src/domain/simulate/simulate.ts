import type { Arrangement, Setting, Simulable } from '../arrangement/arrangement.ts';
import { circuitAt, exitAt, type Moment, outsideLocked } from './circuit.ts';
import { condition, type ConditionId, conditionIds, type Situation } from './conditions.ts';
import { findingsOf } from './findings.ts';
import type { DoorState, Exit, OpeningFinding, Outcome, Outcomes, YesNo } from './outcome.ts';
import { notApplyingInWords, outcomeInWords } from './sentences.ts';

/** One arrangement run through every condition. */
export interface Ran {
  readonly arrangement: Arrangement;
  readonly setting: Setting;
  readonly outcomes: Outcomes;
  /** The worst first. */
  readonly findings: readonly OpeningFinding[];
}

export function runArrangement(found: Simulable): Ran {
  const outcomes = outcomesOf(found.arrangement);
  return { ...found, outcomes, findings: findingsOf(found, outcomes) };
}

const remembered = new Map<string, Outcomes>();
const mostRemembered = 4000;

/** All conditions of an arrangement. Openings alike in every part share one answer, so a big building costs little. */
function outcomesOf(arrangement: Arrangement): Outcomes {
  const key = JSON.stringify(arrangement);
  const before = remembered.get(key);
  if (before) return before;
  const entries = conditionIds.map((id) => [id, outcomeIn(arrangement, id)] as const);
  const outcomes = Object.fromEntries(entries) as unknown as Outcomes;
  if (remembered.size >= mostRemembered) remembered.clear();
  remembered.set(key, outcomes);
  return outcomes;
}

/** What holds in a condition of the whole building: where it does not apply, the opening is as in locked hours. */
export function standing(outcomes: Outcomes, id: ConditionId): Outcome {
  const outcome = outcomes[id];
  return outcome.applies ? outcome : outcomes.lockedHours;
}

function outcomeIn(arrangement: Arrangement, id: ConditionId): Outcome {
  const why = notApplyingInWords(arrangement, id);
  if (why !== undefined) {
    const none = { entry: 'none', exit: 'none', afterS: null, latched: 'none', coil: 'none' } as const;
    return { condition: id, applies: false, ...none, hours: null, alarm: false, says: why };
  }
  const { situation } = condition(id);
  const first = stateIn(arrangement, situation);
  let { exit, latched } = first.state;
  let hours: Outcome['hours'] = null;
  // A fire does not wait for closing time: exit and latch are the worse of both hours.
  if ((situation.fireAlarm || situation.flow) && arrangement.scheduled) {
    const { state: open } = stateIn(arrangement, { ...situation, unlockedHours: true });
    exit = worse(exit, open.exit);
    if (open.latched === 'no') latched = 'no';
    if (!alike(open, first.state)) hours = { locked: first.state, unlocked: open };
  }
  const outcome: Omit<Outcome, 'says'> = {
    condition: id,
    applies: true,
    ...first.state,
    exit,
    latched,
    afterS: exit === 'after' ? arrangement.delayS : null,
    hours,
    alarm: alarmIn(arrangement, situation, exit),
  };
  return { ...outcome, says: outcomeInWords(arrangement, outcome, first.rest) };
}

function stateIn(
  arrangement: Arrangement,
  situation: Situation,
): { readonly state: DoorState; readonly rest: Moment } {
  const found = momentsIn(arrangement, situation);
  let { latched, rest } = found;
  // Nobody knows whether a battery is there: without one the outside lets go at once, or locks where it was held open.
  if (!situation.mains && situation.charged && arrangement.battery === 'notKnown') {
    const bare = circuitAt({ ...arrangement, battery: 'no' }, situation, situation.at === 'leaving');
    if (bare.locked !== rest.locked) rest = bare;
    if (bare.locked && arrangement.latch === 'whileLocked') latched = 'yes';
  }
  const held = situation.at === 'held';
  const exit = held ? 'free' : found.exit;
  const state: DoorState = {
    entry: held || !outsideLocked(arrangement, rest) ? 'unlocked' : 'locked',
    exit,
    afterS: exit === 'after' ? arrangement.delayS : null,
    latched: held ? 'no' : latched,
    coil: arrangement.failMode === 'asIs' || arrangement.failMode === 'none' ? 'none' : yesNo(rest.energized),
  };
  return { state, rest };
}

function momentsIn(
  arrangement: Arrangement,
  situation: Situation,
): { exit: Exit; latched: YesNo; rest: Moment } {
  const untouched = circuitAt(arrangement, situation, false);
  const acting = circuitAt(arrangement, situation, true);
  const rest = situation.at === 'leaving' ? acting : untouched;
  const latched: YesNo =
    arrangement.latch === 'always' ? 'yes' : arrangement.latch === 'never' ? 'no' : yesNo(rest.locked);
  return { exit: exitAt(arrangement, situation, untouched, acting), latched, rest };
}

function alarmIn(arrangement: Arrangement, situation: Situation, exit: Exit): boolean {
  switch (situation.at) {
    case 'forced':
    case 'held':
      return arrangement.reportsPosition;
    case 'leaving':
      // The delay sounds; a door that reports its position and knows of nobody leaving takes it for forced.
      return (
        exit === 'after' || (exit !== 'blocked' && arrangement.reportsPosition && !arrangement.exitSignal)
      );
    case 'rest':
      return false;
  }
}

function alike(a: DoorState, b: DoorState): boolean {
  return a.entry === b.entry && a.exit === b.exit && a.latched === b.latched && a.coil === b.coil;
}

const exitOrder: readonly Exit[] = ['none', 'free', 'after', 'byStaff', 'blocked'];
function worse(a: Exit, b: Exit): Exit {
  return exitOrder.indexOf(a) >= exitOrder.indexOf(b) ? a : b;
}
function yesNo(value: boolean): YesNo {
  return value ? 'yes' : 'no';
}
