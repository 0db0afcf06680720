import { screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test, vi } from 'vitest';
import { demoProject } from '../../../scripts/demo/demoProject.ts';
import { show } from '../../../tests/screens/show.tsx';
import { openingsInOrder } from '../../domain/model/project.ts';
import { decisionsFormat } from '../../exporting/jsonl/schema.ts';
import { ExportTables } from './ExportTables.tsx';

test('the decisions are saved as one document for other programs', async () => {
  const demo = demoProject();
  const few = openingsInOrder(demo).slice(0, 4);
  const project = { ...demo, openings: Object.fromEntries(few.map((one) => [one.id, one])) };
  const saved: Blob[] = [];
  vi.stubGlobal(
    'URL',
    Object.assign(URL, { createObjectURL: (blob: Blob) => void saved.push(blob), revokeObjectURL: () => {} }),
  );
  show(<ExportTables />, project);
  await userEvent.click(screen.getByRole('button', { name: 'Save Decisions for other programs as JSON' }));
  await waitFor(() => expect(saved).toHaveLength(1));
  expect(saved[0]?.type).toBe('application/json');
  const file = JSON.parse((await saved[0]?.text()) ?? '') as { format: string; openings: { mark: string }[] };
  expect(file.format).toBe(decisionsFormat);
  expect(file.openings.map(({ mark }) => mark)).toEqual(few.map(({ mark }) => mark));
});
