import { accessRules } from './access/list.ts';
import { alarmRules } from './alarm/list.ts';
import { contradictionsRules } from './contradictions/list.ts';
import { doorsRules } from './doors/list.ts';
import { fireRules } from './fire/list.ts';
import { fitRules } from './fit/list.ts';
import { foundationsRules } from './foundations/list.ts';
import { healthRules } from './health/list.ts';
import { magnetsRules } from './magnets/list.ts';
import { needsRules } from './needs/list.ts';
import { panicRules } from './panic/list.ts';
import { roomsRules } from './rooms/list.ts';
import { specialRules } from './special/list.ts';
import { stairsRules } from './stairs/list.ts';
import { trapsRules } from './traps/list.ts';
import { usesRules } from './uses/list.ts';
import type { Rule } from './rule.ts';

/** Every rule of the book, family by family. The order changes no decision. */
export const allRules: readonly Rule[] = [
  ...foundationsRules,
  ...magnetsRules,
  ...fireRules,
  ...stairsRules,
  ...panicRules,
  ...specialRules,
  ...roomsRules,
  ...alarmRules,
  ...healthRules,
  ...doorsRules,
  ...usesRules,
  ...accessRules,
  ...fitRules,
  ...trapsRules,
  ...needsRules,
  ...contradictionsRules,
];

export const ruleById: ReadonlyMap<string, Rule> = new Map(allRules.map((rule) => [rule.id, rule]));
