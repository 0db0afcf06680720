import { accessCases } from './access/caseList.ts';
import { alarmCases } from './alarm/caseList.ts';
import { contradictionsCases } from './contradictions/caseList.ts';
import { doorsCases } from './doors/caseList.ts';
import { fireCases } from './fire/caseList.ts';
import { fitCases } from './fit/caseList.ts';
import { foundationsCases } from './foundations/caseList.ts';
import { healthCases } from './health/caseList.ts';
import { magnetsCases } from './magnets/caseList.ts';
import { needsCases } from './needs/caseList.ts';
import { panicCases } from './panic/caseList.ts';
import { roomsCases } from './rooms/caseList.ts';
import { specialCases } from './special/caseList.ts';
import { stairsCases } from './stairs/caseList.ts';
import { trapsCases } from './traps/caseList.ts';
import { usesCases } from './uses/caseList.ts';
import type { Rule, RuleCase } from './rule.ts';

/** The cases each rule is tested by, by its id. A program that only decides never loads them. */
const caseTable: Readonly<Record<string, readonly RuleCase[]>> = {
  ...accessCases,
  ...alarmCases,
  ...contradictionsCases,
  ...doorsCases,
  ...fireCases,
  ...fitCases,
  ...foundationsCases,
  ...healthCases,
  ...magnetsCases,
  ...needsCases,
  ...panicCases,
  ...roomsCases,
  ...specialCases,
  ...stairsCases,
  ...trapsCases,
  ...usesCases,
};

export function casesOf(rule: Rule): readonly RuleCase[] {
  return caseTable[rule.id] ?? [];
}

/** Ids that have cases, for the test that none has lost its rule. */
export const idsWithCases: readonly string[] = Object.keys(caseTable);
