import { History } from '../files/History.tsx';
import { Opened } from '../review/Opened.tsx';

/** Who did what at this opening, and when; read from the storage only when somebody opens it. */
export function OpeningHistory({ openingId }: { openingId: string }) {
  return (
    <section aria-label="History">
      <Opened summary="History of this opening">
        <History openingId={openingId} />
      </Opened>
    </section>
  );
}
