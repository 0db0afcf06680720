import type { Side } from '../../domain/merge/differences.ts';
import { when } from './when.ts';

/** A value with who entered it and when. */
export function SideOfDifference({ side }: { side: Side }) {
  const who = [side.by, side.at === '' ? '' : when(side.at)].filter((word) => word !== '').join(', ');
  return (
    <>
      {side.says}
      {who !== '' && (
        <>
          <br />
          <span className="note">{who}</span>
        </>
      )}
    </>
  );
}
