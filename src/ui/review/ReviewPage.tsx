import { useMemo, useState } from 'react';
import { decisionsInBuilding } from '../../app/buildings.ts';
import { openSignaturesFor, questionsFor } from '../../app/review.ts';
import {
  everything,
  keysOf,
  narrowed,
  questionsInWords,
  type RegisterFilter,
} from '../../domain/review/filter.ts';
import { standingCaution } from '../../domain/text/cautions.ts';
import { reviewRegister } from '../../exporting/sheets/reviewRegister.ts';
import { useApp } from '../context.ts';
import { LogSeal } from './LogSeal.tsx';
import { QuestionEntry } from './QuestionEntry.tsx';
import { RegisterTools, type RegisterView } from './RegisterTools.tsx';
import { ReviewEntry } from './ReviewEntry.tsx';
import './review.css';

/** What needs a reviewer's name, by question or by opening, the gravest first, with everything a reviewer has to read. */
export default function ReviewPage() {
  const project = useApp((state) => state.document.project);
  const [view, setView] = useState<RegisterView>('questions');
  const [filter, setFilter] = useState<RegisterFilter>(everything);
  const [kept, setKept] = useState<ReadonlySet<string>>(new Set());
  const questions = questionsFor(project);
  const listed = narrowed(questions, filter, kept);
  const entries = useMemo(() => reviewRegister(project, decisionsInBuilding(project)), [project]);
  const narrow = (to: RegisterFilter) => {
    setKept(keysOf(narrowed(questions, to)));
    setFilter(to);
  };
  const openings = new Set(listed.flatMap(({ at }) => at.map(({ opening }) => opening.id)));
  const listedEntries = entries.filter(
    ({ opening, reasons }) => openings.has(opening.id) || (filter === everything && reasons.length === 0),
  );
  const rules = [...new Set(questions.flatMap(({ ruleIds }) => ruleIds))];
  return (
    <div className="sheet">
      <div className="sheet-body stack">
        <h1>Review</h1>
        <p role="status">{questionsInWords(questions)}</p>
        <p>
          <strong>{openSignaturesFor(project).says}</strong>
        </p>
        <LogSeal project={project} />
        {questions.length + entries.length > 0 && (
          <RegisterTools
            view={view}
            onView={setView}
            filter={filter}
            onFilter={narrow}
            rules={rules.toSorted()}
            floors={Object.values(project.floors).toSorted((a, b) => a.level - b.level)}
          />
        )}
        {view === 'questions'
          ? listed.map((question) => (
              <QuestionEntry key={question.id} question={question} project={project} />
            ))
          : listedEntries.map((entry) => <ReviewEntry key={entry.opening.id} entry={entry} />)}
        {questions.length + entries.length > 0 && listed.length + listedEntries.length === 0 && (
          <p className="empty">Nothing on the register is in this state.</p>
        )}
        <p className="caution">{standingCaution}</p>
      </div>
    </div>
  );
}
