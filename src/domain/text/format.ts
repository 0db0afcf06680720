import { type Slots, slotOf } from '../logic/slots.ts';
import { type FactKey, fieldInfo, isFactKey, type AnyValue } from '../model/fields.ts';
import { midSentence, startSentence } from './midSentence.ts';

/** Units that are counted nouns, for one of them. */
const one: Readonly<Record<string, string>> = { people: 'person', stories: 'story', doors: 'door' };

/** A fact's value as a person says it: "90 min", "Hollow metal", "yes", "not surveyed". */
export function valueInWords(key: FactKey, value: AnyValue | undefined): string {
  if (value === undefined) return 'not surveyed';
  const info = fieldInfo(key);
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'number') {
    return info.unit ? `${value} ${value === 1 ? (one[info.unit] ?? info.unit) : info.unit}` : String(value);
  }
  return info.options?.[value] ?? value;
}

/** The same within a sentence: "the latch is mortise latch with deadbolt", "in B or I-2". */
export function valueInSentence(key: FactKey, value: AnyValue | undefined): string {
  const said = valueInWords(key, value);
  return fieldInfo(key).kind === 'choice' ? midSentence(said) : said;
}

/** A sentence cut at its facts, once: it is filled at thousands of openings. */
interface Cut {
  readonly facts: readonly {
    readonly before: string;
    readonly key: FactKey;
    readonly slot: number;
    readonly starts: boolean;
  }[];
  readonly end: string;
}
const cuts = new Map<string, Cut>();

function cutAtFacts(sentence: string): Cut {
  const facts: Cut['facts'][number][] = [];
  let before = '';
  // Texts stand at even places, names in braces at odd ones.
  sentence.split(/\{(\w+)\}/).forEach((part, index) => {
    if (index % 2 === 0) before += part;
    else if (!isFactKey(part)) before += `{${part}}`;
    else {
      const starts = (index === 1 && before === '') || /[.!?]\s+$/.test(before);
      facts.push({ before, key: part, slot: slotOf(part), starts });
      before = '';
    }
  });
  return { facts, end: before };
}

/** Replaces `{factKey}` by the fact's value. Other braces stay: an amendment is a person's own sentence. */
export function fillSentence(sentence: string, slots: Slots): string {
  let cut = cuts.get(sentence);
  if (!cut) {
    cut = cutAtFacts(sentence);
    cuts.set(sentence, cut);
  }
  let filled = '';
  for (const { before, key, slot, starts } of cut.facts) {
    const said = valueInSentence(key, slots[slot]);
    filled += before + (starts ? startSentence(said) : said);
  }
  return filled + cut.end;
}
