/** A list of marks breaks between marks and nowhere else. */
export function Marks({ marks }: { marks: readonly string[] }) {
  return (
    <>
      {marks.map((mark, index) => (
        <span key={mark}>
          <span className="mark">{mark}</span>
          {index < marks.length - 1 && ', '}
        </span>
      ))}
    </>
  );
}
