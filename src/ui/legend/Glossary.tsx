import { useId, useState } from 'react';
import { glossary, origins } from '../../domain/explain/glossary.ts';

/** Narrowed while something is searched; on paper all of it stands. */
export function Glossary() {
  const id = useId();
  const [wanted, setWanted] = useState('');
  const words = wanted.trim().toLowerCase();
  const groups = glossary
    .map((group) => ({
      ...group,
      terms: group.terms.filter((term) => `${term.term} ${term.says}`.toLowerCase().includes(words)),
    }))
    .filter((group) => group.terms.length > 0);
  return (
    <div className="stack">
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
      {groups.length === 0 && <output>No such word here.</output>}
      {groups.map((group) => (
        <section key={group.id} className="stack stack-tight" aria-label={group.name}>
          <h3>{group.name}</h3>
          <dl className="glossary">
            {group.terms.map((term) => (
              <div key={term.term}>
                <dt>{term.term}</dt>
                <dd>
                  {term.says} <span className="soft">{origins[term.origin]}.</span>
                </dd>
              </div>
            ))}
          </dl>
        </section>
      ))}
    </div>
  );
}
