import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { argumentsOf } from '../lib/arguments.mjs';

/**
 * Hand-picked slips in the engine itself, put one after the other into a copy of the source; each must make a test
 * fail. `npx tsx scripts/proof/sourceMutants.ts`. Takes some minutes.
 */
interface Slip {
  readonly file: string;
  readonly says: string;
  readonly from: string;
  readonly to: string;
}
argumentsOf({ usage: 'npx tsx scripts/proof/sourceMutants.ts' });
const decide = 'src/domain/decide/';
const slips: readonly Slip[] = [
  {
    file: `${decide}judge.ts`,
    says: 'a prohibition in doubt is forgotten',
    from: 'include(doubted, ready.speaksOf);',
    to: '',
  },
  {
    file: `${decide}judge.ts`,
    says: 'a sure prohibition is only a doubt',
    from: 'include(rejected, ready.speaksOf);',
    to: 'include(doubted, ready.speaksOf);',
  },
  {
    file: `${decide}judge.ts`,
    says: 'what does not go into the door is let through',
    from: 'include(rejected, impossible);',
    to: '',
  },
  {
    file: `${decide}judge.ts`,
    says: 'an unusual pairing is no doubt',
    from: 'include(fitDoubted, ready.doubtful);',
    to: '',
  },
  {
    file: `${decide}judge.ts`,
    says: 'rated door: unlabeled devices pass',
    from: 'if (rated === true) include(impossible, notOnRated);',
    to: '',
  },
  {
    file: `${decide}steps.ts`,
    says: 'steps that wait for a fact are dropped',
    from: "else if (ready.clause.effect !== 'finding') depends.add(ready.unknown);",
    to: '',
  },
  {
    file: `${decide}steps.ts`,
    says: 'a warning refuses',
    from: "clause.severity === 'refuse'",
    to: "clause.severity !== 'refuse'",
  },
  {
    file: `${decide}steps.ts`,
    says: 'what is asked of the choice alone is not heard',
    from: 'if (aboutLeader) hear',
    to: 'if (false as boolean) hear',
  },
  {
    file: `${decide}decide.ts`,
    says: 'a referred opening is settled',
    from: "if (steps.refers.length > 0) return 'referred';",
    to: '',
  },
  {
    file: `${decide}decide.ts`,
    says: 'doubt about the leader is settled',
    from: 'return !isFree(judgment, first) || ',
    to: 'return ',
  },
  {
    file: `${decide}decide.ts`,
    says: 'what is not yet known to be asked for is settled',
    from: 'awaited(steps).length > 0 || ',
    to: '',
  },
  {
    file: `${decide}decide.ts`,
    says: 'a choice that may lose its place is settled',
    from: " || mayLosePlace() ? 'open'",
    to: " ? 'open'",
  },
  {
    file: `${decide}decide.ts`,
    says: 'an unlawful release may lead on a chance',
    from: 'if (inDoubt && has(neverLeadsOpen, index)) continue;',
    to: '',
  },
  {
    file: `${decide}decide.ts`,
    says: 'a refused opening still recommends',
    from: "state !== 'refused' && ",
    to: '',
  },
  {
    file: `${decide}clauseIndex.ts`,
    says: 'what hangs on an unknown fact is sure',
    from: 'sure[word] = bits & ~(doubtful[word] as number);',
    to: 'sure[word] = bits;',
  },
  {
    file: `${decide}clauseIndex.ts`,
    says: 'a further alternative in doubt makes its clause sure',
    from: 'if (inDoubt === 0) addClause',
    to: 'addClause',
  },
  {
    file: `${decide}clauseIndex.ts`,
    says: 'a number on its bound counts as above it',
    from: 'value > (bounds[at] as number)',
    to: 'value >= (bounds[at] as number)',
  },
  {
    file: 'src/domain/logic/terms.ts',
    says: 'alternatives about one fact must all hold',
    from: 'merge(single, term, any)',
    to: 'merge(single, term, all)',
  },
  {
    file: 'src/domain/logic/terms.ts',
    says: '“not” is lost where alternatives are multiplied out',
    from: 'return termsOf(condition.of, basis, !holds);',
    to: 'return termsOf(condition.of, basis, holds);',
  },
  {
    file: `${decide}totals.ts`,
    says: 'a ranking is remembered without its appearance',
    from: 'branchBelow(branch, facts[',
    to: "branchBelow(branch, keyParts[part] === 'appearance' || facts[",
  },
  {
    file: `${decide}totals.ts`,
    says: 'a ranking is remembered without its row of the fit table',
    from: 'branch.get(row) as Totals',
    to: '[...branch.values()][0] as Totals',
  },
  {
    file: `${decide}factView.ts`,
    says: 'an answer “not known” is passed over',
    from: "slots[slot] = fact.is === 'unknown' ? undefined : fact.value;",
    to: "if (fact.is !== 'unknown') slots[slot] = fact.value;",
  },
  {
    file: `${decide}score.ts`,
    says: 'fail safe costs no security',
    from: "candidate.failMode === 'safe' && failSafeOnly !== true ? failSafeCost[need] : 0",
    to: '0',
  },
  {
    file: 'src/domain/logic/compile.ts',
    says: '“not” makes unknown a no',
    from: 'return verdict === UNKNOWN ? UNKNOWN : verdict === YES ? NO : YES;',
    to: 'return verdict === NO ? YES : NO;',
  },
  {
    file: 'src/domain/logic/compile.ts',
    says: 'two parts: unknown and yes are yes',
    from: 'return two === NO ? NO : one === UNKNOWN ? UNKNOWN : two;',
    to: 'return two;',
  },
];

const suites = [
  'src/domain/decide',
  'src/domain/hardware',
  'src/domain/logic',
  'src/domain/rules/cases.test.ts',
  'tests/properties',
  'tests/golden',
];
const copy = mkdtempSync(join(tmpdir(), 'slips-'));
try {
  for (const part of [
    'src',
    'tests',
    'scripts',
    'demo-data',
    'package.json',
    'tsconfig.json',
    'vite.config.ts',
  ]) {
    cpSync(part, join(copy, part), { recursive: true });
  }
  symlinkSync(resolve('node_modules'), join(copy, 'node_modules'));
  const run = () =>
    spawnSync('npx', ['vitest', 'run', '--project', 'domain', '--bail', '1', ...suites], {
      cwd: copy,
      encoding: 'utf8',
    });
  const clean = run();
  if (clean.status !== 0) throw new Error(`The tests fail before any slip:\n${clean.stdout.slice(-3000)}`);
  let lived = 0;
  for (const { file, says, from, to } of slips) {
    const path = join(copy, file);
    const text = readFileSync(path, 'utf8');
    if (!text.includes(from)) throw new Error(`${file} no longer holds: ${from}`);
    writeFileSync(path, text.replace(from, to));
    const { status, stdout } = run();
    writeFileSync(path, text);
    const failed = /FAIL\s+(.*)/.exec(stdout)?.[1] ?? '';
    if (status === 0) lived++;
    console.log(`${status === 0 ? 'LIVED ' : 'killed'} ${file}: ${says}${failed && `  by ${failed}`}`);
  }
  console.log(`${slips.length - lived} of ${slips.length} slips noticed.`);
  process.exitCode = lived === 0 ? 0 : 1;
} finally {
  rmSync(copy, { recursive: true, force: true });
}
