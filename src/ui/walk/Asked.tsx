import type { RefObject } from 'react';
import type { DecisionReport } from '../../domain/words/report.ts';
import { factAt } from '../../domain/model/fact.ts';
import { type FactKey, fieldInfo } from '../../domain/model/fields.ts';
import type { Opening, Project } from '../../domain/model/project.ts';
import type { Preset } from '../../domain/survey/look.ts';
import { askedForOrder } from '../../domain/survey/nextQuestion.ts';
import { canBeShown, photoPlace, photoWords } from '../../domain/survey/photos.ts';
import { factsToWrite, progressInWords } from '../../domain/survey/round.ts';
import { surveyWords } from '../../domain/survey/words.ts';
import { useStore } from '../context.ts';
import { Question } from '../opening/Question.tsx';
import { useAnswer } from '../opening/useAnswer.ts';
import { LookQuestion } from './LookQuestion.tsx';
import { PhotoButton } from '../photos/PhotoButton.tsx';
import type { Asking } from './useStop.ts';

interface Props {
  readonly project: Project;
  readonly opening: Opening;
  readonly asking: Asking;
  readonly report: DecisionReport;
  /** Said over a question that no decision waits for. */
  readonly forOrder: boolean;
  /** An answer that is being corrected, in place of the next question. */
  readonly again: FactKey | null;
  readonly onAgain: (key: FactKey | null) => void;
  readonly headingRef: RefObject<HTMLHeadingElement | null>;
}

/** The question at this moment: a look, a single fact, or an answer that is corrected. */
export function Asked({ project, opening, asking, report, forOrder, again, onAgain, headingRef }: Props) {
  const store = useStore();
  const answer = useAnswer(opening);
  const { ask, stop, refuse } = asking;
  const key = again ?? (ask?.kind === 'fact' ? ask.key : undefined);
  // A fact is shown by itself, a look by the place it is taken at.
  const shown = key === undefined ? stop && photoPlace(stop.station) : canBeShown(key) ? key : undefined;
  const pick = (question: string) => (preset: Preset) =>
    store.getState().dispatch(
      `${opening.mark}: ${question}`,
      factsToWrite(preset, opening).map(({ key: fact, fact: value }) => ({
        kind: 'setFact',
        id: opening.id,
        fact,
        value,
      })),
    );
  const stored = (fact: FactKey) =>
    factAt(fieldInfo(fact).scope === 'building' ? project.building : opening.facts, fact);
  return (
    <>
      {stop && again === null && <p className="lettering walk-progress">{progressInWords(stop)}</p>}
      {forOrder && <p className="note">{askedForOrder}</p>}
      {key === undefined && ask?.kind === 'look' ? (
        <LookQuestion
          key={ask.look.id}
          look={ask.look}
          presets={ask.presets}
          refuse={surveyWords.noneOfThese}
          headingRef={headingRef}
          onPick={pick(ask.look.ask)}
          onRefuse={() => refuse(ask.look.id)}
        />
      ) : (
        key !== undefined && (
          <Question
            key={key}
            fact={key}
            of={opening}
            value={stored(key)}
            findings={report.findings.filter((finding) => finding.field === key)}
            onAnswer={(fact) => {
              const says = answer(key)(fact);
              if (says === undefined) onAgain(null);
              return says;
            }}
            headingRef={headingRef}
          >
            {again && (
              <button type="button" className="button self-start" onClick={() => onAgain(null)}>
                Leave as is
              </button>
            )}
          </Question>
        )
      )}
      {shown !== undefined && (
        <div className="row">
          <PhotoButton key={shown} opening={opening} about={shown} label={photoWords.ofThis} />
        </div>
      )}
    </>
  );
}
