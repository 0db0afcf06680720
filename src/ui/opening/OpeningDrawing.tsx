import type { Decision } from '../../domain/decide/decision.ts';

export function OpeningDrawing(_props: { decision: Decision }) {
  return null;
}
