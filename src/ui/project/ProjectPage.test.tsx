import { act, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, test } from 'vitest';
import { countingIds, steppingClock } from '../../app/testing/clock.ts';
import { createPreferences } from '../../app/preferences.ts';
import { createApp } from '../../app/session.ts';
import { newProject } from '../../domain/model/newProject.ts';
import { createDatabase } from '../../storage/database.ts';
import { demo, demoOpenings } from '../../../tests/properties/paperOpenings.ts';
import { AppContext } from '../context.ts';
import ProjectPage from './ProjectPage.tsx';

function shown() {
  const app = createApp({
    database: createDatabase(),
    clock: steppingClock(),
    ids: countingIds(),
    locks: undefined,
    channel: () => undefined,
    preferences: createPreferences(undefined),
  });
  app.store.getState().replaceProject(newProject('p', 'House'));
  app.store.getState().setReady(true);
  render(
    <AppContext value={app}>
      <ProjectPage />
    </AppContext>,
  );
  return { app, project: () => app.store.getState().document.project, user: userEvent.setup() };
}

describe('the project page', () => {
  test('a refused name keeps what was typed, with its sentence, and follows an undo', async () => {
    const { app, project, user } = shown();
    const name = screen.getByLabelText('Name of the project');
    await user.clear(name);
    await user.tab();
    expect(screen.getByRole('alert')).toHaveTextContent('A project needs a name.');
    expect(name).toHaveValue('');
    expect(project().name).toBe('House');
    await user.type(name, 'Library{Enter}');
    expect(project().name).toBe('Library');
    app.store.getState().undo();
    expect(await screen.findByDisplayValue('House')).toBe(name);
  });

  test('a space that is refused loses nothing of its form', async () => {
    const { project, user } = shown();
    await user.click(screen.getByRole('button', { name: 'New space' }));
    await user.type(screen.getByLabelText('Occupant load'), 'many');
    await user.click(screen.getByRole('button', { name: 'Add' }));
    expect(screen.getByRole('alert')).toHaveTextContent('A space needs a name.');
    await user.type(screen.getByLabelText('Name'), 'Hall');
    await user.click(screen.getByRole('button', { name: 'Add' }));
    expect(screen.getByRole('alert')).toHaveTextContent('whole number of people');
    expect(screen.getByLabelText('Occupant load')).toHaveValue('many');
    await user.clear(screen.getByLabelText('Occupant load'));
    await user.click(screen.getByRole('button', { name: 'Add' }));
    expect(Object.values(project().spaces)).toMatchObject([{ name: 'Hall', occupantLoad: null }]);
    expect(within(screen.getByRole('row', { name: /Hall/ })).getAllByText('not known')).toHaveLength(3);
  });

  test('the load of a room shows while its use and area are typed, and stays after it is kept', async () => {
    const { app, project, user } = shown();
    await user.click(screen.getByRole('button', { name: 'New space' }));
    await user.type(screen.getByRole('textbox', { name: 'Name' }), 'Music room');
    const form = screen.getByRole('button', { name: 'Add' }).closest('form') ?? document.body;
    const status = within(form).getByRole('status');
    expect(status).toHaveTextContent('what the floor is used for and the floor area are missing');
    await user.selectOptions(screen.getByRole('combobox', { name: 'Use of the floor' }), 'Classroom');
    await user.type(screen.getByRole('textbox', { name: 'Floor area' }), '104 m²');
    expect(status).toHaveTextContent('56 people, worked out from use and area.');
    expect(screen.getByText('1,119.45 ft²')).toBeVisible();
    expect(screen.getByText(/1,119\.45 ft² ÷ 20 ft² a person/)).toBeVisible();
    await user.type(screen.getByRole('textbox', { name: 'Common path' }), 'far');
    await user.click(screen.getByRole('button', { name: 'Add' }));
    expect(screen.getByRole('alert')).toHaveTextContent('“far” is not a length');
    await user.clear(screen.getByRole('textbox', { name: 'Common path' }));
    await user.type(screen.getByRole('textbox', { name: 'Common path' }), '40\'-6"');
    await user.click(screen.getByRole('button', { name: 'Add' }));
    expect(Object.values(project().spaces)).toMatchObject([
      { use: 'classroom', areaFt2: 1119.45, commonPathFt: 40.5, occupantLoad: null },
    ]);
    expect(screen.getByRole('row', { name: /Music room/ })).toHaveTextContent('56, worked out');
    app.store.getState().undo();
    expect(project().spaces).toEqual({});
  });

  test('a weight is one step of undo and can be set back with all others', async () => {
    const { app, project, user } = shown();
    const cost = screen.getByRole('textbox', { name: 'Cost' });
    await user.clear(cost);
    await user.type(cost, '400{Enter}');
    expect(screen.getByRole('alert')).toHaveTextContent('between 0 and 100');
    await user.clear(cost);
    await user.type(cost, '40{Enter}');
    expect(project().weights.cost).toBe(40);
    expect(app.store.getState().document.past).toHaveLength(1);
    await user.click(screen.getByRole('button', { name: 'Reset to default weights' }));
    expect(project().weights.cost).toBe(12);
  });

  test('your name is kept in this browser and not in the project', async () => {
    const { app, project, user } = shown();
    await user.type(screen.getByLabelText('Your name'), 'R. Vega{Enter}');
    expect(app.preferences.get('yourName')).toBe('R. Vega');
    expect(JSON.stringify(project())).not.toContain('Vega');
  });

  test('another basis is compared without changing the project, and what an edit made old is not shown', async () => {
    const { app, project, user } = shown();
    const stair = demoOpenings.find((one) => one.mark === 'S1-2');
    if (!stair) throw new Error('The demo building has no S1-2.');
    act(() => app.store.getState().replaceProject({ ...demo, openings: { [stair.id]: stair } }));
    const part = within(screen.getByRole('region', { name: 'Another basis, side by side' }));
    await user.selectOptions(part.getByLabelText('IBC'), '2024');
    expect(project().basis.ibc).toBe(2021);
    await user.click(part.getByRole('button', { name: 'Compare' }));
    expect(await part.findByText('1 opening of 1 would come out differently.')).toBeInTheDocument();
    expect(part.getAllByText(/^R-56 · IBC 2024/).length).toBeGreaterThan(0);
    expect(project().basis.ibc).toBe(2021);
    await user.selectOptions(part.getByLabelText('IBC'), '2018');
    expect(part.queryByRole('table')).not.toBeInTheDocument();
  });
});
