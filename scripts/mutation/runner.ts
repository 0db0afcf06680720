import { setMaxListeners } from 'node:events';
import { readFileSync, writeFileSync } from 'node:fs';
import { type RunnerTestCase, type RunnerTestFile, type RunnerTestSuite, TestRunner } from 'vitest';
import { codeIsLoaded, codeLoads, restoreMemory, watchMemory } from './memory.ts';
import type { Found, Work } from './work.ts';

/** Through this the broken code is told which slip is on, and tells which it came by. */
interface Switch {
  activeMutant?: string | undefined;
  currentTestId?: string | undefined;
  hitCount?: number | undefined;
  hitLimit?: number | undefined;
  mutantCoverage?: {
    readonly static: Readonly<Record<string, number>>;
    readonly perTest: Readonly<Record<string, Readonly<Record<string, number>>>>;
  };
}
const control: Switch = ((globalThis as { __stryker__?: Switch }).__stryker__ ??= {});

watchMemory();
// Each call of a test listens at its signal once more.
setMaxListeners(0);

const foundAt = '.mutation/found.json';

/**
 * Runs all tests once, sees which slips each comes by, then puts one slip on after the other and asks
 * those tests again in the same process. What a broken run leaves behind could speak against the next slip: a test that
 * noticed one is asked again with the slip off, and where it still fails all starts anew in a new process.
 */
export default class SlipRunner extends TestRunner {
  readonly #tests: RunnerTestCase[] = [];

  override onCollectStart(file: RunnerTestFile): void {
    super.onCollectStart(file);
    codeLoads();
  }

  onBeforeRunFiles(): void {
    codeIsLoaded();
  }

  override onBeforeTryTask(test: RunnerTestCase): void {
    super.onBeforeTryTask(test);
    control.currentTestId = test.id;
  }

  override onAfterRunTask(test: RunnerTestCase): void {
    super.onAfterRunTask(test);
    control.currentTestId = undefined;
    if (test.type === 'test' && test.mode === 'run') this.#tests.push(test);
  }

  override async onAfterRunSuite(suite: RunnerTestSuite): Promise<void> {
    if (suite === suite.file && this.#tests.every((test) => test.result?.state === 'pass'))
      await this.#askAll();
    await super.onAfterRunSuite(suite);
  }

  async #askAll(): Promise<void> {
    const { slips } = JSON.parse(readFileSync('.mutation/work.json', 'utf8')) as Work;
    const found = JSON.parse(readFileSync(foundAt, 'utf8')) as Found;
    const hits = structuredClone(control.mutantCoverage ?? { static: {}, perTest: {} });
    const quickFirst = this.#tests.toSorted((a, b) => (a.result?.duration ?? 0) - (b.result?.duration ?? 0));
    const keep = (under: string | null) => {
      found.under = under;
      writeFileSync(foundAt, JSON.stringify(found));
    };
    let isFresh = true;
    let noticedLast: RunnerTestCase | undefined;
    for (const slip of slips) {
      if (found.status[slip] !== undefined) continue;
      // What noticed the slip before this one is near it; then the quick ones.
      const near = noticedLast === undefined ? quickFirst : [noticedLast, ...quickFirst];
      const asked = [...new Set(near)].filter((test) => hits.perTest[test.id]?.[slip] !== undefined);
      if (asked.length === 0) {
        found.status[slip] = hits.static[slip] === undefined ? 'NoCoverage' : 'Ignored';
        continue;
      }
      keep(slip);
      restoreMemory();
      const by = await this.#firstThatFails(asked, slip, hits.perTest);
      control.activeMutant = undefined;
      noticedLast = by ?? noticedLast;
      restoreMemory();
      const isSpoiled = by !== undefined && !(await this.#passes(by));
      if (isSpoiled && !isFresh) break;
      found.status[slip] = by === undefined ? 'Survived' : 'Killed';
      isFresh = false;
      if (isSpoiled) break;
    }
    keep(null);
  }

  async #firstThatFails(
    asked: readonly RunnerTestCase[],
    slip: string,
    hits: Readonly<Record<string, Readonly<Record<string, number>>>>,
  ): Promise<RunnerTestCase | undefined> {
    for (const test of asked) {
      control.activeMutant = slip;
      control.hitCount = 0;
      control.hitLimit = (hits[test.id]?.[slip] ?? 0) * 100 + 1000;
      if (!(await this.#passes(test))) return test;
    }
    return undefined;
  }

  async #passes(test: RunnerTestCase): Promise<boolean> {
    const suites = [];
    for (let suite = test.suite; suite !== undefined; suite = suite.suite) suites.unshift(suite);
    const around = [test.file, ...suites].map((one) => TestRunner.getSuiteHooks(one));
    let passes = true;
    const step = async (run: () => unknown) => {
      try {
        await run();
      } catch {
        passes = false;
      }
    };
    super.onBeforeTryTask(test);
    const cleanups: unknown[] = [];
    for (const { beforeEach } of around) {
      for (const hook of beforeEach) {
        await step(async () => cleanups.push(await hook(test.context, test.suite ?? test.file)));
      }
    }
    if (passes) await step(() => TestRunner.getTestFn(test)());
    if (passes) await step(() => super.onAfterTryTask(test));
    for (const { afterEach } of around.toReversed()) {
      for (const hook of afterEach.toReversed())
        await step(() => hook(test.context, test.suite ?? test.file));
    }
    for (const cleanup of cleanups) if (typeof cleanup === 'function') await step(() => cleanup());
    return passes;
  }
}
