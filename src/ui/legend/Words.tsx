import { useId, useState } from 'react';
import { findWords } from '../../domain/manual/findWords.ts';
import { SurveyWords } from './SurveyWords.tsx';
import { TermList } from './TermList.tsx';

/** Narrowed while something is searched; on paper all of it stands. */
export function Words() {
  const id = useId();
  const [wanted, setWanted] = useState('');
  const found = findWords(wanted);
  return (
    <>
      <section className="section stack" aria-label="Words">
        <h2>Words</h2>
        <div className="field legend-search screen-only">
          <label htmlFor={id}>Find a word</label>
          <input
            id={id}
            type="search"
            className="input"
            value={wanted}
            onChange={(event) => setWanted(event.target.value)}
          />
        </div>
        {found.nothing && <output>No match.</output>}
        {found.groups.map((group) => (
          <section key={group.id} className="stack stack-tight" aria-label={group.name}>
            <h3>{group.name}</h3>
            <TermList terms={group.terms} />
          </section>
        ))}
      </section>
      {found.questions.length > 0 && (
        <section className="section stack" aria-label="Questions of the survey">
          <h2>Questions of the survey</h2>
          <SurveyWords questions={found.questions} searched={wanted.trim() !== ''} />
        </section>
      )}
    </>
  );
}
