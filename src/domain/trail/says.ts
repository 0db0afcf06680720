import { basisInWords } from '../codes/basis.ts';
import type { Edit } from '../commands/command.ts';
import { fieldInWords, partInWords, recordInWords } from '../merge/words.ts';
import type { Project } from '../model/project.ts';
import { answersInOrder } from '../model/verdict.ts';
import { verdictLabel } from '../review/draft.ts';
import { standardInWords } from '../model/standard.ts';
import { photoInWords } from '../survey/photos.ts';
import { counted } from '../text/counted.ts';
import type { Ground, Said } from './ground.ts';

type Of<K extends Edit['kind']> = Extract<Edit, { kind: K }>;
type Say<K extends Edit['kind']> = (edit: Of<K>, ground: Ground, project: Project) => Said;

const opening = (ground: Ground, id: string) => ground.name('openings', id);
const factWords = (field: string, value: unknown, project: Project) =>
  value === null ? 'no answer' : partInWords(field, value, [project]);

/** One sentence for every kind of edit: a kind without one does not compile. */
const says: { readonly [K in Edit['kind']]: Say<K> } = {
  setProject: ({ field, value }, ground, project) =>
    ground.changed(
      `project/${field}`,
      `Project. ${fieldInWords('project', field)}`,
      partInWords(field, value, [project]),
    ),
  setBasis: ({ value }, ground) => ground.changed('basis', 'Code basis', basisInWords(value)),
  setWeights: () => 'Weights of the recommendation changed.',
  setBuildingFact: ({ fact, value }, ground, project) =>
    ground.changed(
      `building/${fact}`,
      `Building. ${fieldInWords('building', fact)}`,
      factWords(fact, value, project),
    ),
  setUsual: ({ fact, value }, ground, project) =>
    ground.changed(
      `usual/${fact}`,
      `Usual of the building. ${fieldInWords('usual', fact)}`,
      factWords(fact, value, project),
    ),
  putFloor: ({ id, value }, ground) => ground.put('floors', id, value),
  putSpace: ({ id, value }, ground) => ground.put('spaces', id, value),
  putAmendment: ({ id, value }, ground) =>
    value === null
      ? ground.put('amendments', id, null)
      : `Local amendment entered: “${value.says}” (${value.source}).`,
  putOpening: ({ id, value }, ground) => ground.put('openings', id, value),
  setOpening: ({ id, field, value }, ground, project) =>
    ground.changed(
      `openings/${id}/${field}`,
      `${opening(ground, id)}. ${fieldInWords(`openings/${id}`, field)}`,
      field === 'floorId'
        ? ground.named('floors', value)
        : field === 'fromSpaceId' || field === 'toSpaceId'
          ? ground.named('spaces', value)
          : partInWords(field, value ?? '', [project]),
    ),
  setFact: ({ id, fact, value }, ground, project) =>
    ground.changed(
      `openings/${id}/facts/${fact}`,
      `${opening(ground, id)}. ${fieldInWords(`openings/${id}`, `facts/${fact}`)}`,
      factWords(`facts/${fact}`, value, project),
    ),
  appendVerdict: ({ value }, ground) =>
    `${verdictLabel(
      value.verdict,
      value.by,
      value.openingIds.map((id) => opening(ground, id).replace(/^Opening /, '')),
    )}.`,
  putRemark: ({ value }, ground) => {
    if (value === null) return 'Comment or question removed.';
    const where = opening(ground, value.openingId);
    const word = value.kind === 'question' ? 'Question' : 'Comment';
    if (value.closed !== null) return `${where}. ${word} closed: “${value.text}”`;
    const answer = answersInOrder(value).at(-1);
    return answer
      ? `${where}. ${word} answered: “${answer.text}”`
      : `${where}. ${word} entered: “${value.text}”`;
  },
  putPhoto: ({ value }, ground) =>
    value === null
      ? 'Photo removed.'
      : `${opening(ground, value.openingId)}. ${photoInWords(value).replace(/[.]$/, '')}.`,
  putPlan: ({ id, value }, ground) => ground.put('plans', id, value),
  putPin: ({ id, value }, ground) => `${ground.name('pins', id)} ${value === null ? 'taken away' : 'set'}.`,
  setOverride: ({ id, value }, ground, project) =>
    ground.changed(
      `openings/${id}/override`,
      `${opening(ground, id)}. Choice by hand`,
      value === null
        ? 'back to the recommendation'
        : partInWords('override', value, [project]).replace(/\.$/, ''),
    ),
  putHardwareSet: ({ id, value }, ground) => ground.put('hardwareSets', id, value),
  putPrice: ({ id, value }, ground) => ground.put('prices', id, value),
  putItemEntry: ({ id, value }, ground) => ground.put('itemBook', id, value),
  setBid: ({ value }) =>
    `Bid. ${Object.keys(value)
      .map((key) => fieldInWords('bid', key))
      .join(', ')} changed.`,
  keepSetNumbers: ({ value }) => `${counted(Object.keys(value).length, 'set number')} fixed.`,
  putCloset: ({ id, value }, ground) => ground.put('closets', id, value),
  putSupply: ({ id, value }, ground) => ground.put('supplies', id, value),
  putStandard: ({ id, value }, ground) =>
    value === null ? ground.put('standards', id, null) : `The project follows ${standardInWords(value)}.`,
  putProduct: ({ id, value }, ground) => ground.put('productBook', id, value),
  setRun: ({ id, field, value }, ground) =>
    ground.changed(
      `runs/${id}/${field}`,
      `${opening(ground, id)}. Cable, ${fieldInWords('runs', field).toLowerCase()}`,
      value === null ? 'no answer' : String(value.value),
    ),
  putRun: ({ id }, ground) => `${opening(ground, id)}. Cable as it was before.`,
  setAside: () => 'Parts of a file that could not be read were dealt with.',
  takeParts: ({ parts }) =>
    parts.length === 0
      ? 'History of the copies put back.'
      : `${counted(parts.length, 'part')} taken from another copy, or put back.`,
  settle: ({ part }, _ground, project) =>
    `Decided between two copies. ${recordInWords(part.record, [project])}, ${fieldInWords(part.record, part.field).toLowerCase()}: ${partInWords(part.field, part.value, [project])}.`,
};

export function saidOf<K extends Edit['kind']>(edit: Of<K>, ground: Ground, project: Project): Said {
  // A log of a newer version may hold a kind that this one does not know.
  const say = Object.hasOwn(says, edit.kind) ? (says[edit.kind] as Say<K>) : undefined;
  return say ? say(edit, ground, project) : `An edit that this version does not know (${edit.kind}).`;
}

/** The opening that an edit is about; undefined where it is about something else. */
export function openingOf(edit: Edit): string | undefined {
  switch (edit.kind) {
    case 'putOpening':
    case 'setOpening':
    case 'setFact':
    case 'setOverride':
    case 'setRun':
    case 'putRun':
      return edit.id;
    case 'putRemark':
    case 'putPhoto':
      return edit.value?.openingId;
    default:
      return undefined;
  }
}
