import { type ReactNode, type RefObject, useId, useState } from 'react';
import { howToWrite } from '../../domain/survey/amounts.ts';
import { choiceGroupsOf } from '../../domain/survey/choiceGroups.ts';
import { drawingOfFact } from '../../domain/survey/lookDrawings.ts';
import { readFact } from '../../domain/survey/readFact.ts';
import { surveyWords } from '../../domain/survey/words.ts';
import type { FindingWords } from '../../domain/words/report.ts';
import type { Opening } from '../../domain/model/project.ts';
import type { Fact } from '../../domain/model/fact.ts';
import { type FactKey, fieldInfo } from '../../domain/model/fields.ts';
import { AmountAnswer } from './AmountAnswer.tsx';
import { shownValue } from './answers.ts';
import { AnswerList } from './AnswerList.tsx';
import { AnswersMean } from './AnswersMean.tsx';
import { LookDrawings } from './LookDrawings.tsx';
import { placeOfFact } from './placeOfFact.ts';
import './question.css';
import type { SurveyFact } from './useAnswer.ts';

interface Props {
  readonly fact: FactKey;
  readonly of: Pick<Opening, 'id' | 'mark'>;
  readonly value: Fact<unknown> | undefined;
  readonly findings?: readonly FindingWords[];
  readonly onAnswer: (fact: SurveyFact | null) => string | undefined;
  readonly headingRef?: RefObject<HTMLHeadingElement | null>;
  /** Beside the answers: a way to leave the question as it is. */
  readonly children?: ReactNode;
}

/** One whole question. Each answer is a button as high as a thumb; one press answers. */
export function Question({ fact, of, value, findings = [], onAnswer, headingRef, children }: Props) {
  const info = fieldInfo(fact);
  const id = useId();
  const [problem, setProblem] = useState('');
  const stored = shownValue(value);
  const groups = choiceGroupsOf(fact);
  const answer = (text: string) => {
    const read = readFact(fact, text);
    const says = read.ok ? onAnswer(read.fact) : read.says;
    setProblem(says ?? '');
    return says;
  };
  const cannotTell = (
    <button type="button" aria-pressed={stored === '?'} onClick={() => answer('?')}>
      {surveyWords.cannotTell}
    </button>
  );
  return (
    <div
      className="stack question"
      role="group"
      aria-labelledby={id}
      aria-describedby={`${id}help`}
      data-fact={fact}
    >
      <div className="stack stack-tight">
        <h2 id={id} ref={headingRef} tabIndex={-1} className="question-asked">
          {info.ask}
        </h2>
        <div id={`${id}help`}>
          {info.scope === 'building' && <p className="remark remark-accent">{surveyWords.wholeBuilding}</p>}
          {info.help && <p className="field-help">{info.help}</p>}
          {info.kind === 'number' && <p className="field-help">{howToWrite(fact)}</p>}
        </div>
      </div>
      <LookDrawings of={drawingOfFact(fact)} />
      {groups ? (
        <AnswerList groups={groups} stored={stored} onAnswer={answer} cannotTell={cannotTell} />
      ) : (
        <AmountAnswer
          fact={fact}
          at={placeOfFact(of, fact)}
          labelledBy={id}
          stored={stored}
          invalid={problem !== ''}
          onAnswer={answer}
          cannotTell={cannotTell}
        />
      )}
      <AnswersMean fact={fact} />
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
      {children}
    </div>
  );
}
