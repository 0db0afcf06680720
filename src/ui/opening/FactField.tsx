import { useId, useState } from 'react';
import type { AnyFact } from '../../domain/model/fact.ts';
import { type FactKey, fieldInfo, type AnyValue } from '../../domain/model/fields.ts';
import type { Opening } from '../../domain/model/project.ts';
import type { FindingWords } from '../../domain/words/report.ts';
import type { Borrowed } from '../../domain/survey/answers.ts';
import { choiceGroupsOf } from '../../domain/survey/choiceGroups.ts';
import { readFact } from '../../domain/survey/readFact.ts';
import { AmountInput } from './AmountInput.tsx';
import { AnswersMean } from './AnswersMean.tsx';
import { ChoiceSelect, YesNo } from './ChoiceInputs.tsx';
import { shownValue } from './answers.ts';
import { placeOfFact } from './placeOfFact.ts';
import type { SurveyFact } from './useAnswer.ts';

interface Props {
  readonly fact: FactKey;
  /** Whose fact it is; null for the building. */
  readonly of: Pick<Opening, 'id' | 'mark'> | null;
  readonly value: AnyFact | undefined;
  /** What stands in while nothing was entered here. */
  readonly borrowed?: Borrowed | undefined;
  readonly findings?: readonly FindingWords[];
  /** Stores the answer; a returned sentence says why it was refused. */
  readonly onAnswer: (fact: SurveyFact | null) => string | undefined;
}

/** One fact with its standing, and what contradicts it. */
export function FactField({ fact, of, value, borrowed, findings = [], onAnswer }: Props) {
  const info = fieldInfo(fact);
  const id = useId();
  const [problem, setProblem] = useState('');
  const groups = choiceGroupsOf(fact);
  const stored = shownValue(value);
  const answer = (text: string) => {
    const read = readFact(fact, text);
    const says = read.ok ? onAnswer(read.fact) : read.says;
    setProblem(says ?? '');
    return says;
  };
  const confirm = (sure: AnyValue) => setProblem(onAnswer({ is: 'known', value: sure }) ?? '');
  const named = { id, described: `${id}help`, label: info.label, stored, onText: answer };

  return (
    <div className="field fact-field" data-fact={fact}>
      {info.kind === 'yesNo' ? (
        <YesNo {...named} />
      ) : groups ? (
        <ChoiceSelect {...named} groups={groups} />
      ) : (
        <AmountInput
          {...named}
          fact={fact}
          at={placeOfFact(of, fact)}
          unit={info.unit ?? ''}
          invalid={problem !== ''}
        />
      )}
      <div id={`${id}help`}>
        {info.help && (stored === '' || stored === '?') && <p className="field-help">{info.help}</p>}
        {value?.is === 'assumed' && (
          <Assumed words={value.from} label={info.label} onConfirm={() => confirm(value.value)} />
        )}
        {value === undefined && borrowed?.assumed && (
          <Assumed
            words={`${borrowed.words} — ${borrowed.from}`}
            label={info.label}
            onConfirm={() => confirm(borrowed.value)}
          />
        )}
        {value === undefined && borrowed && !borrowed.assumed && (
          <p className="field-standing">
            {borrowed.words} — {borrowed.from}
          </p>
        )}
      </div>
      <AnswersMean fact={fact} brief />
      {problem !== '' && (
        <p role="alert" className="field-error">
          {problem}
        </p>
      )}
      {findings.map((finding) => (
        <p key={finding.sentence} className="field-error">
          <span>
            {finding.sentence} <span className="mark">{finding.ruleId}</span>
          </span>
        </p>
      ))}
    </div>
  );
}

/** An assumption, where it comes from, and one tap that makes it known. */
function Assumed(props: { words: string; label: string; onConfirm: () => void }) {
  return (
    <p className="field-standing value-assumed row">
      <span>Assumed: {props.words}</span>
      <button
        type="button"
        className="button button-small"
        aria-label={`Confirm ${props.label}`}
        onClick={props.onConfirm}
      >
        Confirm
      </button>
    </p>
  );
}
