import { useState } from 'react';
import { questionsFor } from '../../app/review.ts';
import { dayOf } from '../../app/today.ts';
import type { Project } from '../../domain/model/project.ts';
import { forTheAuthority, letterToAuthority } from '../../domain/review/packet.ts';
import { dayInWords } from '../../exporting/sheets/day.ts';
import { useApplication } from '../context.ts';

/** The letter to the authority as it is offered: it counts what is open today. */
export function useOfferedLetter(project: Project): string {
  const { clock } = useApplication();
  const [day] = useState(() => dayInWords(dayOf(clock())));
  return letterToAuthority(project, forTheAuthority(questionsFor(project)), day);
}
