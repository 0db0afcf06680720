import { answersExplained } from '../../domain/manual/answers.ts';
import { type FactKey, fieldInfo } from '../../domain/model/fields.ts';
import { surveyWords } from '../../domain/survey/words.ts';
import { Unfolded } from '../parts/Unfolded.tsx';

/** What the answers to a question mean, folded away until somebody wants it. It pushes what is below; it covers nothing. */
export function AnswersMean({ fact, brief = false }: { fact: FactKey; brief?: boolean }) {
  const explained = answersExplained(fact);
  if (explained.length === 0) return null;
  return (
    <div className="answers-mean">
      <Unfolded
        summary={
          <span>
            {brief ? surveyWords.meanings : surveyWords.whatTheyMean}
            <span className="visually-hidden"> {fieldInfo(fact).label}</span>
          </span>
        }
      >
        <dl>
          {explained.map(({ term, says }) => (
            <div key={term}>
              <dt>{term}</dt>
              <dd>{says}</dd>
            </div>
          ))}
        </dl>
      </Unfolded>
    </div>
  );
}
