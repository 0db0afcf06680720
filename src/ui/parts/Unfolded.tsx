import { type ReactNode, useState } from 'react';

interface Props {
  readonly summary: ReactNode;
  readonly className?: string;
  readonly children: ReactNode;
}

/** A fold whose inside is made only while it is open. */
export function Unfolded({ summary, className, children }: Props) {
  const [open, setOpen] = useState(false);
  return (
    <details className={className} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{summary}</summary>
      {open && children}
    </details>
  );
}
