import { useState } from 'react';
import { questionsFor } from '../../app/review.ts';
import { dayOf } from '../../app/today.ts';
import type { Project } from '../../domain/model/project.ts';
import { forTheAuthority, letterToAuthority } from '../../domain/review/packet.ts';
import { dayInWords } from '../../exporting/sheets/day.ts';
import { useApplication } from '../context.ts';
import { type FieldDraft, useDraft } from '../parts/useDraft.ts';

/** The letter to the authority: what is offered until somebody edits it, then what was typed, kept in this browser. */
export function useLetter(project: Project): FieldDraft<string> {
  const { clock } = useApplication();
  const [day] = useState(() => dayInWords(dayOf(clock())));
  const offered = letterToAuthority(project, forTheAuthority(questionsFor(project)), day);
  return useDraft(
    { place: 'letter/authority', label: 'Letter to the authority', href: '#/print?only=packet' },
    offered,
  );
}
