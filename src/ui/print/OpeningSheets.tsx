import { photoInWords, photoWords } from '../../domain/survey/photos.ts';
import { maybeNeeded } from '../../domain/words/maybe.ts';
import type { OpeningSheet } from '../../exporting/sheets/openingSheet.ts';
import { PhotoPicture } from '../photos/PhotoPicture.tsx';
import { Drawn } from './Drawn.tsx';
import { Pairs } from './Pairs.tsx';
import { Reasons } from './Reasons.tsx';
import { OnFile, SignLines } from './SignLines.tsx';
import { TitleBlock } from './TitleBlock.tsx';

/** One page per opening: taken to the door, put into a binder, handed to one trade. */
export function OpeningSheets({ sheets }: { sheets: readonly OpeningSheet[] }) {
  return sheets.map((sheet) => <OneOpening key={sheet.id} sheet={sheet} />);
}

function OneOpening({ sheet }: { sheet: OpeningSheet }) {
  return (
    <article className="opening-sheet" data-crowded={sheet.crowded || undefined} aria-label={sheet.mark}>
      {/* Head and foot stand on every page, should one opening need two. */}
      <header className="opening-sheet-head">
        <div className="opening-sheet-line">
          <h3 className="mark mark-large">{sheet.mark}</h3>
          <p className="lead">{sheet.place}</p>
        </div>
      </header>
      <OpeningBody sheet={sheet} />
      <footer className="opening-sheet-foot">
        <p className="test-arrangement">{sheet.signedFor}</p>
        <SignLines />
        <TitleBlock cells={sheet.title} />
      </footer>
    </article>
  );
}

function OpeningBody({ sheet }: { sheet: OpeningSheet }) {
  return (
    <div className="opening-sheet-body">
      <Pairs pairs={sheet.facts} />
      <Pairs pairs={sheet.leanedOn} />
      <div className="opening-drawings">
        <Drawn drawings={sheet.drawings} />
      </div>
      <section>
        <h4>
          {sheet.stateWord}: {sheet.headline}
        </h4>
        {sheet.flags.length > 0 && <p className="flag-words">{sheet.flags.join('  ·  ')}</p>}
        <Pairs pairs={sheet.arrangement} />
        <p>{sheet.stateMeans}</p>
        {sheet.why !== '' && <p>{sheet.why}</p>}
        {sheet.missing.length > 0 && (
          <p>
            <strong>Not surveyed and still needed:</strong> {sheet.missing.join(', ')}
          </p>
        )}
        {sheet.maybes.length > 0 && (
          <p>
            <strong>{maybeNeeded}:</strong> {sheet.maybes.map((one) => `${one.says} ${one.rule}`).join(' ')}
          </p>
        )}
        {sheet.notes !== '' && (
          <p>
            <strong>Notes:</strong> {sheet.notes}
          </p>
        )}
      </section>
      <div className="opening-sheet-columns">
        {sheet.remarks.length > 0 && (
          <section>
            <h4>Open comments and questions</h4>
            <ul>
              {sheet.remarks.map((says) => (
                <li key={says}>{says}</li>
              ))}
            </ul>
          </section>
        )}
        {sheet.onFile.map((mark) => (
          <OnFile key={mark.id} mark={mark} />
        ))}
        {sheet.reasons.length > 0 && (
          <section>
            <h4>For the reviewer</h4>
            <Reasons reasons={sheet.reasons} />
          </section>
        )}
        <Sentences head="Contradictions in the survey" lines={sheet.findings} />
        {sheet.work.length > 0 && (
          <section>
            <h4>Work by trade</h4>
            {sheet.work.map(({ trade, lines }) => (
              <div key={trade} className="trade-work">
                <h5>{trade}</h5>
                <ul>
                  {lines.map((line) => (
                    <li key={line.sentence}>
                      {line.sentence} {line.ruleId && <span className="mark">{line.ruleId}</span>}
                    </li>
                  ))}
                </ul>
              </div>
            ))}
          </section>
        )}
        {sheet.items.length > 0 && (
          <section className="keep">
            <h4>Hardware</h4>
            <table className="schedule set-table">
              <thead>
                <tr>
                  <th scope="col" className="num">
                    Qty
                  </th>
                  <th scope="col">Item</th>
                  <th scope="col">By</th>
                </tr>
              </thead>
              <tbody>
                {sheet.items.map((item) => (
                  <tr key={item.name}>
                    <td className="num">{item.quantityWords}</td>
                    <td>
                      {item.name} <span className="soft">{item.standard}</span>
                    </td>
                    <td>{item.trade}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </section>
        )}
        <Sentences head="Cautions" lines={sheet.cautions} />
      </div>
      {sheet.photos.length > 0 && (
        <section aria-label={photoWords.title}>
          <h4>{photoWords.title}</h4>
          <div className="opening-photos">
            {sheet.photos.map((photo) => (
              <figure key={photo.id}>
                <PhotoPicture photo={photo} isSaid />
                <figcaption>{photoInWords(photo)}</figcaption>
              </figure>
            ))}
          </div>
        </section>
      )}
    </div>
  );
}

function Sentences({ head, lines }: { head: string; lines: OpeningSheet['cautions'] }) {
  if (lines.length === 0) return null;
  return (
    <section>
      <h4>{head}</h4>
      <ul>
        {lines.map((line) => (
          <li key={line.rule + line.says}>
            {line.says} <span className="mark">{line.rule}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
