import type { PowerSheet } from '../../exporting/sheets/powerSheet.ts';
import { statusOf } from '../building/FindingList.tsx';
import { StatusMark } from '../face/Mark.tsx';
import { OpeningLinks } from '../parts/OpeningLinks.tsx';

/** Each with the limit it was held against and where that comes from. */
export function PowerFindings({ findings }: Pick<PowerSheet, 'findings'>) {
  if (findings.length === 0) return <p>Nothing was found.</p>;
  return (
    <ol className="reasons building-findings">
      {findings.map((finding) => (
        <li key={finding.says}>
          <StatusMark status={statusOf[finding.severity]}>{finding.word}</StatusMark>
          <p>{finding.says}</p>
          <p className="note">Source: {finding.source}</p>
          <OpeningLinks openings={finding.openings.slice(0, 12)} />
        </li>
      ))}
    </ol>
  );
}
