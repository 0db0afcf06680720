import { linkTo } from '../../app/addresses.ts';
import { type BidField, bidSchema } from '../../domain/model/bid.ts';
import type { Project } from '../../domain/model/project.ts';
import { TextField } from '../project/TextField.tsx';
import { useCommand } from '../project/useCommand.ts';

const texts = [
  { field: 'projectNumber', label: 'Project number' },
  { field: 'address', label: 'Address' },
  { field: 'drawnBy', label: 'Drawn by' },
  { field: 'checkedBy', label: 'Checked by' },
  { field: 'currency', label: 'Currency' },
  { field: 'locale', label: 'Language and country of numbers' },
] as const satisfies readonly { readonly field: BidField; readonly label: string }[];
const percents = [
  { field: 'markUpPercent', label: 'Mark-up, %' },
  { field: 'taxPercent', label: 'Tax, %' },
] as const satisfies readonly { readonly field: BidField; readonly label: string }[];

/** What stands on the cover and in the sums besides the openings. */
export function BidTerms({ project }: { project: Project }) {
  const command = useCommand();
  const keep = (field: BidField, label: string, value: string | number | null) => {
    const read = bidSchema.shape[field].safeParse(value);
    if (!read.success) return read.error.issues[0]?.message ?? 'This does not fit.';
    return command(label, [{ kind: 'setBid', value: { [field]: value } }]);
  };
  return (
    <div className="project-fields">
      {texts.map(({ field, label }) => (
        <TextField
          key={field}
          label={label}
          at={{ place: `pricing/${field}`, href: linkTo('pricing') }}
          value={project.bid[field]}
          onKeep={(text) => keep(field, label, text.trim())}
        />
      ))}
      {percents.map(({ field, label }) => (
        <TextField
          key={field}
          label={label}
          at={{ place: `pricing/${field}`, href: linkTo('pricing') }}
          value={project.bid[field] === null ? '' : String(project.bid[field])}
          onKeep={(text) => keep(field, label, text.trim() === '' ? null : Number(text))}
        />
      ))}
    </div>
  );
}
