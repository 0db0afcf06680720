import { act, screen } from '@testing-library/react';
import { describe, expect, test, vi } from 'vitest';
import { projectOf, show } from '../../../tests/screens/show.tsx';
import { memoryKeeper } from '../../storage/testing/fakes.ts';
import { FactField } from '../opening/FactField.tsx';
import { SavingMark } from '../frame/SavingMark.tsx';
import { ProjectTexts } from '../project/ProjectTexts.tsx';
import { Spaces } from '../project/Spaces.tsx';
import { Amendments } from '../project/Amendments.tsx';
import { NewOpening } from '../schedule/NewOpening.tsx';
import { useApp } from '../context.ts';
import { ParkedDrafts } from './ParkedDrafts.tsx';

const door = { id: '101', mark: '101' };
function Everything({ which }: { which: 'texts' | 'amount' | 'space' | 'amendment' | 'new' | 'none' }) {
  const project = useApp((state) => state.document.project);
  return (
    <>
      <SavingMark />
      <ParkedDrafts />
      {which === 'texts' && <ProjectTexts project={project} />}
      {which === 'amount' && (
        <FactField fact="leafWidthIn" of={door} value={undefined} onAnswer={() => 'No.'} />
      )}
      {which === 'space' && <Spaces project={project} />}
      {which === 'amendment' && <Amendments project={project} />}
      {which === 'new' && <NewOpening />}
    </>
  );
}
const project = () => projectOf({ '101': {} });
const header = () => screen.getByText(/^(Saved|Not saved yet)$/).textContent;

type Shown = ReturnType<typeof show>;
const kinds: [string, Parameters<typeof Everything>[0]['which'], (shown: Shown) => Promise<HTMLElement>][] = [
  ['notes of a project', 'texts', async () => screen.findByRole('textbox', { name: 'Notes' })],
  [
    'the name of a project',
    'texts',
    async () => screen.findByRole('textbox', { name: 'Name of the project' }),
  ],
  ['an amount', 'amount', async () => screen.findByRole('textbox', { name: 'Leaf width' })],
  [
    'a new space',
    'space',
    async ({ user }) => {
      const button = screen.queryByRole('button', { name: /new space/i });
      if (button) await user.click(button);
      return screen.findByRole('textbox', { name: 'Name' });
    },
  ],
  [
    'a new amendment',
    'amendment',
    async ({ user }) => {
      const button = screen.queryByRole('button', { name: /new amendment/i });
      if (button) await user.click(button);
      return screen.findByRole('textbox', { name: /What it requires/ });
    },
  ],
  [
    'a new opening',
    'new',
    async ({ user }) => {
      const button = screen.queryByRole('button', { name: 'New opening' });
      if (button) await user.click(button);
      return screen.findByRole('textbox', { name: 'Mark' });
    },
  ],
];

/** A page that is reloaded or killed says no good-bye: the field is gone without having been left. */
describe('P2: what is typed is not lost', () => {
  test.each(kinds)('%s: not said to be saved, and found again after a crash', async (_what, which, field) => {
    const kept = memoryKeeper();
    const before = show(<Everything which={which} />, project(), {}, kept);
    expect(header()).toBe('Saved');
    const typed = await field(before);
    await before.user.type(typed, ' ZZ');
    expect(header()).toBe('Not saved yet');
    const text = (typed as HTMLInputElement).value;
    // The new page is shown while the old one still holds its field: nothing was left, nothing was said.
    document.body.replaceChildren();
    show(<Everything which={which} />, project(), {}, kept);
    expect(header()).toBe('Not saved yet');
    const again = screen.getAllByRole('textbox').find((one) => (one as HTMLInputElement).value === text);
    expect(again).toBeInTheDocument();
    expect(screen.getByText(/Typed here earlier and not saved/)).toBeInTheDocument();
  });

  test('after a change of page it is named, with its text, and can be discarded', async () => {
    const kept = memoryKeeper();
    const { user, view, app } = show(<Everything which="texts" />, project(), {}, kept);
    await user.type(screen.getByRole('textbox', { name: 'Notes' }), 'wet basement');
    view.unmount();
    const { store } = show(<Everything which="none" />, project(), {}, kept);
    expect(app.store).not.toBe(store);
    expect(screen.getByText(/Notes: “wet basement” is typed and not saved yet/)).toBeInTheDocument();
    expect(screen.getByRole('link', { name: 'Go to the field: Notes' })).toHaveAttribute('href', '#/project');
    await user.click(screen.getByRole('button', { name: /Discard it/ }));
    expect(header()).toBe('Saved');
    expect(kept.length).toBe(0);
  });

  test('kept, it is an edit and no draft any longer; discarded, the stored text is back', async () => {
    const kept = memoryKeeper();
    const { user, store } = show(<Everything which="texts" />, project(), {}, kept);
    const notes = screen.getByRole('textbox', { name: 'Notes' });
    await user.type(notes, 'dry');
    await user.tab();
    expect(store.getState().document.project.notes).toBe('dry');
    expect([header(), kept.length]).toEqual(['Saved', 0]);
    act(() => void store.getState().undo());
    expect(notes).toHaveValue('');
  });

  test('found again, one press makes an edit of it', async () => {
    const kept = memoryKeeper();
    const first = show(<Everything which="texts" />, project(), {}, kept);
    await first.user.type(screen.getByRole('textbox', { name: 'Jurisdiction' }), 'Elm County');
    document.body.replaceChildren();
    const { user, store } = show(<Everything which="texts" />, project(), {}, kept);
    await user.click(screen.getByRole('button', { name: 'Save it' }));
    expect(store.getState().document.project.jurisdiction).toBe('Elm County');
    expect(header()).toBe('Saved');
  });

  test('a draft belongs to its project', async () => {
    const kept = memoryKeeper();
    const { user, store } = show(<Everything which="texts" />, project(), {}, kept);
    await user.type(screen.getByRole('textbox', { name: 'Notes' }), 'of the house');
    act(() => store.getState().replaceProject({ ...project(), id: 'q' }));
    expect([header(), screen.getByRole<HTMLTextAreaElement>('textbox', { name: 'Notes' }).value]).toEqual([
      'Saved',
      '',
    ]);
  });
});

test('a field that cannot be edited says so in words and takes no key', async () => {
  const { user, store } = show(<Everything which="texts" />, project());
  act(() => store.getState().setSaving({ kind: 'readOnly', says: 'It is open elsewhere.' }));
  const notes = screen.getByRole('textbox', { name: 'Notes' });
  await user.type(notes, 'no');
  expect(notes).toHaveValue('');
  expect(notes).toHaveAccessibleDescription(/Read only here/);
});

test('where a draft cannot be kept, leaving the page asks', async () => {
  const full = {
    ...memoryKeeper(),
    setItem: () => {
      throw new DOMException('full', 'QuotaExceededError');
    },
  };
  const { user, app } = show(<Everything which="texts" />, project(), {}, full);
  await app.start();
  const asks = () => {
    const event = new Event('beforeunload', { cancelable: true });
    window.dispatchEvent(event);
    return event.defaultPrevented;
  };
  expect(asks()).toBe(false);
  await user.type(screen.getByRole('textbox', { name: 'Notes' }), 'x');
  expect(asks()).toBe(true);
  vi.restoreAllMocks();
  await app.close();
});
