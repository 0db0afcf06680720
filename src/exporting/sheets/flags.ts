import type { Decision } from '../../domain/decide/decision.ts';
import { stateInWords } from '../../domain/words/states.ts';
import { orderStateWords } from '../../domain/sets/forOrder.ts';
import type { OpeningRow } from '../../domain/schedules/openings.ts';
import { counted } from '../../domain/text/counted.ts';

/** What a bidder must see before pricing a row, in words, the gravest first; empty when the row stands. */
export function flagsOf(row: OpeningRow, decision: Decision): readonly string[] {
  const flags: string[] = [];
  if (decision.state !== 'settled') flags.push(stateInWords(decision).word);
  else if (row.order === orderStateWords.incomplete) flags.push('Order not complete');
  if (decision.findings.length > 0) flags.push(contradiction(decision));
  return [...flags, ...row.signature];
}

function contradiction(decision: Decision): string {
  const grave = decision.findings.some(
    ({ clause }) => clause.effect === 'finding' && clause.severity === 'refuse',
  );
  return grave ? 'Survey contradicts itself' : 'Contradictory: check the survey';
}

export function remarksOf(row: OpeningRow): readonly string[] {
  return [
    ...(row.missing === 0 ? [] : [`${counted(row.missing, 'fact')} missing`]),
    ...(row.notes.trim() === '' ? [] : [row.notes.trim()]),
  ];
}
