import { useVirtualizer } from '@tanstack/react-virtual';
import { useRef } from 'react';
import { createRoot } from 'react-dom/client';

interface Bare {
  readonly rows: readonly (readonly string[])[];
  readonly widthsRem: readonly number[];
  readonly rowPx: number;
  readonly at: HTMLElement;
}

/** The same rows as plain text in a list of fixed height: no cursor, no selection, no edit, nothing measured. */
function List({ rows, widthsRem, rowPx }: Bare) {
  const scroller = useRef<HTMLDivElement>(null);
  const virtual = useVirtualizer({
    count: rows.length,
    getScrollElement: () => scroller.current,
    estimateSize: () => rowPx,
    overscan: 8,
  });
  const template = widthsRem.map((width) => `${width}rem`).join(' ');
  return (
    <div ref={scroller} id="bare" style={{ height: '100vh', overflow: 'auto' }}>
      <div style={{ height: virtual.getTotalSize(), position: 'relative' }}>
        {virtual.getVirtualItems().map(({ index, start }) => (
          <div
            key={index}
            style={{
              position: 'absolute',
              top: 0,
              display: 'grid',
              height: rowPx,
              gridTemplateColumns: template,
              transform: `translateY(${start}px)`,
            }}
          >
            {rows[index]?.map((text, column) => (
              // Columns stand still.
              // oxlint-disable-next-line react/no-array-index-key
              <div key={column} style={{ overflow: 'hidden' }}>
                {text}
              </div>
            ))}
          </div>
        ))}
      </div>
    </div>
  );
}

Object.assign(window, { showBare: (bare: Bare) => createRoot(bare.at).render(<List {...bare} />) });
