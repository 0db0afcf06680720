import { useMemo, useState } from 'react';
import { decisionsInBuilding } from '../../app/buildings.ts';
import { type Alternate, alternatesOf } from '../../domain/bid/alternates.ts';
import { billOf } from '../../domain/bid/bill.ts';
import { allWays } from '../../domain/bid/fewerSets.ts';
import type { Project } from '../../domain/model/project.ts';
import { billSheet } from '../../exporting/sheets/billSheet.ts';
import { useApp } from '../context.ts';
import { Scroller } from '../parts/Scroller.tsx';
import { BillTable } from '../print/BillTable.tsx';
import { BidTerms } from './BidTerms.tsx';
import { Prices } from './Prices.tsx';
import './pricing.css';

/** Alternates are looked for up to this far below the recommendation: 10 points of 100. */
const farthest = 100;

export default function PricingPage() {
  const project = useApp((state) => state.document.project);
  const decisions = decisionsInBuilding(project);
  const bill = useMemo(() => billOf(project, decisions), [project, decisions]);
  const [found, setFound] = useState<{ of: Project; alternates: readonly Alternate[] } | null>(null);
  const alternates = found?.of === project ? found.alternates : [];
  const sheet = billSheet(project, bill, alternates, true);
  return (
    <div className="sheet">
      <div className="sheet-body stack">
        <h1>Pricing</h1>
        <p className="lead">{sheet.says}</p>
        <BidTerms project={project} />
        <Prices project={project} bill={bill} />
        <div className="row">
          <button
            type="button"
            className="button"
            onClick={() =>
              setFound({
                of: project,
                alternates: alternatesOf(project, allWays(project, decisions, farthest)),
              })
            }
          >
            Look for alternates that cost less
          </button>
          {found?.of === project && alternates.length === 0 && (
            <output>None, or a price that is needed for it is missing.</output>
          )}
        </div>
        <Scroller className="pricing-preview" label="What is priced">
          <BillTable sheet={sheet} />
        </Scroller>
      </div>
    </div>
  );
}
