import { useState } from 'react';
import type { Decision } from '../../domain/decide/decision.ts';
import { searchFor } from '../../domain/decide/whatWouldChange.ts';
import { admissionInWords } from '../../domain/words/whatWouldChange.ts';
import type { Opening, Project } from '../../domain/model/project.ts';

interface Props {
  readonly project: Project;
  readonly opening: Opening;
  readonly decision: Decision;
  readonly candidateId: string;
}

/** Answers, when asked, what work would admit an arrangement that is ruled out. */
export function WhatWouldAdmit({ project, opening, decision, candidateId }: Props) {
  const [answer, setAnswer] = useState<readonly string[] | null>(null);
  if (answer === null) {
    return (
      <button
        type="button"
        className="button button-small"
        onClick={() => setAnswer(admissionInWords(searchFor(project, opening, decision, candidateId)))}
      >
        What would allow it?
      </button>
    );
  }
  return (
    <ul aria-live="polite">
      {answer.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  );
}
