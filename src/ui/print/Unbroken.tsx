/** A line may not break inside "G-01": half a mark is another opening. */
export function Unbroken({ text }: { text: string }) {
  if (!text.includes('-')) return text;
  return text.split(/([\p{L}\p{N}]+(?:-[\p{L}\p{N}]+)+)/u).map((part, index) =>
    index % 2 === 0 ? (
      part
    ) : (
      // The parts of a text have no identity of their own.
      // oxlint-disable-next-line react/no-array-index-key
      <span key={index} className="unbroken">
        {part}
      </span>
    ),
  );
}
