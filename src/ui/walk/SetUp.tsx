import { useState } from 'react';
import type { Project } from '../../domain/model/project.ts';
import { isUsualLook, setUpEdits, setUpLeft, setUpWords } from '../../domain/survey/setUp.ts';
import { useStore } from '../context.ts';
import { LookQuestion } from './LookQuestion.tsx';

/** Before the first door: the building and its usual, a press each; what is passed over is asked at the doors. */
export function SetUp({ project }: { project: Project }) {
  const store = useStore();
  const [passedOver, setPassedOver] = useState<ReadonlySet<string>>(new Set());
  const left = setUpLeft(project, passedOver);
  const [look] = left;
  if (!look) return null;
  return (
    <section className="section stack" aria-label={setUpWords.title}>
      <p className="lettering walk-progress">
        {setUpWords.title}; {left.length} to go
      </p>
      <LookQuestion
        key={look.id}
        look={look}
        presets={look.presets}
        note={isUsualLook(look) ? setUpWords.usual : setUpWords.building}
        refuse={setUpWords.later}
        onPick={(preset) => store.getState().dispatch(look.ask, setUpEdits(preset))}
        onRefuse={() => setPassedOver((before) => new Set([...before, look.id]))}
      />
    </section>
  );
}
