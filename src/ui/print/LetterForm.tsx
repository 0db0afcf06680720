import { linkTo } from '../../app/addresses.ts';
import type { Project } from '../../domain/model/project.ts';
import { useCommand } from '../project/useCommand.ts';
import { TextField } from '../project/TextField.tsx';

interface Props {
  readonly project: Project;
  /** What is printed while nobody has edited it. */
  readonly offered: string;
}

/** The letter of the packet, to be edited before it is printed. */
export function LetterForm({ project, offered }: Props) {
  const command = useCommand();
  const keep = (value: string) =>
    command('Letter to the authority', [{ kind: 'setProject', field: 'letter', value }]);
  return (
    <section className="stack" aria-label="Letter to the authority">
      <h2>Letter to the authority</h2>
      <TextField
        label="Text of the letter"
        at={{ place: 'letter/authority', href: linkTo('print', 'packet') }}
        lines={14}
        value={project.letter === '' ? offered : project.letter}
        onKeep={(value) => keep(value === offered ? '' : value)}
        help="It prints first in the packet. What you change is kept with this project."
      />
      {project.letter !== '' && (
        <button type="button" className="button button-small self-start" onClick={() => keep('')}>
          Back to the text offered
        </button>
      )}
    </section>
  );
}
