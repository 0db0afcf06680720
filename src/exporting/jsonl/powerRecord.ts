import type { Decision } from '../../domain/decide/decision.ts';
import type { Project } from '../../domain/model/project.ts';
import { cableType } from '../../domain/power/cables.ts';
import { thickestGauge } from '../../domain/power/drop.ts';
import { powerFindings } from '../../domain/power/findings.ts';
import { type FedOpening, type PowerPlan, powerPlan } from '../../domain/power/powerPlan.ts';
import type { SupplyState } from '../../domain/power/supplyState.ts';
import { takeoffOf } from '../../domain/power/takeoff.ts';
import type { OpeningPowerRecord, PowerRecords, SupplyRecord, TakeoffRecord } from './schema.ts';

/** Thousandths: finer than any meter, and the same on every machine. */
const figure = (value: number) => Math.round(value * 1000) / 1000;
const orNull = (value: number | undefined | null) =>
  value === undefined || value === null ? null : figure(value);

/** Loads, runs, supplies and takeoff for another program. */
export function powerRecords(project: Project, decisions: ReadonlyMap<string, Decision>): PowerRecords {
  const plan = powerPlan(project, decisions);
  return {
    openings: plan.openings.map((one) => openingRecord(project, one)),
    supplies: plan.supplies.map((state) => supplyRecord(project, state)),
    takeoff: takeoffRecords(plan),
    findings: powerFindings(project, plan).map(({ severity, kind, says, source, openingIds, supplyId }) => ({
      severity,
      kind,
      says,
      source,
      openings: openingIds.map((id) => project.openings[id]?.mark ?? id),
      supply: supplyId === null ? null : (project.supplies[supplyId]?.name ?? null),
    })),
  };
}

function openingRecord(project: Project, { demand, placing, sizing }: FedOpening): OpeningPowerRecord {
  const lockGauge = sizing?.gauge ?? thickestGauge;
  return {
    mark: demand.mark,
    volts: demand.volts,
    source: demand.source,
    closet: placing.closetId === null ? null : (project.closets[placing.closetId]?.name ?? null),
    supply: placing.supplyId === null ? null : (project.supplies[placing.supplyId]?.name ?? null),
    loads: demand.loads.map(({ of, count, when, rating }) => ({
      class: of,
      count,
      when,
      steadyA: orNull(rating?.steadyA),
      peakA: orNull(rating?.peakA),
      from: rating?.source ?? null,
    })),
    standingA: figure(demand.standingA),
    releaseA: figure(demand.releaseA),
    run: {
      feet: placing.feet,
      from: placing.from,
      cables: demand.cables.map(({ use, count }) => ({ use, type: cableType(use, lockGauge), count })),
      awg: sizing?.gauge ?? null,
      mm2: sizing?.metric ?? null,
      dropV: orNull(sizing?.at.dropV),
      atLockV: orNull(sizing?.at.steadyV),
      atStartV: orNull(sizing?.at.peakV),
      endOfBatteryV: orNull(sizing?.at.batteryV),
      mustWorkAtV: sizing?.mustWorkAtV ?? null,
    },
    transferConductors: demand.transfer?.conductors ?? null,
  };
}

function supplyRecord(project: Project, state: SupplyState): SupplyRecord {
  const { supply, battery } = state;
  return {
    name: supply.name,
    closet: supply.closetId === null ? null : (project.closets[supply.closetId]?.name ?? null),
    volts: supply.volts,
    amps: supply.amps,
    class2: supply.class2,
    continuousA: figure(state.continuousA),
    peakA: figure(state.peakA),
    usableA: figure(state.usableA),
    outputs: supply.outputs,
    outputsUsed: state.outputsUsed,
    batteryAh: supply.batteryAh,
    neededAh: orNull(battery.sized?.needed),
    nextAh: battery.next?.ok ? battery.next.size : null,
    runtimeH: orNull(battery.runtimeH),
    openings: state.demands.map(({ mark }) => mark),
  };
}

function takeoffRecords(plan: PowerPlan): readonly TakeoffRecord[] {
  return takeoffOf(plan).articles.map(({ kind, article, quantity, unit, boxes, by }) => ({
    kind,
    item: article,
    quantity: figure(quantity),
    unit,
    boxes,
    ...by,
  }));
}
