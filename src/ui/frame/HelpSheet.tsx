import { gridKeyLines } from '../../domain/grid/keys.ts';
import {
  factHelp,
  type HelpLine,
  keysEverywhere,
  keysOnOpening,
  stateHelp,
} from '../../domain/survey/help.ts';
import { DecisionStateMark } from '../parts/DecisionStateMark.tsx';

/** What stands on the sheet of help. */
export default function HelpSheet() {
  return (
    <>
      <h3>What a decision can be</h3>
      <dl className="help-lines">
        {stateHelp.map((line) => (
          <div key={line.state}>
            <dt>
              <DecisionStateMark state={line.state} />
            </dt>
            <dd>{line.says}</dd>
          </div>
        ))}
      </dl>
      <h3>Words</h3>
      <Lines lines={factHelp} />
      <h3>Keys on the schedule</h3>
      <Lines lines={gridKeyLines} keys />
      <h3>Keys at an opening</h3>
      <Lines lines={keysOnOpening} keys />
      <h3>Keys everywhere</h3>
      <Lines lines={keysEverywhere} keys />
    </>
  );
}

function Lines({ lines, keys = false }: { lines: readonly HelpLine[]; keys?: boolean }) {
  return (
    <dl className="help-lines">
      {lines.map((line) => (
        <div key={line.name}>
          <dt>{keys ? <kbd>{line.name}</kbd> : line.name}</dt>
          <dd>{line.says}</dd>
        </div>
      ))}
    </dl>
  );
}
