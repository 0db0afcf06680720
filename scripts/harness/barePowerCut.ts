/**
 * As `powerCut.ts`, with the session alone and without its screens: the end of the log of the browser's database is cut off, then
 * work goes on, an ordinary end, another start. `npx tsx scripts/harness/barePowerCut.ts 100`; ends with 1 when anything
 * was lost.
 */
import { stat } from 'node:fs/promises';
import { argumentsOf, countOf } from '../lib/arguments.mjs';
import { bareLives, lostOf, type Session } from './bareBench.ts';
import { cutEnd, databaseLog } from './databaseLog.ts';

const { words } = argumentsOf({ usage: 'npx tsx scripts/harness/barePowerCut.ts [cuts]', words: ['cuts'] });
const cuts = countOf(words[0], 'The number of cuts', 17);

let lostIn = 0;
let done = 0;
const said = new Map<string, number>();

async function saved({ page }: Session, serial: number): Promise<void> {
  await page.evaluate((from) => globalThis.bare.edits(from, 1, 0), serial);
  await page.evaluate(() => globalThis.bare.flush());
}

const { failed } = await bareLives(cuts, async ({ start }, profile, index) => {
  const shown: number[] = [];
  const begin = () => start(profile, (what, serial) => void (what === 'shown' && shown.push(serial)));
  const first = await begin();
  await saved(first, 1);
  const log = await databaseLog(profile);
  const { size } = await stat(log);
  await saved(first, 2);
  await first.context.close();
  await cutEnd(await databaseLog(profile), size, index);
  const second = await begin();
  const lostAtOnce = lostOf(second.found, shown);
  await saved(second, 3);
  await second.context.close();
  const third = await begin();
  const lost = [...new Set([...lostAtOnce, ...lostOf(third.found, shown)])];
  await third.context.close();
  done += 1;
  for (const one of [...second.found.said, ...third.found.said]) said.set(one, (said.get(one) ?? 0) + 1);
  if (lost.length === 0) return;
  lostIn += 1;
  console.log(`cut ${index + 1}: LOST ${lost.join(', ')}`);
});
for (const [says, times] of said) console.log(`${times} times: ${says}`);
console.log(`barePowerCut: ${done} cuts, ${lostIn} with a loss, ${failed} that could not be judged`);
process.exitCode = lostIn + failed > 0 ? 1 : 0;
