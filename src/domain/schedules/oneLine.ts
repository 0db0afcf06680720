import type { Decision } from '../decide/decision.ts';
import { partsOf } from '../hardware/parts.ts';
import { candidateInWords } from '../words/arrangement.ts';
import type { ItemId } from '../devices/items.ts';
import { valueInWords } from '../text/format.ts';
import { midSentence } from '../text/midSentence.ts';
import { slotOf } from '../logic/slots.ts';
import { type FactKey, fieldInfo } from '../model/fields.ts';
import type { Arrangement } from '../arrangement/arrangement.ts';
import { simulate } from '../decide/whatHappens.ts';
import { onFireAlarm } from '../simulate/outcomeWords.ts';

/** What stands in the wire that feeds the lock, from supply to lock. */
export type StationId =
  | 'supply'
  | 'alarm'
  | 'command'
  | 'button'
  | 'hardwareSwitch'
  | 'relay'
  | 'frame'
  | 'hinges'
  | 'lock';
/** What tells the controller something. */
export type SignalId =
  | 'reader'
  | 'readerInside'
  | 'doorContact'
  | 'doorContactInactive'
  | 'requestToExit'
  | 'exitShunt'
  | 'exitSensor'
  | 'button'
  | 'hardwareSwitch';

export interface Station {
  readonly id: StationId;
  readonly name: string;
  /** What the wire carries or does here. */
  readonly says: string;
  /** A contact as it is while the door is locked and nobody acts; absent where nothing interrupts the wire. */
  readonly contact?: 'closed' | 'open';
}
export interface Signal {
  readonly id: SignalId;
  readonly name: string;
  readonly carries: string;
}

/** The wires of one opening as one line each: the lock circuit in its order, and what reports to the controller. */
export interface OneLine {
  readonly circuit: readonly Station[];
  readonly signals: readonly Signal[];
  /** What the fire alarm does here, in the words of the door schedule. */
  readonly onFireAlarm: string;
  /** Labels of facts that stand in it and nobody surveyed. */
  readonly notSurveyed: readonly string[];
}

/**
 * The same arrangement the conditions are run with, so what is drawn behaves as the table says. Undefined where nothing
 * is chosen, or what is chosen hangs on no wire.
 */
export function oneLineOf(decision: Decision): OneLine | undefined {
  const simulated = simulate(decision);
  if (!simulated) return undefined;
  const { arrangement, outcomes } = simulated;
  if (arrangement.failMode !== 'safe' && arrangement.failMode !== 'secure') return undefined;
  const candidate = decision.chosen?.candidate;
  if (!candidate) return undefined;
  const items = new Set<ItemId>(partsOf(decision).map(({ item }) => item));
  const missing: string[] = [];
  const said = (key: FactKey): string => {
    const value = decision.slots[slotOf(key)];
    if (value === undefined) {
      missing.push(midSentence(fieldInfo(key).label));
      return '';
    }
    return valueInWords(key, value);
  };
  const circuit: Station[] = [supply(decision, said)];
  const put = (id: StationId, name: string, says: string) => circuit.push({ id, name, says });
  const contact = (id: StationId, name: string, says: string, rest: Station['contact'] = 'closed') =>
    circuit.push({ id, name, says, contact: rest });
  if (arrangement.alarmCuts) {
    const name = items.has('doorDetector') ? 'Smoke detector at the door' : 'Contact of the fire alarm';
    contact('alarm', name, `opens on alarm${arrangement.flowCuts ? ', sprinkler flow or detection' : ''}`);
  }
  if (arrangement.commandCuts) contact('command', 'Release switch elsewhere', 'opens when operated');
  if (arrangement.button === 'direct')
    contact('button', 'Push button, egress side', 'opens for 30 s or more');
  if (arrangement.hardwareSwitch === 'direct')
    contact('hardwareSwitch', 'Switch in bar or lever', 'opens when pushed');
  contact(
    'relay',
    'Relay of the controller',
    arrangement.failMode === 'safe' ? 'opens to release' : 'closes to release',
    arrangement.failMode === 'safe' ? 'closed' : 'open',
  );
  put('frame', 'Cable to the frame', frameWay(items, said));
  if (items.has('powerTransfer')) put('hinges', 'Power transfer at the hinges', leafWay(items, said));
  put(
    'lock',
    candidateInWords(candidate),
    arrangement.failMode === 'safe' ? 'locked while current flows' : 'unlocked while current flows',
  );
  return {
    circuit,
    signals: signals(decision, arrangement, items),
    onFireAlarm: onFireAlarm(arrangement, outcomes),
    notSurveyed: missing,
  };
}

type Said = (key: FactKey) => string;

function supply(decision: Decision, said: Said): Station {
  const source = decision.slots[slotOf('lockPowerSource')];
  const names: Readonly<Record<string, string>> = {
    fireAlarmPanel: 'Lock output of the fire alarm panel',
    poe: 'Power over Ethernet',
    other: 'Lock power, source not named',
  };
  const volts = said('supplyVolts');
  const run = said('distanceToSupplyFt');
  const parts = [volts, run === '' ? '' : `${run} one way`].filter((part) => part !== '');
  return {
    id: 'supply',
    name: names[String(source)] ?? 'Lock power supply, battery',
    says: parts.length > 0 ? parts.join(', ') : 'lock power',
  };
}

function frameWay(items: ReadonlySet<ItemId>, said: Said): string {
  if (items.has('frameRaceway')) return 'new raceway or conduit';
  const conduit = said('frameConduit');
  return conduit === 'yes'
    ? 'in the conduit of the frame'
    : conduit === 'no'
      ? 'without conduit'
      : 'lock power';
}

function leafWay(items: ReadonlySet<ItemId>, said: Said): string {
  if (items.has('leafRaceway')) return 'new raceway in the leaf';
  const way = said('leafRaceway');
  return way === 'yes'
    ? 'on in the raceway of the leaf'
    : way === 'no'
      ? 'no raceway in the leaf'
      : 'lock power';
}

function signals(
  decision: Decision,
  arrangement: Arrangement,
  items: ReadonlySet<ItemId>,
): readonly Signal[] {
  const found: Signal[] = [];
  const signal = (id: SignalId, name: string, carries: string) => found.push({ id, name, carries });
  if (items.has('reader')) signal('reader', 'Reader, secure side', 'credential to enter');
  if (items.has('readerInside')) {
    const out = decision.slots[slotOf('readerSides')] === 'both';
    signal('readerInside', 'Reader, egress side', out ? 'credential to leave' : 'records who leaves');
  }
  if (items.has('doorPosition')) signal('doorContact', 'Door contact', 'open or shut');
  if (items.has('doorPositionInactive'))
    signal('doorContactInactive', 'Door contact, inactive leaf', 'open or shut');
  if (items.has('requestToExit'))
    signal('requestToExit', 'Request to exit, in the hardware', 'someone leaves: no alarm');
  if (items.has('exitShuntSensor'))
    signal(
      'exitShunt',
      'Request-to-exit motion detector, egress side',
      'someone leaves: no alarm, no release',
    );
  if (arrangement.sensor !== 'none') {
    const fails = arrangement.sensor === 'failsOpen' ? '; its loss releases too' : '';
    signal('exitSensor', 'Exit sensor, egress side', `somebody comes: release${fails}`);
  }
  if (arrangement.button === 'asksController')
    signal('button', 'Push button, egress side', 'asks for release');
  if (arrangement.hardwareSwitch === 'asksController')
    signal('hardwareSwitch', 'Switch in bar or lever', 'asks for release');
  return found;
}
