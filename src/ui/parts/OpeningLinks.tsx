import { linkTo } from '../../app/addresses.ts';

interface Props {
  readonly openings: readonly { readonly id: string; readonly mark: string }[];
}

/** The openings a sentence is about, each a way to its page. */
export function OpeningLinks({ openings }: Props) {
  if (openings.length === 0) return null;
  return (
    <p className="row">
      {openings.map((opening) => (
        <a key={opening.id} className="mark" href={linkTo('opening', opening.id)}>
          {opening.mark}
        </a>
      ))}
    </p>
  );
}
