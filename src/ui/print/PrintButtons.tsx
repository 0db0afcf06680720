import { pagesOf, partInWords, type PrintPart } from '../../exporting/sheets/parts.ts';
import { ProgressBar } from '../files/ProgressBar.tsx';
import type { PrintRun } from './usePrintRun.ts';

interface Props {
  readonly parts: readonly PrintPart[];
  readonly run: PrintRun;
  /** The preview shows what is chosen; before that an old print would come out. */
  readonly ready: boolean;
}

/** One print, or one for each part: then a bar says how far it is, and it can be stopped between two of them. */
export function PrintButtons({ parts, run, ready }: Props) {
  const part = parts[run.at];
  const [only] = parts;
  if (!part || !only || parts.length === 1) {
    return (
      <button
        type="button"
        className="button button-main"
        disabled={!only || !ready}
        onClick={() => window.print()}
      >
        Print
      </button>
    );
  }
  if (run.running) {
    return (
      <ProgressBar
        what={`Printing part ${run.at + 1}: ${partInWords(part)}`}
        progress={{ done: run.at, total: parts.length }}
        onStop={run.stop}
      />
    );
  }
  const pages = parts.reduce((sum, one) => sum + pagesOf(one), 0);
  return (
    <div className="stack stack-tight">
      <p className="note">
        About {pages} pages. A browser holds every page of a print in memory, so this much goes to the printer
        in {parts.length} parts, one after the other, and can be stopped between two. Each part counts its own
        pages and says which part it is.
      </p>
      <label className="field">
        <span className="field-label">Part shown below</span>
        <select className="input" value={run.at} onChange={({ target }) => run.show(Number(target.value))}>
          {parts.map((one, at) => (
            <option key={partInWords(one)} value={at}>
              {at + 1}. {partInWords(one)}
            </option>
          ))}
        </select>
      </label>
      <div className="row">
        <button type="button" className="button button-main" disabled={!ready} onClick={run.start}>
          Print all {parts.length} parts
        </button>
        <button type="button" className="button" disabled={!ready} onClick={() => window.print()}>
          Print this part
        </button>
      </div>
    </div>
  );
}
