import { text } from '../codes/sections.ts';
import { candidates, type Release, releases } from '../devices/candidates.ts';
import { type DeviceId, deviceIds, type FailMode } from '../devices/devices.ts';
import { all, always, type Condition } from '../logic/condition.ts';
import { type AnyValue, factSchemas, isFactKey } from '../model/fields.ts';
import type { Amendment } from '../model/project.ts';
import type { Clause, Effect, Rule } from './rule.ts';

/** A local amendment as a rule of the book, in the user's own words. */
export function amendmentRule(amendment: Amendment): Rule {
  const entries = Object.entries(amendment.when);
  const conditions = entries.flatMap(([fact, value]) => conditionOf(fact, value) ?? []);
  const unread = [
    ...entries
      .filter(([fact, value]) => !conditionOf(fact, value))
      .map(([fact, value]) => `${fact} = ${value}`),
    ...amendment.devices.filter((id) => !isDevice(id)),
    ...amendment.releases.filter((id) => !isRelease(id)),
    ...amendment.failModes.filter((mode) => !isFailMode(mode)),
  ];
  const when = conditions.length === 0 ? always : all(...conditions);
  return {
    id: `LOCAL-${amendment.id}`,
    title: amendment.standard === undefined ? 'Local amendment' : 'Owner’s standard',
    family: 'access',
    book: 'project',
    cites: [
      text(
        'project',
        amendment.standard === undefined ? amendment.source : `${amendment.source}; ${amendment.standard}`,
      ),
    ],
    confidence: 'project',
    note:
      amendment.standard === undefined
        ? 'Entered by the project; not part of the model codes.'
        : 'A standard of the owner; not part of the model codes, and no authority asks for it.',
    why: amendment.says,
    clauses: [
      unread.length === 0 ? readAmendment(amendment, when) : unreadAmendment(amendment, when, unread),
    ],
  };
}

function readAmendment(amendment: Amendment, when: Condition): Clause {
  const { effect, devices, releases: ways, failModes, says } = amendment;
  const of = {
    ...(devices.length > 0 && { device: devices.filter(isDevice) }),
    ...(ways.length > 0 && { release: ways.filter(isRelease) }),
    ...(failModes.length > 0 && { failMode: failModes.filter(isFailMode) }),
  };
  const effects: Record<Amendment['effect'], Effect> = {
    prohibit: { effect: 'prohibit' },
    require: { effect: 'require', items: ['ahjApproval'] },
    signOff: { effect: 'signOff', grade: 'must' },
  };
  return { ...effects[effect], when, of, says };
}

/**
 * An amendment from a newer version or a damaged file, with words that this version does not know. It is neither
 * dropped nor guessed at: wherever the rest of it may apply, a reviewer must look.
 */
function unreadAmendment({ says }: Amendment, when: Condition, unread: readonly string[]): Clause {
  const words = `this version does not know ${unread.map((one) => `“${one}”`).join(', ')}`;
  return {
    effect: 'signOff',
    grade: 'must',
    when,
    says: `A local amendment cannot be applied, because ${words}; a reviewer decides what it asks here: “${says}”.`,
  };
}

/** Undefined when this version knows no such fact, or the fact no such value. */
function conditionOf(fact: string, value: AnyValue): Condition | undefined {
  if (!isFactKey(fact) || !factSchemas[fact].safeParse(value).success) return undefined;
  return typeof value === 'number'
    ? all(
        { op: 'compare', fact, how: 'atLeast', bound: value },
        { op: 'compare', fact, how: 'atMost', bound: value },
      )
    : { op: 'is', fact, values: [value] };
}
const isDevice = (id: string): id is DeviceId => (deviceIds as readonly string[]).includes(id);
const isRelease = (id: string): id is Release => Object.hasOwn(releases, id);
const isFailMode = (mode: string): mode is FailMode => candidates.some((one) => one.failMode === mode);
