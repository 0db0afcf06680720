import { screen, within } from '@testing-library/react';
import { expect, test } from 'vitest';
import type { Facts } from '../../domain/model/fact.ts';
import type { Opening, Project } from '../../domain/model/project.ts';
import { known } from '../../domain/testing/facts.ts';
import { projectOf, show } from '../../../tests/screens/show.tsx';
import { useApp } from '../context.ts';
import { SameAs } from './SameAs.tsx';
import { SameBut } from './SameBut.tsx';

const door = {
  doorType: known('single'),
  leafWidthIn: known(36),
  leafHeightIn: known(84),
  handing: known('LH'),
  fireLabel: known('none'),
  fireRatingMin: known(0),
  strikePrep: known('ansi478'),
} as const satisfies Facts;

const plain = projectOf({
  '1-01': door,
  '1-02': {},
  '2-03': { ...door, leafWidthIn: known(32) },
  '2-04': door,
});
const floorOf = (mark: string) => (mark.startsWith('1') ? 'a' : 'b');
const project: Project = {
  ...plain,
  floors: { a: { id: 'a', name: 'First', level: 1 }, b: { id: 'b', name: 'Second', level: 2 } },
  openings: Object.fromEntries(
    Object.entries(plain.openings).map(([id, one]) => [id, { ...one, floorId: floorOf(one.mark) }]),
  ),
};

function At({ id }: { id: string }) {
  const now = useApp((state) => state.document.project);
  const opening = now.openings[id] as Opening;
  return (
    <>
      <SameBut project={now} opening={opening} />
      <SameAs project={now} opening={opening} goesTo="walk" />
    </>
  );
}

const button = (name: string | RegExp) => screen.getByRole('button', { name });

async function choose(id: string, typed: string, mark: RegExp) {
  const shown = show(<At id={id} />, project);
  await shown.user.click(button('Same as another door, but …'));
  await shown.user.type(screen.getByRole('searchbox', { name: 'Find by mark' }), typed);
  await shown.user.click(button(mark));
  const opening = (key: string) => shown.store.getState().document.project.openings[key] as Opening;
  const marked = (said: string) =>
    Object.values(shown.store.getState().document.project.openings).find((one) => one.mark === said);
  return { ...shown, opening, marked };
}

test('a door that is here already takes over from any other, label and preparation as assumed, in one step', async () => {
  const { user, opening, store } = await choose('1-02', '203', /^2-03/);
  expect(screen.queryByRole('button', { name: /^1-01/ })).toBeNull();
  await user.click(button('Here at 1-02: take over 7 answers'));
  expect(opening('1-02').facts.leafWidthIn).toMatchObject({ is: 'assumed', value: 32, from: 'same as 2-03' });
  expect(opening('1-02').facts.fireLabel?.is).toBe('assumed');
  expect(opening('1-02').facts.strikePrep?.is).toBe('assumed');
  expect(store.getState().document.past).toHaveLength(1);
});

test('then at most four lines show what differs, and each is answered there', async () => {
  const { user, opening } = await choose('1-02', '203', /^2-03/);
  await user.click(button(/^Here at 1-02/));
  const lines = within(screen.getByRole('region', { name: 'Same as 2-03, but …' }));
  expect(lines.getAllByRole('listitem')).toHaveLength(4);
  const size = lines.getByRole('button', { name: /^Size: Leaf width 36 in/ });
  await user.click(size);
  expect(opening('1-02').facts.leafWidthIn).toMatchObject({ is: 'known', value: 36 });
  expect(opening('1-02').facts.handing?.is).toBe('assumed');
  expect(lines.getByText(/seen here/)).toBeVisible();

  await user.click(lines.getByRole('button', { name: 'Hand: something else' }));
  await user.selectOptions(lines.getByRole('combobox', { name: 'Handing' }), 'RHR');
  expect(opening('1-02').facts.handing).toMatchObject({ is: 'known', value: 'RHR' });
});

test('a new door gets the next free mark of the floor one stands on, not of the template', async () => {
  const { user, marked } = await choose('1-02', '203', /^2-03/);
  expect(screen.getByRole('textbox', { name: 'Mark' })).toHaveValue('1-03');
  await user.selectOptions(screen.getByRole('combobox', { name: 'Floor' }), 'Second');
  expect(screen.getByRole('textbox', { name: 'Mark' })).toHaveValue('2-05');
  await user.click(button('Add 2-05, the same as 2-03'));
  expect(marked('2-05')).toMatchObject({ floorId: 'b' });
});

test('a mark of another floor is asked about before it is added', async () => {
  const { user, marked } = await choose('1-02', '203', /^2-03/);
  const mark = screen.getByRole('textbox', { name: 'Mark' });
  await user.clear(mark);
  await user.type(mark, '2-09');
  expect(button(/^Add 2-09/)).toBeDisabled();
  expect(screen.getByRole('status')).toHaveTextContent('Other marks like 2-09 are on “Second”');
  await user.click(button('Put it on “Second”'));
  expect(screen.getByRole('combobox', { name: 'Floor' })).toHaveDisplayValue('Second');
  await user.selectOptions(screen.getByRole('combobox', { name: 'Floor' }), 'First');
  await user.click(button('Keep 2-09 on “First”'));
  await user.click(button('Add 2-09, the same as 2-03'));
  expect(marked('2-09')).toMatchObject({ floorId: 'a' });
});
