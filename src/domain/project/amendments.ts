import type { Decision } from '../decide/decision.ts';
import { amendmentRule } from '../rules/amendments.ts';
import { viewFacts } from '../decide/factView.ts';
import { matches } from '../devices/candidates.ts';
import { compile } from '../logic/compile.ts';
import { UNKNOWN, YES } from '../logic/verdict.ts';
import { type FactKey, fieldInfo, isFactKey, type AnyValue } from '../model/fields.ts';
import type { Amendment, Project } from '../model/project.ts';
import { readFact } from '../survey/readFact.ts';

/** An amendment as typed; values of its conditions stay texts until they are read here. */
export interface AmendmentDraft {
  readonly says: string;
  readonly source: string;
  readonly effect: Amendment['effect'];
  readonly when: readonly { readonly fact: string; readonly text: string }[];
  readonly devices: readonly string[];
  readonly releases: readonly string[];
  readonly failModes: readonly string[];
}

export const emptyAmendment: AmendmentDraft = {
  says: '',
  source: '',
  effect: 'signOff',
  when: [],
  devices: [],
  releases: [],
  failModes: [],
};

/** A form begun with what the authority was asked; its answer is typed. */
export const answeredAmendment = (title: string): AmendmentDraft => ({
  ...emptyAmendment,
  says: `${title}: `,
  effect: 'require',
});

export const amendmentEffects: Readonly<Record<Amendment['effect'], string>> = {
  prohibit: 'Prohibits the devices named',
  require: 'Requires the authority’s approval in writing',
  signOff: 'Sends it to a reviewer who must sign',
};

export function amendmentDraftOf(amendment: Amendment): AmendmentDraft {
  return {
    says: amendment.says,
    source: amendment.source,
    effect: amendment.effect,
    when: Object.entries(amendment.when).map(([fact, value]) => ({
      fact,
      text: typeof value === 'boolean' ? (value ? 'yes' : 'no') : String(value),
    })),
    devices: amendment.devices,
    releases: amendment.releases,
    failModes: amendment.failModes,
  };
}

export type ReadAmendment =
  | { readonly ok: true; readonly amendment: Amendment }
  | { readonly ok: false; readonly problems: Readonly<Record<string, string>> };

/** All that is wrong at once, each sentence by its field: `says`, `source`, `when-0` … */
export function readAmendment(id: string, draft: AmendmentDraft): ReadAmendment {
  const problems: Record<string, string> = {};
  if (draft.says.trim() === '') problems['says'] = 'Say what the amendment asks.';
  if (draft.source.trim() === '') problems['source'] = 'Name the ordinance or letter it comes from.';
  const when: Record<string, AnyValue> = {};
  draft.when.forEach(({ fact, text }, index) => {
    const field = `when-${index}`;
    if (!isFactKey(fact)) problems[field] = 'Pick the question this depends on.';
    else if (Object.hasOwn(when, fact))
      problems[field] = `${fieldInfo(fact).label} is asked twice; all conditions must hold together.`;
    else {
      const read = readFact(fact, text);
      if (!read.ok) problems[field] = read.says;
      else if (read.fact === null || read.fact.is === 'unknown')
        problems[field] = `Say which answer to “${fieldInfo(fact).label}” is meant.`;
      else when[fact] = read.fact.value;
    }
  });
  const free = draft.devices.length + draft.releases.length + draft.failModes.length === 0;
  if (draft.effect === 'prohibit' && free) {
    problems['devices'] = 'Name at least one device, release or fail mode that it prohibits.';
  }
  if (Object.keys(problems).length > 0) return { ok: false, problems };
  const { says, source, effect, devices, releases, failModes } = draft;
  return {
    ok: true,
    amendment: {
      id,
      says: says.trim(),
      source: source.trim(),
      effect,
      when,
      devices: [...devices],
      releases: [...releases],
      failModes: [...failModes],
    },
  };
}

/** How many openings an amendment would touch, as one sentence. */
export function amendmentTouches(
  project: Project,
  amendment: Amendment,
  decisions: ReadonlyMap<string, Decision>,
): string {
  const [clause] = amendmentRule(amendment).clauses;
  const test = compile(clause.when, project.basis, `amendment ${amendment.id}`);
  const openings = Object.values(project.openings);
  let holds = 0;
  let waits = 0;
  let meant = 0;
  for (const opening of openings) {
    const verdict = test(viewFacts(project, opening).slots);
    if (verdict === UNKNOWN) waits += 1;
    if (verdict !== YES) continue;
    holds += 1;
    const candidate = decisions.get(opening.id)?.chosen?.candidate;
    if (candidate && (clause.of === undefined || matches(clause.of, candidate))) meant += 1;
  }
  const missing = waits === 0 ? '' : ` At ${waits} more a fact is missing.`;
  return `Its conditions hold at ${holds} of ${openings.length} openings; at ${meant} of them it applies to the current recommendation.${missing}`;
}

/** Questions an amendment may depend on, by label. */
export function factsByLabel(keys: readonly FactKey[]): readonly { key: FactKey; label: string }[] {
  return keys
    .map((key) => ({ key, label: fieldInfo(key).label }))
    .toSorted((a, b) => (a.label < b.label ? -1 : 1));
}

/** What may be answered to a question, for a list to pick from; undefined where a number is typed. */
export function answersTo(key: FactKey): readonly { value: string; label: string }[] | undefined {
  const info = fieldInfo(key);
  switch (info.kind) {
    case 'yesNo':
      return [
        { value: 'yes', label: 'Yes' },
        { value: 'no', label: 'No' },
      ];
    case 'choice':
      return Object.entries(info.options ?? {}).map(([value, label]) => ({ value, label }));
    case 'number':
      return undefined;
  }
}
