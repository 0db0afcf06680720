import { under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

export const R07 = defineRule({
  id: 'R-07',
  title: 'A reader outside adds no sensor, button or alarm release',
  family: 'foundations',
  book: 'ibc',
  cites: [under('freeEgressIbc'), under('sensorRelease')],
  confidence: 'secondary',
  why: 'Rules for locks that hold people in are often applied to doors that do not, at the owner’s cost and for no one’s safety.',
  clauses: [
    {
      effect: 'permit',
      when: all(yes('isEgress'), is('readerSides', 'secure')),
      of: { release: ['free'] },
      says: 'The reader controls entry only and the inside always opens, so no exit sensor, push button or fire-alarm release is needed for leaving.',
    },
  ],
  cases: cases(
    ...onEach(
      ['mortiseLock/secure/free', 'strikeRim/secure/free', 'batteryLock/asIs/free'],
      'reader outside, lever inside',
      { egressRole: 'exitAccess', readerSides: 'secure' },
      'yes',
      { does: 'permit' },
    ),
    [
      'readers on both sides',
      { egressRole: 'exitAccess', readerSides: 'both' },
      'no',
      { on: 'mortiseLock/secure/free' },
    ],
    [
      'cabinet',
      { egressRole: 'noOccupiedSpace', readerSides: 'secure' },
      'no',
      { on: 'mortiseLock/secure/free' },
    ],
    ['readers not known', { egressRole: 'exitAccess' }, 'unknown', { on: 'mortiseLock/secure/free' }],
    ...onEach(
      ['magnet/safe/sensor', 'exitTrim/safe/stairReentry', 'mechanicalLock/none/keyInside'],
      'not simply free',
      { egressRole: 'exitAccess', readerSides: 'secure' },
      'no',
    ),
  ),
});
