import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const css = readFileSync('src/ui/face/tokens.css', 'utf8')
  .replaceAll('"', "'")
  .replace(/\/\*[\s\S]*?\*\//g, '');

/** The declarations of the first rule with this selector inside the given part of the sheet. */
function ruleBody(selector: string, from = 0): string {
  const start = css.indexOf(selector, from);
  if (start < 0) throw new Error(`tokens.css has no rule ${selector}`);
  const open = css.indexOf('{', start);
  return css.slice(open + 1, css.indexOf('}', open));
}

function colors(body: string): Record<string, string> {
  return Object.fromEntries([...body.matchAll(/--([\w-]+):\s*(#[0-9a-f]{6})\b/gi)].map((m) => [m[1], m[2]]));
}

const systemDark = ruleBody(':root:not([data-theme])', css.indexOf('(prefers-color-scheme: dark)'));
const themes = {
  light: colors(ruleBody("[data-theme='light']")),
  dark: colors(ruleBody("[data-theme='dark']")),
  sunlight: colors(ruleBody("[data-theme='sunlight']")),
  print: colors(ruleBody('[data-theme]', css.lastIndexOf('@media print'))),
};

/** Relative luminance as WCAG 2.2 defines it. */
function luminance(hex: string): number {
  const [r, g, b] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * (r ?? 0) + 0.7152 * (g ?? 0) + 0.0722 * (b ?? 0);
}

function contrast(one: string, other: string): number {
  const [dark, light] = [luminance(one), luminance(other)].toSorted((a, b) => a - b);
  return ((light ?? 0) + 0.05) / ((dark ?? 0) + 0.05);
}

const grounds = ['paper', 'paper-raised', 'paper-sunk', 'paper-marked'];
const texts = ['ink', 'ink-soft', 'accent', 'accent-deep'];
const pairs = [
  ...grounds.flatMap((ground) => texts.map((text) => [text, ground] as const)),
  ['on-ink', 'ink'] as const,
  ['on-accent', 'accent'] as const,
];

describe.each(Object.entries(themes))('in the %s theme', (_name, color) => {
  test.each(pairs)('%s on %s is read at 7 to 1 or more', (text, ground) => {
    expect(contrast(color[text] ?? '', color[ground] ?? '')).toBeGreaterThanOrEqual(7);
  });

  test.each(grounds)('the edge of a control is seen on %s at 3 to 1 or more', (ground) => {
    expect(contrast(color['ink-line'] ?? '', color[ground] ?? '')).toBeGreaterThanOrEqual(3);
  });
});

test('whoever has a dark system sees the same values as whoever chose dark here', () => {
  expect(colors(systemDark)).toEqual(themes.dark);
});

test('every theme sets every color', () => {
  const names = Object.keys(themes.light).toSorted();
  for (const theme of Object.values(themes)) expect(Object.keys(theme).toSorted()).toEqual(names);
});
