// One opening, asked everywhere: whatever place it is read at says the same of its state, its arrangement, its
// signature, the fire alarm and its flags.
import { describe, expect, test } from 'vitest';
import { createBuildingCheck } from '../../src/app/buildingCheck.ts';
import { reportFor } from '../../src/app/reports.ts';
import { judgeBuilding } from '../../src/domain/building/joined.ts';
import type { Decision } from '../../src/domain/decide/decision.ts';
import { candidateInWords } from '../../src/domain/words/arrangement.ts';
import { stateWords } from '../../src/domain/words/states.ts';
import type { Opening, Project } from '../../src/domain/model/project.ts';
import { missingKeys } from '../../src/domain/sets/missing.ts';
import { nextQuestion } from '../../src/domain/survey/nextQuestion.ts';
import { orderStateWords } from '../../src/domain/sets/forOrder.ts';
import { oneLineOf } from '../../src/domain/schedules/oneLine.ts';
import { scheduleRows } from '../../src/domain/schedules/openings.ts';
import { openingLines } from '../../src/domain/sets/openingLines.ts';
import { standingOf } from '../../src/domain/bid/openQuestions.ts';
import { openSignatures, questionsOf } from '../../src/domain/review/questions.ts';
import { isSigned, reviewState, unsignedOpenings } from '../../src/domain/review/status.ts';
import { hardwareSets, setNumbersOf } from '../../src/domain/sets/sets.ts';
import { lobbyTrap, stairTrap } from '../../src/domain/testing/smallBuilding.ts';
import { scheduleCsv } from '../../src/exporting/csv/scheduleCsv.ts';
import { decisionRecord } from '../../src/exporting/jsonl/record.ts';
import { diagramSheet } from '../../src/exporting/sheets/diagramSheet.ts';
import { scheduleSheet } from '../../src/exporting/sheets/doorSchedule.ts';
import { openingSheet } from '../../src/exporting/sheets/openingSheet.ts';
import { draftOf } from '../../src/exporting/sheets/stamp.ts';
import { reviewRegister } from '../../src/exporting/sheets/reviewRegister.ts';
import { sequenceSheets, testSheets } from '../../src/exporting/sequence/sheets.ts';
import { columnOf, groundOf } from '../../src/domain/grid/columns.ts';
import { rowsOf } from '../../src/app/gridRows.ts';
import Papa from 'papaparse';
import { demo } from './paperOpenings.ts';

const none = '—';
type Said = Readonly<Record<string, string>>;

/** Everything that speaks of the openings of a project, made once. */
function placesOf(project: Project) {
  const check = createBuildingCheck({ atOnceUpTo: 10_000 });
  const shown = check.shown(project);
  const { decisions } = shown;
  const grid = new Map(rowsOf(project, shown).map((row) => [row.opening.id, row]));
  const openings = Object.values(project.openings);
  const rows = scheduleRows(project, decisions);
  const [head = [], ...body] = Papa.parse<string[]>(scheduleCsv(rows), { delimiter: ',' }).data;
  const at = (name: string) => head.findIndex((one) => one.endsWith(name));
  const sets = hardwareSets(project, decisions);
  return {
    project,
    decisions,
    grid,
    rows: new Map(rows.map((row) => [row.openingId, row])),
    table: new Map(body.map((cells) => [cells[at('Mark')] ?? '', (name: string) => cells[at(name)] ?? ''])),
    printed: new Map(
      scheduleSheet(project, decisions).floors.flatMap(({ lines }) => lines.map((line) => [line.id, line])),
    ),
    register: new Map(reviewRegister(project, decisions).map((entry) => [entry.opening.id, entry])),
    diagrams: new Map(diagramSheet(project, decisions, openings).entries.map((one) => [one.id, one])),
    sequences: sequenceSheets(project, decisions),
    tests: new Map(testSheets(project, decisions).map((one) => [one.openingId, one])),
    inSets: new Map(sets.flatMap((set) => set.openings.map(({ id, order }) => [id, { set, order }]))),
    lines: openingLines(project, decisions, sets),
    numbers: setNumbersOf(project, decisions),
  };
}

