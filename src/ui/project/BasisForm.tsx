import { useState } from 'react';
import { books } from '../../domain/codes/basis.ts';
import type { Project } from '../../domain/model/project.ts';
import { basisMeans } from '../../domain/project/basisMeans.ts';
import { EditionSelects } from './EditionSelects.tsx';
import { useCommand } from './useCommand.ts';

export function BasisForm({ project }: { project: Project }) {
  const command = useCommand();
  const [problem, setProblem] = useState('');
  return (
    <div className="stack">
      <EditionSelects
        basis={project.basis}
        onBasis={(value, book) =>
          setProblem(command(`${books[book]}: edition`, [{ kind: 'setBasis', value }]) ?? '')
        }
      />
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
