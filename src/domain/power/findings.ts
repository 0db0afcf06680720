import type { Project } from '../model/project.ts';
import type { Severity } from '../simulate/outcome.ts';
import { doorFindings } from './doorFindings.ts';
import type { PowerPlan } from './powerPlan.ts';
import { supplyFindings } from './supplyFindings.ts';

export type PowerFindingKind =
  | 'overload'
  | 'peak'
  | 'outputs'
  | 'class2'
  | 'wrongVolts'
  | 'acDc'
  | 'ownSupply'
  | 'fireAlarmPanel'
  | 'shortBattery'
  | 'notOnBattery'
  | 'noLinePower'
  | 'drop'
  | 'onBattery'
  | 'thinWires'
  | 'readerRun'
  | 'suppressor'
  | 'poe'
  | 'gone'
  | 'notCounted'
  | 'lengthUnknown';

export interface PowerFinding {
  readonly kind: PowerFindingKind;
  readonly severity: Severity;
  readonly says: string;
  /** Where the limit comes from: edition and section, or what kind of source. */
  readonly source: string;
  readonly openingIds: readonly string[];
  readonly supplyId: string | null;
  readonly closetId: string | null;
}

const order: readonly Severity[] = ['severe', 'serious', 'note'];

/** Everything that is wrong with the power, the worst first; each with the limit it is held against and its source. */
export function powerFindings(project: Project, plan: PowerPlan): readonly PowerFinding[] {
  const found = [...plan.supplies.flatMap((state) => supplyFindings(project, state)), ...doorFindings(plan)];
  return found.toSorted((a, b) => order.indexOf(a.severity) - order.indexOf(b.severity));
}