/** What each place says, question by question; a place that says nothing of it is left out. */
function said(
  places: ReturnType<typeof placesOf>,
  opening: Opening,
  decision: Decision,
): Record<string, Said> {
  const { project } = places;
  const { id, mark } = opening;
  const row = places.rows.get(id);
  const gridRow = places.grid.get(id);
  const csv = places.table.get(mark);
  if (!row || !gridRow || !csv) throw new Error(`${mark} is missing somewhere`);
  const report = reportFor(decision);
  const sheet = openingSheet(project, opening, row, decision, report, draftOf('2026-03-02'));
  const record = decisionRecord(project, opening, decision, places.numbers, []);
  const entry = places.register.get(id);
  const ground = groundOf(project, new Map());
  const inGrid = (key: string) => columnOf(key)?.text(gridRow, ground) ?? '';
  const cell = (key: string) =>
    places.printed
      .get(id)
      ?.cells.find((one) => one.key === key)
      ?.says.join('; ') ?? '';
  const onSheet = (label: string) => sheet.arrangement.find((one) => one.label === label)?.value ?? '';
  const chosen = decision.chosen?.candidate;
  const device = chosen ? candidateInWords(chosen) : none;
  const circuit = oneLineOf(decision);
  const diagram = places.diagrams.get(id);
  const sequence = places.sequences.find(({ marks }) => marks.includes(mark));
  const alarm = sequence?.lines.find(({ event }) => event === 'Fire alarm');
  const set = places.inSets.get(id);
  const some = (place: string, text: string | undefined): Said =>
    text === undefined ? {} : { [place]: text };
  return {
    state: {
      grid: inGrid('state'),
      schedule: row.stateWord,
      csv: csv('State'),
      sheet: sheet.stateWord,
      opening: report.state.word,
      assess: stateWords[record.state].word,
      flags: decision.state === 'settled' ? stateWords.settled.word : (cell('flags').split('; ')[0] ?? ''),
      ...some(
        'diagram',
        diagram &&
          (decision.state === 'settled' ? stateWords.settled.word : diagram.arrangement.split(' · ').at(-1)),
      ),
      ...(sequence
        ? { sequence: sequence.provisional.includes(mark) ? row.stateWord : stateWords.settled.word }
        : {}),
      ...some(
        'test',
        places.tests.get(id) && (places.tests.get(id)?.provisional ? row.stateWord : stateWords.settled.word),
      ),
    },
    arrangement: {
      grid: inGrid('device'),
      opening: chosen ? report.headline : none,
      sheet: chosen ? sheet.headline : none,
      schedule: row.device === '' ? none : device.startsWith(row.device) ? device : row.device,
      assess: record.device === null ? none : record.device === chosen?.deviceId ? device : record.device,
      ...some('register', entry && (chosen ? entry.arrangement : none)),
      ...some('set', set && `${set.set.device}${device.slice(set.set.device.length)}`),
      sequence: sequence ? device : none,
    },
    release: {
      grid: inGrid('release'),
      schedule: row.release || none,
      printed: cell('release'),
      csv: csv('Release') || none,
      opening: report.release || none,
    },
    signature: {
      schedule: row.review,
      assess: record.review,
      page: reviewState(project, opening, decision).state,
      register: entry ? entry.status.state : 'notNeeded',
    },
    grade: {
      schedule: row.signOff,
      register: entry ? entry.grade : 'none',
      assess: record.signOff[0]?.grade === 'note' ? 'none' : (record.signOff[0]?.grade ?? 'none'),
      opening: report.signOffs[0]?.grade === 'note' ? 'none' : (report.signOffs[0]?.grade ?? 'none'),
    },
    'fire alarm': {
      schedule: row.fireAlarm,
      printed: cell('fireAlarm') === none ? '' : cell('fireAlarm'),
      csv: csv('On fire alarm'),
      sheet: onSheet('On fire alarm'),
      assess: record.onFireAlarm ?? '',
      ...some('one-line', circuit?.onFireAlarm),
      ...some('sequence', alarm && (alarm.says.startsWith(row.fireAlarm) ? row.fireAlarm : alarm.says)),
    },
    flags: { printed: cell('flags'), sheet: sheet.flags.join('; ') || 'None' },
    missing: {
      schedule: String(row.missing),
      assess: String(record.missing.length),
      sheet: String(sheet.missing.length),
    },
    complete: {
      assess: String(record.complete),
      ...some('set', set && String(set.order === 'complete')),
      schedule: String(row.order === orderStateWords.complete),
    },
  };
}

describe.each([
  ['the demo building', demo],
  ['a lobby with one locked door', lobbyTrap()],
  ['a stair nobody can leave', stairTrap()],
])('%s', (_name, project) => {
  const places = placesOf(project);

  test('is shown as the building leaves it', () => {
    const states = (all: ReadonlyMap<string, Decision>) =>
      [...all].map(([id, { state }]) => `${id} ${state}`).toSorted();
    expect(states(places.decisions)).toEqual(states(judgeBuilding(project).decisions));
  });

  test('counts as many openings that wait for a name on the review page as on paper', () => {
    const { decisions } = places;
    const onScreen = openSignatures(
      questionsOf(project, decisions, judgeBuilding(project).findings),
      unsignedOpenings(project, decisions),
    );
    const waiting = Object.values(project.openings).filter((opening) => {
      const decision = decisions.get(opening.id);
      return decision && !isSigned(reviewState(project, opening, decision));
    });
    const onPaper = standingOf(project, decisions);
    expect([onScreen.openings, onPaper.unsigned]).toEqual([waiting.length, waiting.length]);
  });

  test('asks no other question for what the building does to a door', () => {
    const wrong = Object.values(project.openings).filter((opening) => {
      const joined = places.decisions.get(opening.id);
      return (
        joined !== undefined &&
        joined !== joined.alone &&
        (nextQuestion(project, opening, joined) !== nextQuestion(project, opening, joined.alone) ||
          missingKeys(project, opening, joined).join() !== missingKeys(project, opening, joined.alone).join())
      );
    });
    expect(wrong.map(({ mark }) => mark)).toEqual([]);
  });

  test('says the same of each opening everywhere', () => {
    const wrong: string[] = [];
    for (const opening of Object.values(project.openings)) {
      const decision = places.decisions.get(opening.id);
      if (!decision) throw new Error(`${opening.mark} is not decided.`);
      for (const [question, answers] of Object.entries(said(places, opening, decision))) {
        if (new Set(Object.values(answers)).size > 1) {
          wrong.push(`${opening.mark}, ${question}: ${JSON.stringify(answers)}`);
        }
      }
    }
    expect(wrong).toEqual([]);
  });
});
