import { books } from '../../src/domain/codes/basis.ts';
import { entriesOf, type LimitId, limits } from '../../src/domain/codes/limits.ts';
import type { ConditionWords } from '../../src/domain/manual/conditionInWords.ts';
import { byFamily, type ManualClause, manualEntry } from '../../src/domain/manual/ruleManual.ts';
import { casesOf } from '../../src/domain/rules/allCases.ts';
import type { Rule } from '../../src/domain/rules/rule.ts';

/** Pages of the manual as Markdown, by file name. */
export function manualPages(rules: readonly Rule[]): ReadonlyMap<string, string> {
  const families = byFamily(rules);
  const pages = new Map<string, string>();
  for (const { family, name, rules: own } of families) {
    pages.set(`${family}.md`, page(name, own));
  }
  pages.set('limits.md', limitsPage());
  pages.set('README.md', indexPage(rules.length, families));
  return pages;
}

const generated = 'Generated from `src/domain/rules` by `npm run rules:doc`; edit the rules, not this page.';

function indexPage(total: number, families: ReturnType<typeof byFamily>): string {
  const lines = families.flatMap(({ family, name, rules }) => [
    '',
    `## [${name}](${family}.md)`,
    '',
    ...rules.map((rule) => `- [${rule.id}](${family}.md#${anchor(rule)}) ${rule.title}`),
  ]);
  return text([
    '# The rule book',
    '',
    `${total} rules. ${generated}`,
    '',
    'Every sentence is a paraphrase of our own; the text of the code governs. A rule that was not read in the',
    'code’s own text says so. The figures stand in [limits.md](limits.md).',
    ...lines,
  ]);
}

/** Every number a code sets, edition by edition, with the day on which a person last held it against its source. */
function limitsPage(): string {
  const rows = (Object.keys(limits) as LimitId[]).flatMap((id) => {
    const { book, what, unit } = limits[id];
    return Object.entries(entriesOf(id)).map(([year, { value, section, confidence, checkedOn }]) => {
      const edition = year === 'any' ? books[book] : `${books[book]} ${year}`;
      return `| ${what} | ${value} ${unit} | ${edition} | ${section || '–'} | ${confidence} | ${checkedOn} |`;
    });
  });
  return text([
    '# Figures by edition',
    '',
    'Generated from `src/domain/codes/limits.ts` by `npm run rules:doc`; edit the limits, not this page.',
    '',
    '| figure | value | edition | section | read | last checked |',
    '| --- | --- | --- | --- | --- | --- |',
    ...rows,
  ]);
}

function page(name: string, rules: readonly Rule[]): string {
  return text([`# ${name}`, '', generated, ...rules.flatMap(ruleLines)]);
}

function ruleLines(rule: Rule): readonly string[] {
  const entry = manualEntry(rule, null);
  const known = entry.notRead ? `**Not read in the code’s own text.** ${entry.confidence}` : entry.confidence;
  return [
    '',
    `## ${entry.id} ${entry.title}`,
    '',
    entry.why,
    '',
    ...entry.cites.map((cite) => `- ${cite}`),
    `- ${known}.${entry.note === undefined ? '' : ` ${entry.note}`}`,
    ...entry.clauses.flatMap(clauseLines),
    '',
    `Tested by ${casesOf(rule).length} cases.`,
  ];
}

function clauseLines(clause: ManualClause): readonly string[] {
  const key = clause.key === '' ? '' : `${clause.key}. `;
  return [
    '',
    `**${key}${clause.effect}**${clause.names.length > 0 ? ` (${clause.names.join('; ')})` : ''}: ${clause.says}`,
    '',
    `- Of: ${clause.of}`,
    ...conditionLines('When: ', clause.when, 0),
  ];
}

function conditionLines(lead: string, said: ConditionWords, depth: number): readonly string[] {
  const indent = '  '.repeat(depth);
  if (said.kind === 'says') return [`${indent}- ${lead}${said.says}`];
  return [
    `${indent}- ${lead}${said.head}`,
    ...said.of.flatMap((part) => conditionLines('', part, depth + 1)),
  ];
}

/** The address that Markdown readers give a heading. */
function anchor(rule: Rule): string {
  return `${rule.id} ${rule.title}`
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N} _-]/gu, '')
    .replaceAll(' ', '-');
}

function text(lines: readonly string[]): string {
  return `${lines.join('\n')}\n`;
}
