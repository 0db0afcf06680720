import { useId, useState } from 'react';
import type { Fact } from '../../domain/model/fact.ts';
import { type FactKey, fieldInfo } from '../../domain/model/fields.ts';
import type { FindingWords } from '../../domain/decide/report.ts';
import { readFact } from '../../domain/survey/readFact.ts';
import { choicesOf, shownValue } from './answers.ts';

interface Props {
  readonly fact: FactKey;
  readonly value: Fact<unknown> | undefined;
  /** Where an assumption came from, when the value is one that was not entered here. */
  readonly assumedFrom?: string | undefined;
  readonly findings?: readonly FindingWords[];
  /** Stores the answer; a returned sentence says why it was refused. */
  readonly onAnswer: (fact: Fact<string | number | boolean> | null) => string | undefined;
  /** Ask as a whole question, with big rows; otherwise as a compact field. */
  readonly asQuestion?: boolean;
}

/** One question with its answer, its standing, and what contradicts it. */
export function FactField({ fact, value, assumedFrom, findings = [], onAnswer, asQuestion = false }: Props) {
  const info = fieldInfo(fact);
  const id = useId();
  const [problem, setProblem] = useState('');
  const choices = choicesOf(fact);
  const stored = shownValue(value);
  const answer = (text: string) => {
    const read = readFact(fact, text);
    const says = read.ok ? onAnswer(read.fact) : read.says;
    setProblem(says ?? '');
    return says === undefined;
  };
  const label = asQuestion ? info.ask : info.label;
  const described = `${id}help`;
  const short = choices !== undefined && (choices.length <= 2 || asQuestion);

  return (
    <div className="field fact-field" data-fact={fact}>
      {short ? (
        <fieldset className="field" aria-describedby={described}>
          <legend>{label}</legend>
          <div className={choices.length <= 3 ? 'answer' : 'choices choices-wide'}>
            {[...choices, { value: '', label: choices.length <= 3 ? 'Not known' : 'Not surveyed' }].map(
              (choice) => (
                <label key={choice.value} className={choices.length <= 3 ? 'answer-cell' : 'choice'}>
                  <input
                    type="radio"
                    className={choices.length <= 3 ? 'visually-hidden' : undefined}
                    name={id}
                    checked={stored === choice.value}
                    onChange={() => answer(choice.value)}
                  />
                  <span>{choice.label}</span>
                </label>
              ),
            )}
          </div>
        </fieldset>
      ) : (
        <>
          <label htmlFor={id} className="field-label">
            {label}
          </label>
          {choices ? (
            <select
              id={id}
              className="input"
              aria-describedby={described}
              value={stored}
              onChange={(event) => answer(event.target.value)}
            >
              <option value="">Not surveyed</option>
              {choices.map((choice) => (
                <option key={choice.value} value={choice.value}>
                  {choice.label}
                </option>
              ))}
            </select>
          ) : (
            <AmountInput
              key={stored}
              id={id}
              described={described}
              unit={info.unit ?? ''}
              stored={stored}
              invalid={problem !== ''}
              onText={answer}
            />
          )}
        </>
      )}
      <div id={described}>
        {info.help && (asQuestion || stored === '') && <p className="field-help">{info.help}</p>}
        <Standing value={value} assumedFrom={assumedFrom} onConfirm={answer} stored={stored} />
      </div>
      {problem !== '' && (
        <p role="alert" className="field-error">
          {problem}
        </p>
      )}
      {findings.map((finding) => (
        <p key={finding.sentence} className="field-error">
          {finding.sentence} <span className="mark">{finding.ruleId}</span>
        </p>
      ))}
    </div>
  );
}

/** A field of its own for each stored value, so an undo shows. Text while it is typed; it becomes a number when the field is left or Enter is pressed, never before. */
function AmountInput(props: {
  id: string;
  described: string;
  unit: string;
  stored: string;
  invalid: boolean;
  onText: (text: string) => boolean;
}) {
  const [draft, setDraft] = useState(props.stored);
  return (
    <span className="with-unit">
      <input
        id={props.id}
        className="input"
        inputMode="text"
        aria-describedby={props.described}
        aria-invalid={props.invalid}
        placeholder="Not surveyed"
        value={draft}
        onChange={(event) => setDraft(event.target.value)}
        onBlur={() => draft !== props.stored && props.onText(draft)}
        onKeyDown={(event) => {
          if (event.key === 'Enter') props.onText(draft);
        }}
      />
      <span className="dim">{props.unit}</span>
    </span>
  );
}

function Standing(props: {
  value: Fact<unknown> | undefined;
  assumedFrom: string | undefined;
  stored: string;
  onConfirm: (text: string) => boolean;
}) {
  const from = props.value?.is === 'assumed' ? props.value.from : props.assumedFrom;
  if (from === undefined) return null;
  return (
    <p className="field-standing value-assumed">
      Assumed: {from}.{' '}
      {props.value?.is === 'assumed' && (
        <button
          type="button"
          className="button button-quiet button-small"
          onClick={() => props.onConfirm(props.stored)}
        >
          Confirm
        </button>
      )}
    </p>
  );
}
