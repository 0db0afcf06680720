import { useId } from 'react';
import { books, type CodeBasis } from '../../domain/codes/basis.ts';
import { type AdoptedBook, bookIsAbout, editionsOf, withEdition } from '../../domain/project/basisMeans.ts';

const adoptable = Object.keys(editionsOf) as readonly AdoptedBook[];

interface Props {
  readonly basis: CodeBasis;
  readonly onBasis: (basis: CodeBasis, book: AdoptedBook) => void;
}

/** One list of editions for each book that can be adopted. */
export function EditionSelects({ basis, onBasis }: Props) {
  const id = useId();
  return (
    <div className="project-fields">
      {adoptable.map((book) => (
        <div key={book} className="field">
          <label htmlFor={`${id}${book}`} className="field-label">
            {books[book]}
          </label>
          <select
            id={`${id}${book}`}
            className="input"
            aria-describedby={`${id}${book}about`}
            value={basis[book] ?? ''}
            onChange={(event) => onBasis(withEdition(basis, book, event.target.value), book)}
          >
            <option value="">Not adopted</option>
            {editionsOf[book].map((year) => (
              <option key={year} value={year}>
                {year}
              </option>
            ))}
          </select>
          <p id={`${id}${book}about`} className="field-help">
            {bookIsAbout[book]}
          </p>
        </div>
      ))}
    </div>
  );
}
