import { screen, within } from '@testing-library/react';
import { beforeAll, describe, expect, test, vi } from 'vitest';
import { known } from '../../domain/testing/facts.ts';
import { newOpening, newProject, newSpace } from '../../domain/model/newProject.ts';
import type { Project } from '../../domain/model/project.ts';
import { show } from '../../../tests/screens/show.tsx';
import { LoadsAndExits } from './LoadsAndExits.tsx';

const music = {
  ...newSpace('m', 'Music room'),
  floorId: 'f',
  use: 'classroom' as const,
  areaFt2: 1120,
};
const project: Project = {
  ...newProject('p', 'House'),
  building: { occupancyGroup: known('E') },
  floors: { f: { id: 'f', name: 'Ground floor', level: 1 } },
  spaces: {
    m: music,
    c: { ...newSpace('c', 'Corridor'), floorId: 'f', kind: 'corridor' },
    s: { ...newSpace('s', 'Stair'), kind: 'stair' },
  },
  openings: {
    o: {
      ...newOpening('o', '101'),
      fromSpaceId: 'c',
      toSpaceId: 'm',
      facts: { egressRole: known('exitAccess'), doorType: known('single'), clearWidthIn: known(34) },
    },
  },
};

// jsdom lays nothing out, so there is nowhere to scroll to.
beforeAll(() => {
  Element.prototype.scrollIntoView = vi.fn<() => void>();
});

describe('loads and exits', () => {
  test('a row tells people, ways out, width and what was found, and opens what they rest on', async () => {
    const { user } = show(<LoadsAndExits project={project} />, project);
    const row = screen.getByRole('row', { name: /^Music room/ });
    expect(
      within(row)
        .getAllByRole('cell')
        .map((cell) => cell.textContent),
    ).toEqual([
      '56 worked out',
      '2',
      '1',
      '170',
      '34 in (101)',
      expect.stringMatching(/^Serious 56 people need 2 exits; 1 is found \(101\)\./),
    ]);
    const open = within(row).getByRole('button', { name: 'Music room' });
    expect(open).toHaveAttribute('aria-expanded', 'false');
    await user.click(open);
    expect(open).toHaveAttribute('aria-expanded', 'true');
    expect(screen.getByText(/1,120 ft² ÷ 20 ft² a person/)).toBeVisible();
    expect(screen.getByText(/IBC 2021 Table 1004\.5; read second-hand/)).toBeVisible();
    expect(screen.getByRole('link', { name: '101' })).toHaveAttribute('href', '#/opening/o');
    expect(screen.getByText(/34 in ÷ 0\.2 in a person = 170 people/)).toBeVisible();
    expect(screen.queryByRole('row', { name: /^Corridor/ })).toBeNull();
    await user.click(screen.getByRole('checkbox', { name: 'Also the spaces with no findings' }));
    expect(screen.getByRole('row', { name: /^Corridor/ })).toHaveTextContent('Not judged');
    expect(screen.queryByRole('row', { name: /^Stair/ })).toBeNull();
    expect(screen.getByText(/Not computed: stairs, travel distance/)).toBeVisible();
    expect(document.body.textContent).not.toMatch(/compliant/i);
  });

  test('an address that names a space opens its row', () => {
    location.hash = '#/building/m';
    show(<LoadsAndExits project={project} />, project);
    expect(screen.getByRole('button', { name: 'Music room' })).toHaveAttribute('aria-expanded', 'true');
    location.hash = '';
  });

  test('as long as no load is known it says where to give one', () => {
    const empty = { ...project, spaces: { m: { ...music, use: null } } };
    show(<LoadsAndExits project={empty} />, empty);
    expect(screen.getByText(/No space has a load yet/)).toBeVisible();
    expect(screen.getByRole('link', { name: 'Project' })).toHaveAttribute('href', '#/project');
    expect(screen.queryByRole('table')).toBeNull();
  });
});
