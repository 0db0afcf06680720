import { allAlone } from '../../src/app/decisionsAlone.ts';
import { createAppStore } from '../../src/app/store.ts';
import { decide, decideAll } from '../../src/domain/decide/decide.ts';
import { setNumbersOf } from '../../src/domain/sets/sets.ts';
import { known } from '../../src/domain/testing/facts.ts';
import { type Line, measure } from './measure.ts';
import { projectOf } from './openings.ts';

const perSecond = (ms: number, count: number) =>
  `${Math.round((count * 1000) / ms).toLocaleString('en')} a second`;

export function decisionsBench(): Line[] {
  const project = projectOf(2000);
  const openings = Object.values(project.openings);
  const bare = measure(15, () => {
    for (const opening of openings) decide(project, opening);
  });
  let words = 0;
  const explained = measure(9, () => {
    for (const opening of openings) {
      const { rejected, open, chosen } = decide(project, opening);
      words += rejected.length + open.length + (chosen?.score.parts.length ?? 0);
    }
  });
  if (words === 0) throw new Error('Nothing was explained.');
  return [
    { what: 'decisions, every step of the choice', figure: perSecond(bare.cpuMs, openings.length) },
    {
      what: 'decisions, and why every other candidate is out',
      figure: perSecond(explained.cpuMs, openings.length),
    },
  ];
}

export function growthBench(): Line[] {
  const sizes = [100, 1000, 5000, 20_000];
  const times = sizes.map((size) => {
    const project = projectOf(size);
    return measure(size < 5000 ? 21 : 9, () => void decideAll(project));
  });
  const exponent = slope(
    sizes.map(Math.log),
    times.map((one) => Math.log(one.cpuMs)),
  );
  const lines = sizes.map((size, index): Line => {
    const { cpuMs, wallMs } = times[index] ?? { cpuMs: 0, wallMs: 0 };
    const figure = `${cpuMs.toFixed(1)} ms of CPU, ${wallMs.toFixed(1)} ms by the clock`;
    return {
      what: `${size.toLocaleString('en')} openings decided`,
      figure,
      ...(size === 5000 && { goal: '100 ms', met: cpuMs <= 100 }),
    };
  });
  return [
    ...lines,
    { what: 'growth: time ~ openings ^', figure: exponent.toFixed(3), goal: '1.05', met: exponent <= 1.05 },
  ];
}

/** Least squares over the logarithms. */
function slope(x: readonly number[], y: readonly number[]): number {
  const mean = (of: readonly number[]) => of.reduce((sum, one) => sum + one, 0) / of.length;
  const [mx, my] = [mean(x), mean(y)];
  const over = x.reduce((sum, one, index) => sum + (one - mx) * ((y[index] ?? 0) - my), 0);
  return over / x.reduce((sum, one) => sum + (one - mx) ** 2, 0);
}

/** One answer changed in a project of 5,000, through the store and the remembered decisions, as a screen does. */
export function editBench(): Line[] {
  const project = projectOf(5000);
  let clock = 0;
  const store = createAppStore({
    project,
    clock: () => new Date(1_700_000_000_000 + clock++).toISOString(),
    ids: () => `c${clock++}`,
    by: () => 'bench',
    ready: true,
  });
  allAlone(store.getState().document.project);
  let load = 0;
  const edit = measure(25, () => {
    const done = store
      .getState()
      .dispatch('Load', [
        { kind: 'setFact', id: 'o77', fact: 'occupantLoad', value: known(1 + (load++ % 400)) },
      ]);
    if (!done.ok) throw new Error(done.says);
    allAlone(store.getState().document.project);
  });
  const ids = Object.keys(project.openings);
  const numbers = () => {
    const now = store.getState().document.project;
    return setNumbersOf(now, allAlone(now));
  };
  numbers();
  let at = 0;
  const sets = measure(25, () => {
    const id = ids[(at += 97) % ids.length] ?? '';
    const value = known(at % 2 === 0 ? 'hollowMetal' : 'woodSolidCore');
    const done = store.getState().dispatch('Leaf', [{ kind: 'setFact', id, fact: 'leafMaterial', value }]);
    if (!done.ok) throw new Error(done.says);
    if (numbers().size === 0) throw new Error('No opening has a set.');
  });
  return [
    {
      what: 'one edit among 5,000 openings, every decision and set number at hand again',
      figure: `${sets.cpuMs.toFixed(1)} ms of CPU, ${sets.wallMs.toFixed(1)} ms by the clock`,
      goal: 'a frame, 16 ms of CPU',
      met: sets.cpuMs <= 16,
    },
    {
      what: 'one edit among 5,000 openings, all decisions at hand again',
      figure: `${edit.cpuMs.toFixed(1)} ms of CPU, ${edit.wallMs.toFixed(1)} ms by the clock`,
    },
  ];
}
