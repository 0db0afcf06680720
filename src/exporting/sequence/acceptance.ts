import { forbiddingRules } from '../../domain/words/byHand.ts';
import { device } from '../../domain/devices/devices.ts';
import { conditionOfApproval } from '../../domain/review/conditionsAt.ts';
import { condition, conditionIds } from '../../domain/simulate/conditions.ts';
import type { Outcome } from '../../domain/simulate/outcome.ts';
import { expectedInWords } from '../../domain/simulate/outcomeWords.ts';
import { delayTest } from './delayTest.ts';
import { delaySource, figures } from './figures.ts';
import { type Draft, line, type Tested, type TestLine } from './testLine.ts';

/** Heads of the boxes that stay empty until somebody stands at the door. */
export const testColumns = ['Pass', 'Fail', 'Value', 'Initials'] as const;

/** Who did it and who saw it; written in by hand under the lines. */
export const testSigns = ['Tested by', 'Signature', 'Date', 'Witnessed by', 'Signature', 'Date'] as const;

/**
 * Why no test is written here, one sentence each; empty where one is. Somebody who signs “Pass” beside what a rule
 * forbids, or beside a door that holds people, has signed for it.
 */
export function noTestBecause({ simulated, decision }: Tested): readonly string[] {
  const rules = forbiddingRules(decision);
  return [
    ...(rules === '' ? [] : [`Refused by rule, chosen by a person: it was chosen by hand against ${rules}.`]),
    ...simulated.findings.filter((one) => one.severity === 'severe').map((one) => one.says),
  ];
}

/** The functional acceptance test of one opening: what is measured first, then one line for each condition. */
export function acceptanceTestOf(tested: Tested): readonly TestLine[] {
  if (noTestBecause(tested).length > 0) return [];
  const drafts = [...before(tested), ...inEveryCondition(tested), ...after(tested), ...asApproved(tested)];
  return drafts.map((draft, index) => ({ number: index + 1, ...draft }));
}

function asApproved({ conditions = [] }: Tested): readonly Draft[] {
  return conditions.map(({ says, from }) =>
    line(
      conditionOfApproval,
      `Check: ${/[.!?]$/.test(says) ? says : `${says}.`}`,
      'It is kept as the approval says.',
      from,
    ),
  );
}

/** Nobody is asked to confirm that people cannot leave: what is keyed from inside is tested while it is unlocked. */
function inEveryCondition({ simulated: { outcomes }, decision }: Tested): readonly Draft[] {
  return conditionIds.flatMap((id) => {
    const outcome: Outcome = outcomes[id];
    if (!outcome.applies || outcome.exit === 'blocked') return [];
    const { name, test } = condition(id);
    return [
      line(
        name,
        test,
        expectedInWords(outcome),
        outcome.exit === 'after' ? `${outcome.afterS} s: ${delaySource(decision.basis)}.` : '',
      ),
    ];
  });
}

function before({ simulated: { arrangement, setting } }: Tested): readonly Draft[] {
  const drafts: Draft[] = [];
  const wired = arrangement.failMode === 'safe' || arrangement.failMode === 'secure';
  if (arrangement.latch !== 'never') {
    drafts.push(
      line(
        'Closing and latching',
        'Release the leaf from 90 degrees and again from 6 in open.',
        'It closes and latches by itself both times.',
        figures.practice,
      ),
    );
  }
  if (setting.rated) {
    drafts.push(
      line(
        'Fire door',
        'Check labels, gaps and latch engagement.',
        'Labels are in place; engagement is at least what the label requires.',
        '',
        'in',
      ),
    );
  }
  if (!wired) return drafts;
  drafts.push(
    line(
      'Voltage at the device',
      'Measure at the lock while it is energized and every other load of the supply is on.',
      'Within 10 % of rated voltage.',
      figures.makers,
      'V',
    ),
    line(
      'Current',
      'Measure the current of the lock while energized.',
      'Within 10 % of the schedule.',
      figures.practice,
      'A',
    ),
  );
  if (device(arrangement.device).family === 'strike') {
    drafts.push(
      line('Release time', 'Time the keeper after a valid credential.', 'Within 0.5 s.', figures.guide, 's'),
    );
  }
  return drafts;
}

function after(tested: Tested): readonly Draft[] {
  const { arrangement, setting, outcomes } = tested.simulated;
  const drafts: Draft[] = [];
  const { holdsByMagnet } = device(arrangement.device);
  const free = arrangement.release === 'free' || arrangement.release === 'stairReentry';
  if (free && outcomes.batterySpent.exit === 'free') {
    drafts.push(
      line(
        'Egress without any power',
        'With lock supply and controller off, open by the lever or bar from inside.',
        'One motion opens the leaf.',
      ),
    );
  }
  if (arrangement.button === 'direct' && outcomes.buttonDeadController.exit === 'free') {
    drafts.push(
      line(
        'Exit button',
        'Press the button once and time the release.',
        'Released for at least 30 s.',
        figures.button(tested.decision.basis),
        's',
      ),
    );
  }
  if (outcomes.lockedHours.exit === 'after') drafts.push(delayTest(tested));
  if (arrangement.alarmCuts && outcomes.fireAlarm.applies && outcomes.fireAlarm.exit !== 'blocked') {
    drafts.push(
      line(
        'Time to release or latch on alarm',
        'Time from the alarm to the state above, then silence the alarm without resetting it.',
        'Within 10 s, and it stays until the alarm is reset.',
        figures.alarm,
        's',
      ),
    );
  }
  if (holdsByMagnet) {
    drafts.push(
      line(
        'Magnet',
        'Move the armature by hand, then release and open at once.',
        'The armature moves freely and no residual hold remains.',
      ),
    );
  }
  if (setting.operatorDrives) {
    drafts.push(
      line(
        'Operator',
        'Trigger the operator from outside while locked, then with a valid credential.',
        'It does not drive against a locked latch; it drives only after the release.',
      ),
    );
  }
  if (arrangement.failMode === 'safe' || arrangement.failMode === 'secure') {
    drafts.push(
      line(
        'Inputs',
        'Open and short each supervised input, and the tamper.',
        'Each is distinguished from normal.',
      ),
      line(
        'Records',
        'Check cable and supply labels, as-built drawings and battery dates.',
        'All are in place.',
      ),
    );
  }
  return drafts;
}
