import { supplyShare } from '../electrical/supply.ts';
import type { Project } from '../model/project.ts';
import { onOutput, outputLimit } from './box.ts';
import { amps, ampHours, hours, percent, someMarks, volts } from './figures.ts';
import type { PowerFinding, PowerFindingKind } from './findings.ts';
import type { SupplyState } from './supplyState.ts';

const sources = {
  share: 'common practice: 75 to 80 % of the rating',
  class2: 'NEC chapter 9, Tables 11(A) and 11(B)',
  peak: 'common practice: one start on top of the load; no source',
  panel:
    'commentary on NFPA 72: doors are not held locked from the panel’s battery unless they unlock within 10 min of losing line power',
  dc: 'magnet maker’s instructions: filtered, regulated DC',
  battery: 'hours as stated for the building; factors from general knowledge',
  volts: 'maker’s wire guide: a device works within 10 % of its rated volts',
} as const;

/** What is wrong at one supply, and with what hangs on it. */
export function supplyFindings(project: Project, state: SupplyState): readonly PowerFinding[] {
  const { supply, demands } = state;
  const found: PowerFinding[] = [];
  const where = supply.closetId === null ? undefined : project.closets[supply.closetId];
  const tell = (
    kind: PowerFindingKind,
    severity: PowerFinding['severity'],
    says: string,
    source: string,
    openingIds: readonly string[] = demands.map(({ id }) => id),
  ) =>
    found.push({
      kind,
      severity,
      says: `${supply.name}: ${says}`,
      source,
      openingIds,
      supplyId: supply.id,
      closetId: supply.closetId,
    });
  if (supply.closetId !== null && !where)
    tell(
      'gone',
      'serious',
      demands.length === 0
        ? 'its closet is no longer in the project. Assign it to another.'
        : `its closet is no longer in the project, and it still feeds ${marksOf(state)}. Assign it to another closet; nothing that hangs on it was dropped.`,
      'project',
    );
  if (demands.length === 0) return found;
  if (state.continuousA > state.usableA + 1e-9)
    tell(
      'overload',
      'serious',
      `${amps(state.continuousA)} on a ${amps(supply.amps)} supply is more than the ${amps(state.usableA)} that ${percent(supplyShare)} of it allows.`,
      sources.share,
    );
  const most = supply.peakAmps ?? supply.amps;
  if (state.peakA > most + 1e-9)
    tell(
      'peak',
      'serious',
      `the largest start brings it to ${amps(state.peakA)}, above its ${supply.peakAmps === null ? 'rating' : 'peak rating'} of ${amps(most)}.`,
      sources.peak,
    );
  if (state.outputsUsed > supply.outputs)
    tell(
      'outputs',
      'serious',
      `${state.outputsUsed} outputs are needed, one for each lock and one for each controller, and it has ${supply.outputs}.`,
      'as entered for the supply',
    );
  const limit = outputLimit(supply);
  if (limit) {
    for (const demand of demands) {
      const { steadyA, peakA } = onOutput(demand);
      if (steadyA <= limit.steadyA + 1e-9 && peakA <= limit.peakA + 1e-9) continue;
      const [what, has, most] =
        peakA > limit.peakA + 1e-9 ? ['starts at', peakA, limit.peakA] : ['draws', steadyA, limit.steadyA];
      tell(
        'class2',
        'serious',
        `${demand.mark} ${what} ${amps(has)}, and a Class 2 output at these volts stays below ${amps(most)}.`,
        sources.class2,
        [demand.id],
      );
    }
  }
  const alone = demands.filter((one) => one.ownSupply);
  if (alone.length > 0 && demands.length > 1)
    tell(
      'ownSupply',
      'serious',
      `${someMarks(alone.map(({ mark }) => mark))} needs a supply of its own close to the door: solenoid latch retraction starts at 12 to 16 A.`,
      'rule T-06',
      alone.map(({ id }) => id),
    );
  const other = demands.filter((one) => one.volts !== null && one.volts !== supply.volts);
  if (other.length > 0)
    tell(
      'wrongVolts',
      'serious',
      `it gives ${volts(supply.volts)}, and ${other.map(({ mark, volts: rated }) => `${mark} is ${rated} V`).join(', ')}.`,
      sources.volts,
      other.map(({ id }) => id),
    );
  const mismatch = demands.filter(({ loads }) =>
    loads.some(({ rating }) => rating !== undefined && rating.current !== supply.current),
  );
  if (mismatch.length > 0)
    tell(
      'acDc',
      'serious',
      `it gives ${supply.current.toUpperCase()}, and ${someMarks(mismatch.map(({ mark }) => mark))} needs ${supply.current === 'dc' ? 'AC' : 'DC'}.`,
      sources.dc,
      mismatch.map(({ id }) => id),
    );
  if (supply.fedBy === 'fireAlarmPanel')
    tell(
      'fireAlarmPanel',
      'serious',
      'it is fed by the fire alarm panel. Give the locks a listed access-control supply, or have the fire-alarm contractor show that they unlock within 10 min of losing line power.',
      sources.panel,
    );
  if (where?.linePower === false)
    tell('noLinePower', 'serious', `there is no branch circuit in ${where.name}.`, 'survey of the closet');
  tellBattery(state, tell);
  return found;
}

type Tell = (
  kind: PowerFindingKind,
  severity: PowerFinding['severity'],
  says: string,
  source: string,
  openingIds?: readonly string[],
) => void;

function tellBattery({ supply, demands, battery }: SupplyState, tell: Tell): void {
  if (battery.hours === null || battery.hours <= 0) return;
  const safe = demands.filter((one) => one.failSafe);
  if (supply.batteryAh === 0) {
    if (safe.length > 0)
      tell(
        'notOnBattery',
        'serious',
        `it has no battery, so ${someMarks(safe.map(({ mark }) => mark))} unlock as soon as line power is lost, and ${hours(battery.hours)} of standby are asked for.`,
        sources.battery,
        safe.map(({ id }) => id),
      );
    else if (battery.sized)
      tell(
        'shortBattery',
        'serious',
        `it has no battery, and ${hours(battery.hours)} of standby are asked for: ${ampHours(battery.sized.needed)}. Readers and controllers stop with line power.`,
        sources.battery,
      );
    return;
  }
  if (!battery.sized || supply.batteryAh === null) return;
  if (supply.batteryAh >= battery.sized.needed - 1e-9) return;
  const lasts = battery.runtimeH === null ? '' : ` It lasts about ${hours(battery.runtimeH)}.`;
  const next = battery.next?.ok ? `the next size is ${ampHours(battery.next.size)}` : 'divide the load';
  tell(
    'shortBattery',
    'serious',
    `its ${ampHours(supply.batteryAh)} battery is short: ${amps(battery.currentA)} for ${hours(battery.hours)} needs ${ampHours(battery.sized.needed)}; ${next}.${lasts}`,
    sources.battery,
  );
}

function marksOf({ demands }: SupplyState): string {
  return someMarks(demands.map(({ mark }) => mark));
}
