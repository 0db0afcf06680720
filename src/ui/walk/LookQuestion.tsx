import { type RefObject, useId } from 'react';
import type { Look, Preset } from '../../domain/survey/look.ts';
import { surveyWords } from '../../domain/survey/words.ts';
import { LookDrawings } from '../opening/LookDrawings.tsx';

interface Props {
  readonly look: Look;
  readonly presets: readonly Preset[];
  readonly refuse: string;
  readonly note?: string;
  readonly headingRef?: RefObject<HTMLHeadingElement | null>;
  readonly onPick: (preset: Preset) => void;
  readonly onRefuse: () => void;
}

/** Several questions that one look answers; one press writes all of them. */
export function LookQuestion({ look, presets, refuse, note, headingRef, onPick, onRefuse }: Props) {
  const id = useId();
  return (
    <div className="stack question" role="group" aria-labelledby={id} data-look={look.id}>
      <div className="stack stack-tight">
        <h2 id={id} ref={headingRef} tabIndex={-1} className="question-asked">
          {look.ask}
        </h2>
        {note && <p className="remark remark-accent">{note}</p>}
        {look.help && <p className="field-help">{look.help}</p>}
      </div>
      <LookDrawings of={look.drawing} />
      <div className="answer-list">
        <div>
          {presets.map((preset) => (
            <button key={preset.label} type="button" onClick={() => onPick(preset)}>
              {preset.label}
            </button>
          ))}
        </div>
        <div className="answer-last">
          <button type="button" onClick={onRefuse}>
            {refuse}
          </button>
        </div>
      </div>
      <p className="visually-hidden">{surveyWords.onePressAll}</p>
    </div>
  );
}
