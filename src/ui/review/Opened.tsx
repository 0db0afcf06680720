import { type ReactNode, useState } from 'react';

interface Props {
  readonly summary: ReactNode;
  readonly atFirst?: boolean;
  readonly children: ReactNode;
}

/** What is inside is built only once somebody looks: a large building has hundreds of these. */
export function Opened({ summary, atFirst = false, children }: Props) {
  const [open, setOpen] = useState(atFirst);
  return (
    <details open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{summary}</summary>
      {open && children}
    </details>
  );
}
