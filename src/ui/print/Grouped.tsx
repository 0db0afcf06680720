import type { ReactNode } from 'react';

interface Props {
  readonly name: string;
  /** How many lines stand below it. */
  readonly says: string;
  /** Columns of the table. */
  readonly span: number;
  readonly children: ReactNode;
}

/** Lines of a printed table under the name they share. */
export function Group({ name, says, span, children }: Props) {
  return (
    <tbody>
      <tr className="group-row">
        <th colSpan={span} scope="rowgroup">
          {name} <span className="group-count">{says}</span>
        </th>
      </tr>
      {children}
    </tbody>
  );
}

export function PaperNotes({ notes }: { notes: readonly string[] }) {
  return (
    <ul className="paper-notes">
      {notes.map((note) => (
        <li key={note}>{note}</li>
      ))}
    </ul>
  );
}
