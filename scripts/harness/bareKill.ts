/**
 * Kills the whole browser while the session alone, without its screens, takes edits: at random moments, while it saves,
 * just after “Saved”, and within milliseconds of an edit. `npx tsx scripts/harness/bareKill.ts 1000`. An edit counts once a
 * frame was drawn after it; those that were younger are counted apart. Twenty kills make a life on one profile, with an ordinary end after every second one: a torn
 * database shows only at the start after that.
 */
import { argumentsOf, countOf, refuse } from '../lib/arguments.mjs';
import { bareLives, type BareBench, lostOf } from './bareBench.ts';
import { killBrowser, pause } from './bench.ts';

const killsOfALife = 20;
const moments = ['random', 'saving', 'saved', 'edit'] as const;
const editsOfAKill = 60;

const { words } = argumentsOf({
  usage: 'npx tsx scripts/harness/bareKill.ts [kills [moment]]',
  words: ['kills', 'moment'],
});
const kills = countOf(words[0], 'The number of kills', 40);
/** One moment alone, to look at it closely; all in turn where none is named. */
const only = moments.filter((moment) => words[1] === undefined || moment === words[1]);
if (only.length === 0) refuse(`The moment is one of ${moments.join(', ')}.`);

let done = 0;
let lostIn = 0;
let young = 0;
let brought = 0;
const started = Date.now();

const { failed } = await bareLives(Math.ceil(kills / killsOfALife), life);
console.log(
  `bareKill: ${done} kills, ${lostIn} with a loss, ${young} edits lost that no frame had shown yet, ${failed} lives that could not be judged; at ${brought} starts the second copy or the log of lines brought edits back; ${Math.round((Date.now() - started) / 1000)} s`,
);
process.exitCode = lostIn + failed > 0 ? 1 : 0;

async function life({ start }: BareBench, profile: string, index: number): Promise<void> {
  const heard = { taken: [] as number[], shown: [] as number[] };
  let serial = 1;
  const begin = async (after: string) => {
    const session = await start(profile, (what, number) => heard[what].push(number));
    const lost = lostOf(session.found, heard.shown);
    const marks = new Set(session.found.marks);
    young += heard.taken.filter((one) => !heard.shown.includes(one) && !marks.has(`ZZ-${one}`)).length;
    heard.taken = [...heard.shown];
    if (session.found.said.length > 0) brought += 1;
    if (lost.length > 0) {
      lostIn += 1;
      console.log(`LOST after ${after}: ${lost.join(', ')}; said: ${session.found.said.join(' | ')}`);
      // What is gone is counted once.
      heard.shown = [];
    }
    return session;
  };
  for (let kill = 0; kill < killsOfALife; kill += 1) {
    const moment = only[(index + kill) % only.length] ?? 'random';
    // oxlint-disable-next-line no-await-in-loop -- one moment after the other
    const { context, page, next } = await begin('a kill');
    const reached = moment === 'saving' || moment === 'saved' ? next(moment) : Promise.resolve();
    const gapMs = moment === 'random' ? 60 : 250;
    const typing = page
      .evaluate(([from, count, gap]) => globalThis.bare.edits(from, count, gap), [
        serial,
        editsOfAKill,
        gapMs,
      ] as const)
      .catch(() => undefined);
    serial += editsOfAKill;
    // oxlint-disable-next-line no-await-in-loop
    await reached;
    // oxlint-disable-next-line no-await-in-loop
    await pause(Math.random() * { random: 1_500, saving: 40, saved: 150, edit: 400 }[moment]);
    // oxlint-disable-next-line no-await-in-loop
    await killBrowser(profile);
    // oxlint-disable-next-line no-await-in-loop
    await typing;
    // oxlint-disable-next-line no-await-in-loop
    await context.close().catch(() => undefined);
    done += 1;
    if (kill % 2 === 0) continue;
    // oxlint-disable-next-line no-await-in-loop
    const again = await begin('a kill');
    // oxlint-disable-next-line no-await-in-loop
    await again.page.evaluate((from) => globalThis.bare.edits(from, 1, 0), serial);
    serial += 1;
    // oxlint-disable-next-line no-await-in-loop
    await again.page.evaluate(() => globalThis.bare.flush());
    // oxlint-disable-next-line no-await-in-loop
    await again.context.close();
  }
  const { context } = await begin('an ordinary end');
  await context.close();
  console.log(
    `${done} kills, ${lostIn} with a loss, ${heard.shown.length} edits shown in this life, ${Math.round((Date.now() - started) / 1000)} s`,
  );
}
