interface Props {
  readonly pairs: readonly { readonly label: string; readonly value: string }[];
}

/** Short facts side by side, each under its name. */
export function Pairs({ pairs }: Props) {
  return (
    <dl className="pairs">
      {pairs.map((pair) => (
        <div key={pair.label}>
          <dt>{pair.label}</dt>
          <dd>{pair.value}</dd>
        </div>
      ))}
    </dl>
  );
}
