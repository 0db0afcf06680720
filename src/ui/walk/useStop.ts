import { useMemo, useState } from 'react';
import type { Decision } from '../../domain/decide/decision.ts';
import type { Opening, Project } from '../../domain/model/project.ts';
import { nextQuestion } from '../../domain/survey/nextQuestion.ts';
import { type Ask, nextStop, type Stop } from '../../domain/survey/round.ts';
import { useApplication } from '../context.ts';

export interface Asking {
  readonly ask: Ask | undefined;
  /** Where on the way round the door; undefined where the fewest questions are asked. */
  readonly stop: Stop | undefined;
  readonly shortest: boolean;
  readonly setShortest: (shortest: boolean) => void;
  /** Asks the questions of a look one by one. */
  readonly refuse: (lookId: string) => void;
}

/** What is asked next at an opening, in the order the surveyor prefers. */
export function useStop(project: Project, opening: Opening, decision: Decision): Asking {
  const { preferences } = useApplication();
  const [shortest, setShortest] = useState(() => preferences.get('walkOrder') === 'shortest');
  const [refused, setRefused] = useState<ReadonlySet<string>>(new Set());
  const stop = useMemo(
    () => (shortest ? undefined : nextStop(project, opening, decision, refused)),
    [project, opening, decision, refused, shortest],
  );
  const alone = useMemo(
    () => (shortest ? nextQuestion(project, opening, decision) : undefined),
    [project, opening, decision, shortest],
  );
  return {
    stop,
    ask: stop?.ask ?? (alone && { kind: 'fact', key: alone }),
    shortest,
    setShortest: (chosen) => {
      preferences.set('walkOrder', chosen ? 'shortest' : '');
      setShortest(chosen);
    },
    refuse: (lookId) => setRefused((before) => new Set([...before, lookId])),
  };
}
