import { allRules } from '../../src/domain/rules/all.ts';
import { families } from '../../src/domain/rules/rule.ts';
import { derivedKeys } from '../../src/domain/logic/derivedKeys.ts';
import { argumentsOf, refuse } from '../lib/arguments.mjs';
import { mutateClause, mutateDerived, type Tried } from './mutation.ts';

/**
 * Changes every rule in every small way and asks its own cases. `npx tsx scripts/proof/mutate.ts` prints the figures by
 * family and every survivor; `mutate.ts R-58` only the rules whose id begins so.
 */
const { words } = argumentsOf({ usage: 'npx tsx scripts/proof/mutate.ts [rule]', words: ['rule'] });
const wanted = words[0] ?? '';
const rules = allRules.filter((rule) => rule.id.startsWith(wanted));
if (rules.length === 0) refuse(`No rule has an id that begins with “${wanted}”.`);
const tried = rules.flatMap((rule) => rule.clauses.flatMap((clause) => mutateClause(rule, clause)));

const share = (part: number, whole: number) => (whole === 0 ? '–' : `${((100 * part) / whole).toFixed(1)} %`);
const count = (list: readonly Tried[], fate: Tried['fate']) => list.filter((one) => one.fate === fate).length;

console.log('| Family | Mutants | Same rule | Killed | Survived | Killed of those that differ |');
console.log('|---|---:|---:|---:|---:|---:|');
const row = (name: string, list: readonly Tried[]) => {
  const [killed, same, survived] = [count(list, 'killed'), count(list, 'same'), count(list, 'survived')];
  console.log(
    `| ${name} | ${list.length} | ${same} | ${killed} | ${survived} | ${share(killed, killed + survived)} |`,
  );
};
for (const [family, name] of Object.entries(families)) {
  row(
    name,
    tried.filter((one) => one.rule.family === family),
  );
}
for (const [kind, name] of [
  ['condition', 'conditions'],
  ['candidates', 'candidates spoken of'],
  ['items', 'parts required'],
  ['effect', 'effect, grade, trade, gravity, field'],
] as const) {
  row(
    name,
    tried.filter((one) => one.kind === kind),
  );
}
row('all', tried);

const derived = derivedKeys.flatMap((key) => mutateDerived(key));
const derivedFates = (fate: Tried['fate']) => derived.filter((one) => one.fate === fate);
console.log(
  `\nDerived facts, against their cases: ${derived.length} mutants, ${derivedFates('same').length} the same, ${derivedFates('killed').length} killed, ${derivedFates('survived').length} survived.`,
);
for (const [head, fate] of [
  ['Survivors', 'survived'],
  ['The same rule in other words', 'same'],
] as const) {
  console.log(`\n${head}:`);
  for (const one of tried) {
    if (one.fate === fate) console.log(`- ${one.rule.id}${one.clause.key ?? ''} (${one.kind}): ${one.says}`);
  }
  for (const { says } of derivedFates(fate)) console.log(`- ${says}`);
}
