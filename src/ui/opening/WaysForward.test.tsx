import { screen } from '@testing-library/react';
import { expect, test } from 'vitest';
import { demoProject } from '../../../scripts/demo/demoProject.ts';
import { show } from '../../../tests/screens/show.tsx';
import { decide } from '../../domain/decide/decide.ts';
import { reportOf } from '../../domain/words/report.ts';
import { answered } from '../../domain/decide/whatMatters.ts';
import { DecisionPanel } from './DecisionPanel.tsx';

const demo = demoProject();

/** The electrical room pair of the demo, where no hardware works, with the door type told. */
function opened(doorType: 'pair' | 'slidingManual', panicPresent = false) {
  const found = Object.values(demo.openings).find((one) => one.mark === '119');
  if (!found) throw new Error('The demo has no opening 119.');
  const [, typed] = answered(demo, found, 'doorType', doorType);
  const [, opening] = answered(demo, typed, 'panicPresent', panicPresent);
  const decision = decide(demo, opening);
  show(
    <DecisionPanel project={demo} opening={opening} decision={decision} report={reportOf(decision)} />,
    demo,
  );
}
const heading = { name: 'What would make it work' };

test('where no hardware works, the least work after which something would', () => {
  opened('pair');
  expect(screen.getByRole('heading', heading)).toBeVisible();
  expect(screen.getByText(/^Exit device \(panic hardware\)/)).toBeVisible();
});

test('where no work helps, it says so', () => {
  opened('slidingManual');
  expect(screen.getByText(/^No 3 physical changes/)).toBeVisible();
});

test('where something fits, nothing of it is shown', () => {
  opened('pair', true);
  expect(screen.queryByRole('heading', heading)).toBeNull();
});
