import { useEffect, useState } from 'react';
import { checkLogOf } from '../../app/verdictDesk.ts';
import type { Project } from '../../domain/model/project.ts';
import { logInWords, whatTheLogProves } from '../../domain/review/proves.ts';
import type { LogCheck } from '../../domain/review/verify.ts';
import { Unfolded } from '../parts/Unfolded.tsx';
import { KeyPart } from './KeyPart.tsx';

/** The log held against its hashes and signatures, what was found, and what all of it proves and what not. */
export function LogSeal({ project }: { project: Project }) {
  const { verdicts, verdictIndex } = project;
  const [check, setCheck] = useState<LogCheck | null | undefined>(undefined);
  useEffect(() => {
    let current = true;
    void checkLogOf({ ...project, verdicts, verdictIndex }).then((found) => current && setCheck(found));
    return () => {
      current = false;
    };
    // Only the log is read; every other edit would make the same hashes again.
    // oxlint-disable-next-line react-hooks/exhaustive-deps
  }, [verdicts, verdictIndex]);
  if (check === undefined) return null;
  const { says, problems, notes } = logInWords(check);
  return (
    <section aria-label="The log" className="stack stack-tight">
      <p>{says}</p>
      {problems.length > 0 && (
        <ul role="alert" className="remark remark-accent">
          {problems.map((problem) => (
            <li key={problem}>{problem}</li>
          ))}
        </ul>
      )}
      {notes.length > 0 && (
        <ul className="remark" aria-label="Clocks">
          {notes.map((note) => (
            <li key={note}>{note}</li>
          ))}
        </ul>
      )}
      <Unfolded summary="What this proves, and the reviewer’s key">
        <ul>
          {whatTheLogProves.map((one) => (
            <li key={one}>{one}</li>
          ))}
        </ul>
        <KeyPart />
      </Unfolded>
    </section>
  );
}
