import { limitEntry } from '../../domain/codes/limits.ts';
import { valueIn } from '../../domain/logic/slots.ts';
import { delaySource } from './figures.ts';
import { type Draft, line, type Tested } from './testLine.ts';

/**
 * The delay is tested by the effort the adopted text names and by nothing shorter or longer: whether a shorter push
 * starts it is open, and a technician who sets it to ignore one may take it out of the code.
 */
export function delayTest({ simulated: { arrangement }, decision }: Tested): Draft {
  const adopted = valueIn(decision.slots, 'delayStartS');
  const time = adopted === undefined ? 'the time that the adopted text names' : `${adopted} s`;
  return line(
    'Delay',
    `Push the hardware with 15 lbf for no longer than ${time}, let go, and time the release.`,
    `The alarm sounds during the push. Nothing stops the delay. It opens ${arrangement.delayS} s after it started, and it is rearmed by hand only.`,
    `${timeSource(decision, adopted)} 15 lbf: older model text; newer text names no force. ${arrangement.delayS} s: ${delaySource(decision.basis)}.`,
    's',
  );
}

function timeSource({ basis }: Tested['decision'], adopted: number | undefined): string {
  if (adopted !== undefined) return `${adopted} s: adopted text, as the project states it.`;
  const { value } = limitEntry(basis.ibc === null ? 'delayStartNfpa' : 'delayStartIbc', basis, 'delay test');
  return `Push: the adopted time is not stated in this project. The model text names ${value} s, from memory; some adopted texts name 1 s. Ask before testing.`;
}
