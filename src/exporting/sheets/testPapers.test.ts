import { describe, expect, it } from 'vitest';
import { type TestPage, testPapers } from './testPages.ts';

const pageWith = (mark: string, lines: number): TestPage => ({
  id: mark,
  mark,
  place: '',
  arrangement: '',
  unsettled: '',
  noTest: '',
  lines: Array.from({ length: lines }, (_, at) => ({
    number: at + 1,
    about: '',
    act: '',
    expect: '',
    value: '',
    source: '',
  })),
  crowded: false,
  title: [
    { label: 'Project', value: 'P' },
    { label: 'Opening', value: mark },
  ],
});
const marksOf = (...pages: readonly (readonly [string, number])[]) =>
  testPapers(pages.map(([mark, lines]) => pageWith(mark, lines))).map(({ tests }) =>
    tests.map(({ mark }) => mark).join('+'),
  );

describe('acceptance tests on paper', () => {
  it('stand two to a page where both are short, the first in its place', () => {
    expect(marksOf(['101', 3], ['102', 20], ['103', 9], ['104', 10], ['105', 0])).toEqual([
      '101+103',
      '102',
      '104',
      '105',
    ]);
  });

  it('name both openings at the foot of such a page, and one where it stands alone', () => {
    const papers = testPapers([pageWith('101', 3), pageWith('102', 3), pageWith('103', 3)]);
    expect(papers.map(({ title }) => title.at(-1))).toEqual([
      { label: 'Openings', value: '101, 102' },
      { label: 'Opening', value: '103' },
    ]);
  });
});
