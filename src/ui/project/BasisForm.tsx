import { useId, useState } from 'react';
import { books } from '../../domain/codes/basis.ts';
import type { Project } from '../../domain/model/project.ts';
import {
  type AdoptedBook,
  basisMeans,
  bookIsAbout,
  editionsOf,
  withEdition,
} from '../../domain/project/basisMeans.ts';
import { useCommand } from './useCommand.ts';

const adoptable = Object.keys(editionsOf) as readonly AdoptedBook[];

export function BasisForm({ project }: { project: Project }) {
  const command = useCommand();
  const id = useId();
  const [problem, setProblem] = useState('');
  return (
    <div className="stack">
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
              value={project.basis[book] ?? ''}
              onChange={(event) => {
                const value = withEdition(project.basis, book, event.target.value);
                setProblem(command(`${books[book]}: edition`, [{ kind: 'setBasis', value }]) ?? '');
              }}
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
      {problem !== '' && (
        <p role="alert" className="field-error">
          {problem}
        </p>
      )}
      <output className="remark">
        {basisMeans(project.basis).map((sentence) => (
          <span key={sentence}>{sentence}</span>
        ))}
      </output>
    </div>
  );
}
