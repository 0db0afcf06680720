import { standingCautions } from '../../domain/text/cautions.ts';
import { notDecided } from '../../domain/manual/glossary.ts';
import { openingDrawings } from '../../exporting/drawing/kinds.ts';
import { Legend } from '../face/Legend.tsx';
import { KeyboardHelp } from './KeyboardHelp.tsx';
import { Words } from './Words.tsx';
import './legend.css';

/** What every sign and word means, what the keys do, and what is left to people. */
export default function LegendPage() {
  return (
    <div className="sheet">
      <div className="sheet-body stack stack-wide">
        <div className="row">
          <h1>Legend</h1>
          <button type="button" className="button button-small row-end" onClick={() => print()}>
            Print this page
          </button>
        </div>
        <section className="section stack" aria-label="Read this first">
          <h2>Read this first</h2>
          <ul className="cautions">
            {standingCautions.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
          <h3>What is not decided here</h3>
          <ul>
            {notDecided.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </section>
        <section className="section stack" aria-label="Symbols">
          <h2>Symbols</h2>
          <p className="note">A symbol never stands alone: its word is beside it, here and in print.</p>
          <Legend />
        </section>
        <section className="section stack" aria-label="Drawings">
          <h2>Drawings of an opening</h2>
          <dl className="glossary">
            {openingDrawings.map(({ name, shows, needs }) => (
              <div key={name}>
                <dt>{name}</dt>
                <dd>
                  {shows} <span className="soft">{needs}</span>
                </dd>
              </div>
            ))}
          </dl>
        </section>
        <Words />
        <section className="section stack" aria-label="Keys">
          <h2>Keys</h2>
          <KeyboardHelp />
        </section>
      </div>
    </div>
  );
}
