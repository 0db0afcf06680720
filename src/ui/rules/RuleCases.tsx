import { lazy, Suspense } from 'react';
import type { Rule } from '../../domain/rules/rule.ts';
import { Unfolded } from '../parts/Unfolded.tsx';

/** Cases are half of the rule book by size, so they are loaded when somebody opens the first of them. */
const CaseTable = lazy(() => import('./CaseTable.tsx'));

export function RuleCases({ rule }: { rule: Rule }) {
  return (
    <div className="screen-only">
      <Unfolded summary="Its cases">
        <Suspense fallback={<p className="note">Loading the cases…</p>}>
          <CaseTable rule={rule} />
        </Suspense>
      </Unfolded>
    </div>
  );
}
