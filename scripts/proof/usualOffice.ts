import { known } from '../../src/domain/testing/facts.ts';
import type { FactKey } from '../../src/domain/model/fields.ts';
import type { Project } from '../../src/domain/model/project.ts';
import { usualDoor, usualWishes } from '../../src/domain/survey/usual.ts';
import type { Value } from './interview.ts';
import { officeAnswers, officeProject } from './officeDoor.ts';

/** What the owner of the office building wishes at each door that is controlled. */
const wishes: Readonly<Record<string, Value>> = {
  control: 'controlled',
  readerSides: 'secure',
  wishScheduledUnlock: false,
  wishLockdown: false,
  wishDelayedEgress: false,
};

export function controlledOffice(key: FactKey): Value | undefined {
  return wishes[key] ?? officeAnswers(key);
}

/** The office building with its usual stated: what its owner wishes, and the door most of its rooms have. */
export const usualOffice: Project = {
  ...officeProject,
  usual: Object.fromEntries(
    [...usualWishes, ...usualDoor].flatMap((key) => {
      const value = controlledOffice(key);
      return value === undefined ? [] : [[key, known(value)]];
    }),
  ),
};
