import { alsoCalledInWords, origins, type Term } from '../../domain/manual/glossary.ts';

/** Words with what they mean and where they come from. */
export function TermList({ terms }: { terms: readonly Term[] }) {
  return (
    <dl className="glossary">
      {terms.map((term) => (
        <div key={term.term}>
          <dt>{term.term}</dt>
          <dd>
            {term.says} {term.alsoCalled !== undefined && `${alsoCalledInWords(term.alsoCalled)} `}
            <span className="soft">{origins[term.origin]}.</span>
          </dd>
        </div>
      ))}
    </dl>
  );
}
