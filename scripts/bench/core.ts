import { decisionsBench, editBench, growthBench } from './growth.ts';
import { table } from './measure.ts';
import { rulesBench } from './rulesBench.ts';

/** Prints how fast the core decides. Run it by `npm run bench`, which bundles it first as the app is bundled. */
console.log(table('Decisions on one core', decisionsBench()));
console.log(table('\nRe-assessing a project', growthBench()));
console.log(table('\nOne edit', editBench()));
const { lines, agreed } = await rulesBench();
console.log(`\n${agreed}`);
console.log(table('Rule engines', lines));
