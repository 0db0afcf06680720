import { expect, test } from 'vitest';
import { demoProject } from '../../../scripts/demo/demoProject.ts';
import { decide } from '../decide/decide.ts';
import { candidates } from '../devices/candidates.ts';
import { unknown } from '../testing/facts.ts';
import type { FactValues } from '../model/fields.ts';
import type { Arrangement } from '../arrangement/arrangement.ts';
import { arrange } from '../decide/whatHappens.ts';
import { circuitAt } from '../simulate/circuit.ts';
import { conditions, type Situation } from '../simulate/conditions.ts';
import { type OneLine, oneLineOf } from './oneLine.ts';
import { pointToPoint } from './pointToPoint.ts';

const demo = demoProject();
const openings = Object.values(demo.openings);
/** Every opening of the demo as decided, and with each arrangement put in by hand: what is lawful and what is not. */
const decided = openings.flatMap((opening, index) => {
  const byHand = candidates
    .filter((_one, at) => at % 9 === index % 9)
    .map((candidate) =>
      decide(demo, { ...opening, override: { candidate: candidate.id, reason: '', by: '', at: '' } }),
    );
  return [decide(demo, opening), ...byHand];
});
const drawn = () =>
  decided.flatMap((decision) => {
    const line = oneLineOf(decision);
    const arrangement = arrange(decision)?.arrangement;
    return line && arrangement ? [{ line, arrangement, decision }] : [];
  });

/** Reads the drawing as an electrician does: current flows while every contact in the wire is closed. */
function lockedByDrawing(
  { circuit, signals }: OneLine,
  { failMode, ...told }: Arrangement,
  at: Situation,
  person: boolean,
) {
  const has = (id: OneLine['signals'][number]['id']) => signals.some((signal) => signal.id === id);
  const asked =
    (at.unlockedHours && told.scheduled) ||
    (at.credential && has('reader')) ||
    (person && (has('exitSensor') || has('button') || has('hardwareSwitch')));
  const worked: Readonly<Record<string, boolean>> = {
    alarm: at.fireAlarm,
    command: at.command,
    button: person,
    hardwareSwitch: person,
    relay: asked,
  };
  const flows = circuit.every(
    ({ id, contact }) => contact === undefined || (contact === 'closed') !== (worked[id] ?? false),
  );
  return failMode === 'safe' ? flows : !flows;
}

test('what is drawn behaves as the circuit that the conditions are run with', () => {
  const lines = drawn();
  expect(lines.length).toBeGreaterThan(300);
  expect(new Set(lines.map(({ arrangement }) => arrangement.release)).size).toBeGreaterThan(5);
  const quiet = conditions.lockedHours.situation;
  const situations: Situation[] = [
    quiet,
    { ...quiet, credential: true },
    { ...quiet, unlockedHours: true },
    { ...quiet, fireAlarm: true },
    { ...quiet, command: true },
  ];
  const differ = lines.flatMap(({ line, arrangement, decision }) =>
    situations.flatMap((at) =>
      [false, true]
        .filter((person) => {
          const seen = lockedByDrawing(line, arrangement, at, person);
          return seen !== circuitAt(arrangement, at, person).locked;
        })
        .map((person) => [decision.chosen?.candidate.id, person, JSON.stringify(at)]),
    ),
  );
  expect(differ).toEqual([]);
});

test('the circuit begins at the supply and ends at the lock, with the relay between, and nothing twice', () => {
  for (const { line } of drawn()) {
    const ids = line.circuit.map(({ id }) => id);
    expect(ids.at(0)).toBe('supply');
    expect(ids.at(-1)).toBe('lock');
    expect(ids).toContain('relay');
    expect(new Set(ids).size).toBe(ids.length);
  }
});

test('nothing is drawn where nothing is chosen or nothing is wired', () => {
  for (const opening of openings) {
    const decision = decide(demo, opening);
    // An operator feeds its own lock, so no wire of the lock is drawn there.
    const chosen = decision.chosen?.candidate;
    const fed = chosen?.device.wired === true && chosen.failMode !== 'asIs';
    expect(oneLineOf(decision) !== undefined).toBe(fed);
  }
});

