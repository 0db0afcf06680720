import { decisionsBench, editBench, growthBench } from './growth.ts';
import { report } from './measure.ts';
import { rulesBench } from './rulesBench.ts';

/** Prints how fast the core decides. Run it by `npm run bench`, which bundles it first as the app is bundled. */
report('Decisions on one core', decisionsBench());
report('\nRe-assessing a project', growthBench());
report('\nOne edit', editBench());
const { lines, agreed } = await rulesBench();
console.log(`\n${agreed}`);
report('Rule engines', lines);
