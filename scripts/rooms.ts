// Writes the order of the rooms inside src/domain into the linter's settings and into DEVELOPERS.md.
//   npm run rooms
import { readFileSync, writeFileSync } from 'node:fs';
import { argumentsOf } from './lib/arguments.mjs';
import { withRooms, withRoomTable } from './lib/domain-rooms.ts';
import { inRoot } from './lib/repo.mjs';

argumentsOf({ usage: 'npm run rooms' });
const settings = inRoot('.oxlintrc.json');
const lint = JSON.parse(readFileSync(settings, 'utf8'));
writeFileSync(settings, `${JSON.stringify({ ...lint, overrides: withRooms(lint.overrides) }, null, 2)}\n`);

const page = inRoot('DEVELOPERS.md');
writeFileSync(page, withRoomTable(readFileSync(page, 'utf8')));
