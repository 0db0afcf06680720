import { fireEvent, screen, within } from '@testing-library/react';
import { beforeEach, expect, test, vi } from 'vitest';
import { IDBObjectStore } from 'fake-indexeddb';
import { show, projectOf } from '../../../tests/screens/show.tsx';
import { jpegOf } from '../../../tests/screens/pictures.ts';
import { useApp } from '../context.ts';
import { Photos } from './Photos.tsx';

beforeEach(() => {
  vi.stubGlobal(
    'URL',
    Object.assign(URL, { createObjectURL: () => 'blob:picture', revokeObjectURL: () => undefined }),
  );
});

function Screen() {
  const project = useApp((state) => state.document.project);
  const opening = project.openings['101'];
  return opening ? <Photos project={project} opening={opening} atFirst /> : null;
}
const jpeg = (name: string, ...bytes: readonly number[]) =>
  new File([jpegOf(...bytes)], name, { type: 'image/jpeg' });
/** The first database of a page takes a while on a busy machine. */
const soon = { timeout: 15_000 };
const unknown = { is: 'unknown' } as const;

test('a photo is taken, captioned, moved to a place, pointed at by keyboard and removed; undo brings it back', async () => {
  const { user, store } = show(<Screen />, projectOf({ '101': {} }));
  await user.upload(screen.getByLabelText('Choose pictures'), [jpeg('a.jpg', 1), jpeg('b.jpg', 2)]);
  await screen.findByText('2', {}, soon);
  const [first] = await screen.findAllByRole('button', { name: 'Photo, the opening', expanded: false }, soon);
  await user.click(first as HTMLElement);
  expect(await screen.findByRole('img', { name: 'Photo, the opening' }, soon)).toBeVisible();
  await user.type(screen.getByRole('textbox', { name: 'Caption' }), 'worn');
  await user.selectOptions(screen.getByRole('combobox', { name: 'Shows' }), 'Head');
  screen.getByRole('button', { name: 'Draw an arrow' }).focus();
  await user.keyboard('{Enter}');
  const head = screen.getByRole('button', { name: 'Head of arrow 1' });
  head.focus();
  await user.keyboard('{ArrowRight}{ArrowRight}');
  const photo = () => Object.values(store.getState().document.project.photos)[0];
  expect(photo()).toMatchObject({ caption: 'worn', about: 'head' });
  expect(Object.values(photo()?.arrows ?? {})[0]).toMatchObject({ toX: 0.54, toY: 0.5, fromX: 0.3 });
  expect(screen.getAllByText('Photo, head: worn; 1 arrow')).not.toHaveLength(0);
  await user.click(screen.getByRole('button', { name: 'Remove photo' }));
  expect(Object.keys(store.getState().document.project.photos)).toHaveLength(1);
  store.getState().undo();
  expect(Object.values(store.getState().document.project.photos).map(({ caption }) => caption)).toContain(
    'worn',
  );
});

test('what nobody could tell is offered as a photo, one press each, until it is taken', async () => {
  const { user } = show(<Screen />, projectOf({ '101': { fireLabel: unknown, wishLockdown: unknown } }));
  const missing = screen.getByRole('group', { name: 'Photos still to take' });
  await user.upload(within(missing).getByLabelText('Fire label'), jpeg('a.jpg', 3));
  expect(await screen.findByRole('button', { name: 'Photo, fire label' }, soon)).toBeVisible();
  expect(screen.queryByRole('group', { name: 'Photos still to take' })).toBeNull();
});

test('a full disk is said beside the button, and the picture waits there to be tried again', async () => {
  const { user, store } = show(<Screen />, projectOf({ '101': {} }));
  const full = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
    throw new DOMException('no room', 'QuotaExceededError');
  });
  await user.upload(screen.getByLabelText('Take a photo'), jpeg('a.jpg', 4));
  expect(await screen.findByRole('alert', {}, soon)).toHaveTextContent(
    'storage is full, so the photo is not kept',
  );
  expect(store.getState().document.project.photos).toEqual({});
  full.mockRestore();
  await user.click(screen.getByRole('button', { name: 'Try again' }));
  expect(await screen.findByRole('button', { name: 'Photo, the opening' }, soon)).toBeVisible();
  expect(screen.queryByRole('alert')).toBeNull();
});

test('a camera that is refused leaves a sentence that says what to do', () => {
  show(<Screen />, projectOf({ '101': {} }));
  fireEvent(screen.getByLabelText('Take a photo'), new Event('cancel'));
  expect(screen.getByRole('alert')).toHaveTextContent('If the camera is blocked');
});

test('a picture that is not in this browser is said where it would stand', async () => {
  const { store } = show(<Screen />, projectOf({ '101': {} }));
  const value = {
    id: 'x',
    openingId: '101',
    about: 'edge',
    caption: 'label',
    arrows: {},
    sha256: 'f'.repeat(64),
    widthPx: 3,
    heightPx: 4,
    bytes: 9,
    at: '2026-03-02T12:00:00.000Z',
    by: '',
  };
  store.getState().dispatch('photo', [{ kind: 'putPhoto', id: 'x', value }]);
  expect(await screen.findByText(/This picture is not in this browser/, {}, soon)).toBeVisible();
  expect(screen.getByText('Photo, edge and label: label')).toBeVisible();
});
