import type { CoverSheet } from '../../exporting/sheets/coverSheet.ts';
import { Pairs } from './Pairs.tsx';

export function Cover({ sheet }: { sheet: CoverSheet }) {
  return (
    <div className="cover">
      <div className="cover-seal">Space for a seal</div>
      <p className="cover-name">{sheet.name}</p>
      <p className="cover-standing">{sheet.standing}</p>
      <Pairs pairs={sheet.facts} />
      <section>
        <h3>Contents</h3>
        <ol>
          {sheet.contents.map((name) => (
            <li key={name}>{name}</li>
          ))}
        </ol>
      </section>
      <section>
        <h3>Missing for a bid</h3>
        <ul>
          {sheet.missing.map((says) => (
            <li key={says}>{says}</li>
          ))}
        </ul>
      </section>
      <section>
        <h3>Open questions</h3>
        {sheet.questions.length === 0 ? (
          <p>None that can be read off the survey.</p>
        ) : (
          <ol>
            {sheet.questions.map((says) => (
              <li key={says}>{says}</li>
            ))}
          </ol>
        )}
      </section>
    </div>
  );
}