test('what was surveyed stands at its wire, what nobody surveyed is named and nothing is made up', () => {
  const found = openings.find((one) => one.mark === '103');
  if (!found) throw new Error('The demo has no opening 103.');
  const known = (facts: FactValues) =>
    oneLineOf(
      decide(demo, {
        ...found,
        facts: {
          ...found.facts,
          supplyVolts: unknown,
          distanceToSupplyFt: unknown,
          frameConduit: unknown,
          ...Object.fromEntries(Object.entries(facts).map(([key, value]) => [key, { is: 'known', value }])),
        },
      }),
    );
  const bare = known({});
  expect(bare?.circuit[0]).toMatchObject({ id: 'supply', says: 'lock power' });
  expect(bare?.notSurveyed).toEqual(['lock supply', 'cable run to supply', 'conduit in frame']);
  const full = known({ supplyVolts: '24', distanceToSupplyFt: 120, frameConduit: true });
  expect(full?.circuit[0]?.says).toBe('24 V DC, 120 ft one way');
  expect(full?.circuit.find(({ id }) => id === 'frame')?.says).toBe('in the conduit of the frame');
  expect(full?.notSurveyed).toEqual([]);
  const source = (lockPowerSource: string) => known({ lockPowerSource } as FactValues)?.circuit[0]?.name;
  expect(['dedicated', 'fireAlarmPanel', 'poe', 'other'].map(source)).toEqual([
    'Lock power supply, battery',
    'Lock output of the fire alarm panel',
    'Power over Ethernet',
    'Lock power, source not named',
  ]);
});

test('conductors of unlike sizes are listed with the thinnest first', () => {
  const decision = decided.find((one) => oneLineOf(one) !== undefined);
  const named = decision && pointToPoint(decision, [14, 18, 14])?.groups.map(({ name }) => name);
  expect(named?.[1]).toBe('Lock power: 18, 14 AWG, 2 conductors');
});

test('what is drawn is said in these words, each of them somewhere', () => {
  const words = drawn().flatMap(({ line: { circuit, signals } }) => [
    ...circuit
      .filter(({ id }) => id !== 'supply' && id !== 'lock')
      .map(({ id, name, says, contact = 'through' }) => `${id}: ${name}, ${says} (${contact})`),
    ...signals.map(({ id, name, carries }) => `${id}: ${name}, ${carries}`),
  ]);
  expect([...new Set(words)].toSorted()).toEqual([
    'alarm: Contact of the fire alarm, opens on alarm, sprinkler flow or detection (closed)',
    'button: Push button, egress side, asks for release',
    'button: Push button, egress side, opens for 30 s or more (closed)',
    'command: Release switch elsewhere, opens when operated (closed)',
    'doorContact: Door contact, open or shut',
    'doorContactInactive: Door contact, inactive leaf, open or shut',
    'exitSensor: Exit sensor, egress side, somebody comes: release; its loss releases too',
    'exitShunt: Request-to-exit motion detector, egress side, someone leaves: no alarm, no release',
    'frame: Cable to the frame, in the conduit of the frame (through)',
    'frame: Cable to the frame, lock power (through)',
    'frame: Cable to the frame, new raceway or conduit (through)',
    'frame: Cable to the frame, without conduit (through)',
    'hardwareSwitch: Switch in bar or lever, asks for release',
    'hardwareSwitch: Switch in bar or lever, opens when pushed (closed)',
    'hinges: Power transfer at the hinges, lock power (through)',
    'hinges: Power transfer at the hinges, new raceway in the leaf (through)',
    'hinges: Power transfer at the hinges, no raceway in the leaf (through)',
    'hinges: Power transfer at the hinges, on in the raceway of the leaf (through)',
    'reader: Reader, secure side, credential to enter',
    'readerInside: Reader, egress side, records who leaves',
    'relay: Relay of the controller, closes to release (open)',
    'relay: Relay of the controller, opens to release (closed)',
    'requestToExit: Request to exit, in the hardware, someone leaves: no alarm',
  ]);
});
