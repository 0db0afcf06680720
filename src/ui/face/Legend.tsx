import { symbolGroups } from '../../exporting/drawing/symbols.ts';
import { SymbolDrawing } from './Symbol.tsx';

/** What every symbol means. Printed with the schedule, so a stranger with a photocopy can read it. */
export function Legend({
  groups,
  only = symbolGroups,
}: {
  groups?: readonly string[];
  only?: typeof symbolGroups;
}) {
  return (
    <div className="stack">
      {only
        .filter((group) => groups === undefined || groups.includes(group.id))
        .map((group) => (
          <section key={group.id} className="stack stack-tight" aria-label={`Legend: ${group.title}`}>
            <h3>{group.title}</h3>
            <ul className="legend">
              {Object.entries(group.symbols).map(([id, symbol]) => (
                <li key={id}>
                  <SymbolDrawing symbol={symbol} />
                  <span className="legend-word">
                    {symbol.word}
                    <span className="legend-meaning">{symbol.meaning}</span>
                  </span>
                </li>
              ))}
            </ul>
          </section>
        ))}
    </div>
  );
}
