import type { ReactNode } from 'react';

interface Props {
  /** What is in it, for somebody who does not see it. */
  readonly label: string;
  readonly className: string;
  /** Out of sight while something longer is under way. */
  readonly busy?: boolean;
  readonly children: ReactNode;
}

/** What is wider than its frame: it scrolls there, with the arrow keys too, so the keyboard must be able to reach it. */
export function Scroller({ label, className, busy = false, children }: Props) {
  return (
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- a scroller must be reachable by keyboard
    <section className={className} tabIndex={0} aria-label={label} data-busy={busy || undefined}>
      {children}
    </section>
  );
}
