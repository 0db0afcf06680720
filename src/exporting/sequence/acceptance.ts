import { device } from '../../domain/devices/devices.ts';
import { condition, conditionIds } from '../../domain/simulate/conditions.ts';
import type { Simulated } from '../../domain/simulate/simulate.ts';
import { expectedInWords } from '../../domain/simulate/outcomeWords.ts';

/** One line of the test: what to do, what must happen; result, value and initials are written in by hand. */
export interface TestLine {
  readonly number: number;
  readonly about: string;
  readonly act: string;
  readonly expect: string;
  /** What is measured, where something is; the unit stands in the box. */
  readonly value: string;
}
/** Heads of the boxes that stay empty until somebody stands at the door. */
export const testColumns = ['Pass', 'Fail', 'Value', 'Initials'] as const;

/** Who did it and who saw it; written in by hand under the lines. */
export const testSigns = ['Tested by', 'Signature', 'Date', 'Witnessed by', 'Signature', 'Date'] as const;

type Draft = Omit<TestLine, 'number'>;
const line = (about: string, act: string, expect: string, value = ''): Draft => ({
  about,
  act,
  expect,
  value,
});

/** The functional acceptance test of one opening: what is measured first, then one line for each condition. */
export function acceptanceTestOf(simulated: Simulated): readonly TestLine[] {
  const drafts = [...before(simulated), ...inEveryCondition(simulated), ...after(simulated)];
  return drafts.map((draft, index) => ({ number: index + 1, ...draft }));
}

function inEveryCondition({ outcomes }: Simulated): readonly Draft[] {
  return conditionIds.flatMap((id) => {
    const outcome = outcomes[id];
    if (!outcome.applies) return [];
    const { name, test } = condition(id);
    return [line(name, test, expectedInWords(outcome))];
  });
}

function before({ arrangement, setting }: Simulated): readonly Draft[] {
  const drafts: Draft[] = [];
  const wired = arrangement.failMode === 'safe' || arrangement.failMode === 'secure';
  if (arrangement.latch !== 'never') {
    drafts.push(
      line(
        'Closing and latching',
        'Let the leaf go at 90 degrees and again 6 in before the frame.',
        'It closes and latches by itself both times.',
      ),
    );
  }
  if (setting.rated) {
    drafts.push(
      line(
        'Fire door',
        'Look at labels, gaps and the reach of the latch into its strike.',
        'Labels are there; the reach is what the label asks or more.',
        'in',
      ),
    );
  }
  if (!wired) return drafts;
  drafts.push(
    line(
      'Volts at the device',
      'Measure at the lock while it is energised and every other load of the supply is on.',
      'Within 10 % of the rated volts.',
      'V',
    ),
    line('Current', 'Measure the current of the lock while energised.', 'Within 10 % of the schedule.', 'A'),
  );
  if (device(arrangement.device).family === 'strike') {
    drafts.push(
      line('Release time', 'Time the keeper after a valid credential.', 'Half a second or less.', 's'),
    );
  }
  return drafts;
}

function after({ arrangement, setting, outcomes }: Simulated): readonly Draft[] {
  const drafts: Draft[] = [];
  const { family } = device(arrangement.device);
  if (arrangement.release === 'free' || arrangement.release === 'stairReentry') {
    drafts.push(
      line(
        'Way out without any power',
        'With lock supply and controller off, open by the lever or bar from inside.',
        'One motion opens the leaf.',
      ),
    );
  }
  if (arrangement.button === 'direct') {
    drafts.push(
      line('Exit button', 'Press the button once and time the release.', 'Released for at least 30 s.', 's'),
    );
  }
  if (arrangement.release === 'delayed') {
    drafts.push(
      line(
        'Short push',
        'Push for one second and let go.',
        'The delay does not start; the door stays locked.',
      ),
      line(
        'Delay',
        'Push until the alarm sounds, let go, and time the release.',
        `Nothing stops it; it opens after ${arrangement.delayS} s, and only a hand arms it again.`,
        's',
      ),
    );
  }
  if (arrangement.alarmCuts && outcomes.fireAlarm.applies) {
    drafts.push(
      line(
        'Time to release or latch on alarm',
        'Time from the alarm to the state above, then silence the alarm without resetting it.',
        'Ten seconds or less, and it stays until the alarm is reset.',
        's',
      ),
    );
  }
  if (family === 'magnet' || arrangement.device === 'delayedMagnet') {
    drafts.push(
      line(
        'Magnet',
        'Move the armature by hand, then release and open at once.',
        'The armature moves freely and nothing of the hold remains.',
      ),
    );
  }
  if (setting.operatorDrives) {
    drafts.push(
      line(
        'Operator',
        'Work the operator from outside while locked, then with a valid credential.',
        'It does not drive against a locked latch; it drives only after the release.',
      ),
    );
  }
  if (arrangement.failMode === 'safe' || arrangement.failMode === 'secure') {
    drafts.push(
      line(
        'Inputs',
        'Open and short each supervised input, and the tamper.',
        'Each is told apart from normal.',
      ),
      line(
        'Records',
        'Look at cable and supply labels, as-built drawing and dates on batteries.',
        'All are there.',
      ),
    );
  }
  return drafts;
}
