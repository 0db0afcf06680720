import type { Decision } from '../../domain/decide/decision.ts';
import {
  candidateInWords,
  releaseInWords,
  type ShownState,
  shownStateWords,
} from '../../domain/decide/words.ts';
import { valueInWords } from '../../domain/text/format.ts';
import { type FactKey, fieldInfo } from '../../domain/model/fields.ts';
import type { Opening, Project } from '../../domain/model/project.ts';
import { signatureOf } from '../../domain/review/status.ts';
import { borrowedFor } from '../../domain/survey/answers.ts';

export interface GridRow {
  readonly opening: Opening;
  readonly decision: Decision;
  readonly state: ShownState;
}

export interface Column {
  readonly key: string;
  readonly head: string;
  /** Width in rem at a desk. */
  readonly width: number;
  readonly text: (row: GridRow, project: Project) => string;
  /** The fact a cell edits, if it does. */
  readonly fact?: FactKey;
}

/** What was answered here, or else what the building or its space says. */
function factText(key: FactKey) {
  return ({ opening, decision }: GridRow, project: Project) => {
    const fact = opening.facts[key];
    if (fact?.is === 'unknown') return '?';
    if (fact) return valueInWords(key, fact.value);
    const borrowed = borrowedFor(key, opening, project, decision);
    return borrowed ? valueInWords(key, borrowed.value) : '?';
  };
}

const factColumn = (key: FactKey, width: number, head = fieldInfo(key).label): Column => ({
  key,
  head,
  width,
  text: factText(key),
  fact: key,
});

export const columns: readonly Column[] = [
  { key: 'mark', head: 'Mark', width: 5.5, text: ({ opening }) => opening.mark },
  {
    key: 'floor',
    head: 'Floor',
    width: 7,
    text: ({ opening }, project) => (opening.floorId ? (project.floors[opening.floorId]?.name ?? '') : ''),
  },
  {
    key: 'from',
    head: 'Secure side',
    width: 10,
    text: ({ opening }, project) =>
      opening.fromSpaceId ? (project.spaces[opening.fromSpaceId]?.name ?? '') : '',
  },
  {
    key: 'to',
    head: 'Egress side',
    width: 10,
    text: ({ opening }, project) =>
      opening.toSpaceId ? (project.spaces[opening.toSpaceId]?.name ?? '') : '',
  },
  {
    key: 'state',
    head: 'State',
    width: 9.5,
    text: ({ state }) => shownStateWords[state].word,
  },
  {
    key: 'device',
    head: 'Locked by',
    width: 16.5,
    text: ({ decision }) => (decision.chosen ? candidateInWords(decision.chosen.candidate) : '—'),
  },
  {
    key: 'release',
    head: 'Egress',
    width: 13.5,
    text: ({ decision }) => (decision.chosen ? releaseInWords(decision.chosen.candidate) : '—'),
  },
  {
    key: 'signOff',
    head: 'Sign-off',
    width: 12,
    text: ({ decision, opening }, project) => signatureOf(project, opening, decision).short || '—',
  },
  factColumn('doorType', 11, 'Door'),
  factColumn('leafMaterial', 10, 'Leaf'),
  factColumn('frameMaterial', 9, 'Frame'),
  factColumn('latch', 13, 'Latch'),
  factColumn('fireRatingMin', 6, 'Label'),
  factColumn('egressRole', 14, 'Egress role'),
  factColumn('occupantLoad', 7, 'Load'),
  factColumn('readerSides', 11, 'Reader'),
  factColumn('securityNeed', 8, 'Need'),
];

/** The column of marks is as wide as the longest mark needs, up to where a phone would see nothing else. */
function markWidth(rows: readonly GridRow[], widest: number): number {
  const longest = Math.max(0, ...rows.map(({ opening }) => opening.mark.length));
  return Math.min(widest, Math.max(5.5, 1.5 + longest * 0.7));
}

/** On a phone the decision comes right after the mark; at a desk the place does. */
const phoneFirst = ['mark', 'state', 'device', 'signOff'];

export function columnsFor(rows: readonly GridRow[], phone: boolean): readonly Column[] {
  const order = phone ? columns.toSorted((a, b) => rank(a.key) - rank(b.key)) : columns;
  return order.map((column) => {
    if (column.key === 'mark') return { ...column, width: markWidth(rows, phone ? 7 : 28) };
    if (phone && column.key === 'state') return { ...column, width: 9.5 };
    if (phone && column.key === 'device') return { ...column, width: 10 };
    return column;
  });
}

function rank(key: string): number {
  const index = phoneFirst.indexOf(key);
  return index < 0 ? phoneFirst.length : index;
}
