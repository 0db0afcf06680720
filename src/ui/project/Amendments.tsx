import { linkTo } from '../../app/addresses.ts';
import { useState } from 'react';
import { randomIds } from '../../app/clock.ts';
import type { Amendment, Project } from '../../domain/model/project.ts';
import {
  amendmentDraftOf,
  amendmentEffects,
  amendmentTouches,
  emptyAmendment,
} from '../../domain/project/amendments.ts';
import { amendmentRule } from '../../domain/rules/amendments.ts';
import { conditionLine } from '../../domain/manual/conditionInWords.ts';
import { manualEntry } from '../../domain/manual/ruleManual.ts';
import { AmendmentForm } from './AmendmentForm.tsx';
import { useDrafted } from '../parts/useDraft.ts';
import { useDecisions } from '../useDecisions.ts';
import { useCommand } from './useCommand.ts';

/** Rules that the jurisdiction adds. They are judged with the rule book, and cited by their own source. */
export function Amendments({ project }: { project: Project }) {
  const command = useCommand();
  const [editing, setEditing] = useState<string | null>(useDrafted('amendment/'));
  const put = (amendment: Amendment) => {
    const says = command('Local amendment', [{ kind: 'putAmendment', id: amendment.id, value: amendment }]);
    if (says === undefined) setEditing(null);
    return says;
  };
  return (
    <div className="stack">
      {project.amendments.length === 0 && editing === null && (
        <p className="note">
          None entered. Ordinances and letters from the authority that add to the codes go here.
        </p>
      )}
      {project.amendments.map((amendment) =>
        editing === amendment.id ? (
          <AmendmentForm
            key={amendment.id}
            project={project}
            id={amendment.id}
            start={amendmentDraftOf(amendment)}
            button="Keep"
            onKeep={put}
            onCancel={() => setEditing(null)}
          />
        ) : (
          <AmendmentCard
            key={amendment.id}
            project={project}
            amendment={amendment}
            onEdit={() => setEditing(amendment.id)}
            onRemove={() =>
              command('Remove a local amendment', [{ kind: 'putAmendment', id: amendment.id, value: null }])
            }
          />
        ),
      )}
      {editing === 'new' ? (
        <NewAmendment project={project} onKeep={put} onCancel={() => setEditing(null)} />
      ) : (
        <div className="row">
          <button type="button" className="button" onClick={() => setEditing('new')}>
            New amendment
          </button>
        </div>
      )}
    </div>
  );
}

/** The id is drawn once, so that a refused amendment tried again is the same one. */
function NewAmendment(props: {
  project: Project;
  onKeep: (amendment: Amendment) => string | undefined;
  onCancel: () => void;
}) {
  const [id] = useState(randomIds);
  return <AmendmentForm {...props} id={id} isNew start={emptyAmendment} button="Add" />;
}

function AmendmentCard(props: {
  project: Project;
  amendment: Amendment;
  onEdit: () => void;
  onRemove: () => string | undefined;
}) {
  const { project, amendment } = props;
  const { decisions } = useDecisions();
  const [problem, setProblem] = useState('');
  const clause = manualEntry(amendmentRule(amendment), project.basis).clauses[0];
  return (
    <article className="remark stack stack-tight">
      <span className="lettering">{amendmentEffects[amendment.effect]}</span>
      <p>{amendment.says}</p>
      <p className="note">
        {amendment.source}
        {amendment.standard !== undefined && `. From ${amendment.standard}`}
        {clause && `. When: ${conditionLine(clause.when)}. Of: ${clause.of}.`}
      </p>
      <p className="note">{amendmentTouches(project, amendment, decisions)}</p>
      <div className="row">
        <button type="button" className="button button-small" onClick={props.onEdit}>
          Edit<span className="visually-hidden"> amendment of {amendment.source}</span>
        </button>
        <button
          type="button"
          className="button button-small button-quiet"
          onClick={() => setProblem(props.onRemove() ?? '')}
        >
          Remove<span className="visually-hidden"> amendment of {amendment.source}</span>
        </button>
        <a href={linkTo('rules', `LOCAL-${amendment.id}`)}>Where it was triggered</a>
      </div>
      {problem !== '' && (
        <p role="alert" className="field-error">
          {problem}
        </p>
      )}
    </article>
  );
}
