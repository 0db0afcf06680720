import { authorityAnswers, type SaidAt } from '../../domain/review/packet.ts';
import type { PacketOpening, PacketQuestion, PacketSheet } from '../../exporting/sheets/packetSheet.ts';
import { Drawn } from './Drawn.tsx';
import { Marks } from './Marks.tsx';
import { Pairs } from './Pairs.tsx';
import { OnFile } from './SignLines.tsx';

interface Props {
  readonly sheet: PacketSheet;
  readonly letter: string;
}

/** A letter, the questions with a box under each for the answer, and each opening they concern. */
export function PacketSheets({ sheet, letter }: Props) {
  return (
    <>
      {letter !== '' && <p className="packet-letter">{letter}</p>}
      {sheet.questions.map((question) => (
        <OneQuestion key={question.number} question={question} />
      ))}
      {sheet.openings.map((opening) => (
        <OneOpening key={opening.id} opening={opening} />
      ))}
    </>
  );
}

function OneQuestion({ question }: { question: PacketQuestion }) {
  return (
    <section className="packet-question" aria-label={`Question ${question.number}`}>
      <h3>
        Question {question.number}. {question.title}
      </h3>
      <Said lines={question.asked} />
      {question.sections.length > 0 && <p className="source">{question.sections.join('; ')}</p>}
      {question.proposed.length > 0 && (
        <>
          <h4>Proposed answer</h4>
          <Said lines={question.proposed} />
        </>
      )}
      {question.onFile.map((mark) => (
        <OnFile key={mark.id} mark={mark} />
      ))}
      <AnswerBox />
    </section>
  );
}

function Said({ lines }: { lines: readonly SaidAt[] }) {
  return (
    <ul>
      {lines.map(({ says, marks }) => (
        <li key={says}>
          {marks.length > 0 && (
            <>
              <Marks marks={marks} />:{' '}
            </>
          )}
          {says}
        </li>
      ))}
    </ul>
  );
}

function AnswerBox() {
  return (
    <div className="packet-answer keep">
      <h4>Answer of the authority</h4>
      <ul>
        {authorityAnswers.map((answer) => (
          <li key={answer}>
            <span className="test-box" /> {answer}
          </li>
        ))}
      </ul>
      <div className="packet-lines">
        {['Conditions or reason', 'Name and title', 'Document', 'Date', 'Signature'].map((line) => (
          <div key={line} className="write-on">
            {line}
          </div>
        ))}
      </div>
    </div>
  );
}

function OneOpening({ opening }: { opening: PacketOpening }) {
  return (
    <section className="packet-opening" aria-label={`Opening ${opening.mark}`}>
      <h3>
        <span className="mark">{opening.mark}</span> {opening.place}
      </h3>
      <p>
        <strong>{opening.questions}.</strong> {opening.proposed}
      </p>
      <div className="opening-drawings">
        <Drawn drawings={opening.drawings} />
      </div>
      {opening.table.length > 0 && (
        <table className="schedule set-table packet-table">
          <thead>
            <tr>
              <th scope="col">Condition</th>
              <th scope="col">What the opening does</th>
            </tr>
          </thead>
          <tbody>
            {opening.table.map((row) => (
              <tr key={row.name}>
                <th scope="row">{row.name}</th>
                <td>{row.says}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <h4>Facts relied on</h4>
      <Pairs pairs={opening.facts} />
    </section>
  );
}
