import { type AnyFact } from '../model/fact.ts';
import { type FactKey, type AnyValue } from '../model/fields.ts';
import { mmPerInch, parseLength } from '../units/length.ts';
import { parseSize } from '../units/size.ts';
import { readFireRating } from './fireRating.ts';
import { chosenMinutes, type ChosenWords, undecidedRating, type UndecidedWord } from './words.ts';
import type { LengthUnit, Role } from './headers.ts';
import { isFalse, isTrue, operationOf } from './operation.ts';
import { hundredths, oneSpelling, readValue } from '../survey/readValue.ts';

/** What the cells of one row say, by role; several where a role may have several columns. */
export interface Said {
  readonly role: Role;
  readonly header: string;
  readonly text: string;
  readonly unit: LengthUnit;
}

export interface Reading {
  readonly facts: Map<FactKey, AnyFact>;
  /** Sentences about cells that were not taken, with their column. */
  readonly problems: { readonly column: string; readonly says: string }[];
  /** Cells not taken or taken only in part, some of them twice; they go into the notes as they stand. */
  readonly kept: Said[];
  /** Words of these cells that may mean two things. */
  readonly undecided: UndecidedWord[];
}

/** Lower, and it is a stall door or a hatch: 6 ft. */
const lowestDoorIn = 72;
/** No leaf of one door is wider in usual schedules: 4 ft, which is written 1220 mm. */
const widestLeafIn = 48.1;

/** "column Door Material: Wood" — the words behind an assumption. */
export function quote(said: Said): string {
  return `column ${said.header}: ${said.text.trim()}`;
}

/**
 * Reads what an architect wrote. A figure or word of its own column is taken as known; what has to be read out
 * of a description is assumed and says from where; whatever can mean two things is left open and kept as text.
 */
export function readArchitect(cells: readonly Said[], words: ChosenWords = {}): Reading {
  const reading: Reading = { facts: new Map(), problems: [], kept: [], undecided: [] };
  const one = (role: Role) => cells.find((cell) => cell.role === role && cell.text.trim() !== '');
  const texts = cells.filter((cell) => ['typeText', 'material', 'notes'].includes(cell.role));

  readDoorType(texts, reading);
  readOperation(one('operation'), reading);
  for (const role of ['width', 'height', 'thickness'] as const) readMeasure(one(role), role, reading);
  readOverall(one('overallWidth'), one('overallHeight'), reading);
  readSizeColumn(one('size'), reading);
  readSizeInText(
    cells.filter((cell) => cell.role === 'typeText'),
    reading,
  );
  if (!operationOf(one('operation')?.text ?? '')) readSingle(cells, reading);
  readLeaf(
    one('material'),
    cells.filter((cell) => cell.role === 'typeText'),
    reading,
  );
  readFrame(one('frame'), reading);
  readRating(one('rating'), words, reading);
  readHand(one('hand'), reading);
  readReader(
    one('reader'),
    cells.filter((cell) => cell.role === 'notes'),
    reading,
  );
  readExterior(
    cells.filter((cell) => cell.role === 'typeText'),
    reading,
  );
  readFlags(one, reading);
  return reading;
}

/** How a model says that the door moves: a setting of its library part, and nobody has seen the door. */
function readOperation(said: Said | undefined, reading: Reading): void {
  const operation = said && operationOf(said.text);
  if (!operation) return;
  if (operation.doorType === null) leaveOpen(reading, said, operation.says);
  else assume(reading, 'doorType', operation.doorType, said);
}

/** A model measures the whole door, lining and all, so that the leaf is at most as wide. */
function readOverall(width: Said | undefined, height: Said | undefined, reading: Reading): void {
  for (const [said, key] of [
    [width, 'leafWidthIn'],
    [height, 'leafHeightIn'],
  ] as const) {
    if (!said) continue;
    const length = parseLength(said.text, { bare: said.unit ?? 'refuse' });
    const open = reading.problems.some(({ says }) => says.startsWith('The model says'));
    if (!length.ok) leaveOpen(reading, said, length.says);
    else if (key === 'leafWidthIn' && (severalLeaves(reading) || open)) leaveOpen(reading, said, widthOfAll);
    else {
      const checked = readValue(key, String(hundredths(length.inches)));
      if (checked.ok) assume(reading, key, hundredths(length.inches), said);
      else leaveOpen(reading, said, checked.says);
    }
  }
}

/**
 * Yes and no of Pset_DoorCommon (ISO 16739-1). They are set by default in many library parts, so each is assumed
 * at most, and a no, which nobody may have meant, says nothing but that the door is inside.
 */
function readFlags(one: (role: Role) => Said | undefined, reading: Reading): void {
  const flag = (role: Role, key: FactKey, value: AnyValue) => {
    const said = one(role);
    if (!said) return;
    if (isTrue(said.text)) assume(reading, key, value, said);
    else reading.kept.push(said);
  };
  const external = one('isExternal');
  flag('isExternal', 'exterior', true);
  if (external && isFalse(external.text)) assume(reading, 'exterior', false, external);
  flag('accessible', 'accessibleRoute', true);
  flag('selfClosing', 'closing', 'selfClosing');
  flag('smokeStop', 'smokeSeals', true);
  const exit = one('fireExit');
  if (!exit) return;
  // An exit in case of fire that leads outdoors has one place in leaving; inside it may have several.
  if (isTrue(exit.text) && external && isTrue(external.text))
    assume(reading, 'egressRole', 'exteriorExit', exit);
  else reading.kept.push(exit);
}

function assume(reading: Reading, key: FactKey, value: AnyValue, said: Said): void {
  if (!reading.facts.has(key)) reading.facts.set(key, { is: 'assumed', value, from: quote(said) });
}

function leaveOpen(reading: Reading, said: Said, says: string): void {
  reading.problems.push({ column: said.header, says });
  reading.kept.push(said);
}

const pairWords = /\b(pair|pr|dbl|double)\b(?!.{0,3}(acting|egress|glaz|cyl|swing))/i;
const typeWords: readonly (readonly [RegExp, string])[] = [
  [/double[- ]egress/i, 'doubleEgressPair'],
  [/double[- ](acting|swing)/i, 'doubleActing'],
  [/\b(overhead|coiling|roll-?up|rolling|sectional)\b/i, 'overhead'],
  [/\b(folding|accordion|bi-?fold)\b/i, 'folding'],
  [/\brevolving\b/i, 'revolving'],
  [/\bauto(matic)?\b.*\bslid|\bslid\w*\b.*\bauto/i, 'slidingAutomatic'],
  [pairWords, 'pair'],
];

function readDoorType(texts: readonly Said[], reading: Reading): void {
  for (const said of texts) {
    const found = typeWords.find(([pattern]) => pattern.test(said.text));
    if (found) return assume(reading, 'doorType', found[1], said);
  }
}

const tooWide = 'This is too wide for one leaf; say whether it is a pair and how wide a leaf is.';
const widthOfWhat = 'The width may mean one leaf or all of them; enter the width of a leaf.';
const widthOfAll = 'The model gives the width of the whole door; enter the width of a leaf.';
function severalLeaves(reading: Reading): boolean {
  const type = reading.facts.get('doorType');
  return (
    type !== undefined &&
    type.is !== 'unknown' &&
    ['pair', 'doubleEgressPair', 'folding'].includes(String(type.value))
  );
}

const measureKeys = { width: 'leafWidthIn', height: 'leafHeightIn', thickness: 'leafThicknessIn' } as const;

function readMeasure(said: Said | undefined, role: keyof typeof measureKeys, reading: Reading): void {
  if (!said) return;
  if (role === 'width' && severalLeaves(reading)) return leaveOpen(reading, said, widthOfWhat);
  // A bare number under a heading without a unit is refused by the reader of lengths.
  const length = parseLength(said.text, { bare: said.unit ?? 'refuse' });
  if (!length.ok) return leaveOpen(reading, said, length.says);
  put(reading, measureKeys[role], hundredths(length.inches), said);
}

function put(reading: Reading, key: FactKey, value: AnyValue, said: Said): void {
  const checked = readValue(key, String(value));
  if (!checked.ok) return leaveOpen(reading, said, checked.says);
  reading.facts.set(key, { is: 'known', value });
}

function readSizeColumn(said: Said | undefined, reading: Reading): void {
  if (!said) return;
  const size = parseSize(said.text, { bare: said.unit ?? 'refuse' });
  if (!size.ok) return leaveOpen(reading, said, size.says);
  put(reading, 'leafHeightIn', hundredths(size.heightIn), said);
  if (size.thicknessIn !== undefined) put(reading, 'leafThicknessIn', hundredths(size.thicknessIn), said);
  if (size.pair) assume(reading, 'doorType', 'pair', said);
  if (severalLeaves(reading)) leaveOpen(reading, said, widthOfWhat);
  else if (size.widthIn > widestLeafIn) leaveOpen(reading, said, tooWide);
  else put(reading, 'leafWidthIn', hundredths(size.widthIn), said);
}

/** "Flush Wood - 0915 x 2134mm": fills measures that have no column, and contradicts one that has. */
function readSizeInText(texts: readonly Said[], reading: Reading): void {
  for (const said of texts) {
    const found = /\b(\d{3,4}) ?x ?(\d{3,4}) ?mm\b/i.exec(said.text);
    if (!found) continue;
    const [width, height] = [Number(found[1]) / mmPerInch, Number(found[2]) / mmPerInch];
    if (height < lowestDoorIn) {
      leaveOpen(
        reading,
        said,
        `${found[2]} mm is too low for a door; it may be a partition. Nothing was taken.`,
      );
      return;
    }
    const column = reading.facts.get('leafWidthIn');
    if (column?.is === 'known' && typeof column.value === 'number' && width > column.value * 1.5) {
      leaveOpen(
        reading,
        said,
        `The text names a width of ${found[1]} mm beside ${column.value} in of the width column: it may be a pair. Say which.`,
      );
      return;
    }
    if (reading.facts.has('doorType')) return;
    assume(reading, 'leafWidthIn', hundredths(width), said);
    assume(reading, 'leafHeightIn', hundredths(height), said);
    return;
  }
}

/** No word of a pair and a width that one leaf can have. Where text and column disagree nothing is assumed. */
function readSingle(cells: readonly Said[], reading: Reading): void {
  if (reading.facts.has('doorType')) return;
  if (reading.problems.some((problem) => problem.says.includes('pair'))) return;
  // "Sliding" without "automatic", gates and turnstiles are no swinging leaves, whatever their width.
  if (cells.some((cell) => /\b(slid\w*|gate|turnstile|grille|partition)\b/i.test(cell.text))) return;
  const width = reading.facts.get('leafWidthIn');
  if (width === undefined || width.is === 'unknown' || Number(width.value) > widestLeafIn) return;
  const said = cells.find((cell) => ['width', 'size'].includes(cell.role) && cell.text.trim() !== '');
  const source = width.is === 'assumed' ? width.from : said ? quote(said) : 'the width';
  const from = `${source}; no word of a pair`;
  reading.facts.set('doorType', { is: 'assumed', value: 'single', from });
}

function readLeaf(material: Said | undefined, texts: readonly Said[], reading: Reading): void {
  const said = [...texts, ...(material ? [material] : [])];
  for (const cell of said) {
    const leaf = leafIn(cell.text, material?.text ?? '');
    if (leaf) return assume(reading, 'leafMaterial', leaf, cell);
  }
  if (!material) return;
  const word = oneSpelling(material.text);
  const says = /wood|^wd$|timber/.test(word)
    ? 'Wood alone does not say which core; the leaf stays open.'
    : /alum|^al$/.test(word)
      ? 'Aluminum alone does not say how wide the stile is; the leaf stays open.'
      : `“${material.text.trim()}” does not say what the leaf is; it stays open.`;
  leaveOpen(reading, material, says);
}

function leafIn(text: string, material: string): string | undefined {
  const plain = oneSpelling(text);
  if (/\bmineral[- ]core\b/.test(plain)) return 'woodMineralCore';
  if (/\b(solid[- ]core( wood)?|scwd)\b/.test(plain)) return 'woodSolidCore';
  if (/\b(hollow[- ]core( wood)?|hcwd)\b/.test(plain)) return 'woodHollowCore';
  if (/\bnarrow[- ]stile\b/.test(plain)) return 'aluminiumNarrow';
  if (/\bmedium[- ]stile\b/.test(plain)) return 'aluminiumMedium';
  if (/\bwide[- ]stile\b/.test(plain)) return 'aluminiumWide';
  if (/\b(frameless|all)[- ]glass\b/.test(plain)) return 'glassFrameless';
  // Stainless steel is also what toilet partitions are made of.
  if (/stainless/.test(plain) || /stainless/i.test(material)) return undefined;
  if (/\b(hollow metal|hm|steel)\b/.test(plain)) return 'hollowMetal';
  return undefined;
}

function readFrame(said: Said | undefined, reading: Reading): void {
  if (!said) return;
  const plain = oneSpelling(said.text);
  const exact = readValue('frameMaterial', said.text.trim());
  if (exact.ok) return put(reading, 'frameMaterial', exact.value, said);
  if (/^(steel|hm|hollow metal|pressed steel|hms)$/.test(plain))
    return assume(reading, 'frameMaterial', 'hollowMetal', said);
  if (/^(al|alum\.?|aluminum)$/.test(plain)) return assume(reading, 'frameMaterial', 'aluminium', said);
  if (/^(wd|timber)$/.test(plain)) return assume(reading, 'frameMaterial', 'wood', said);
  leaveOpen(reading, said, `“${said.text.trim()}” does not say what the frame is; it stays open.`);
}

function readRating(said: Said | undefined, words: ChosenWords, reading: Reading): void {
  if (!said) return;
  const open = undecidedRating(said.header, said.text);
  const chosen = open && chosenMinutes(words, open);
  if (open) reading.undecided.push(open);
  // Somebody said what the word means in this column; that is known of the column and assumed of the door.
  if (chosen !== undefined) {
    reading.kept.push(said);
    return assume(reading, 'fireRatingMin', chosen, said);
  }
  const rating = readFireRating(said.text);
  if (!rating.ok) return leaveOpen(reading, said, rating.says);
  if (rating.minutes === null) return void reading.kept.push(said);
  put(reading, 'fireRatingMin', rating.minutes, said);
  if (rating.smoke) assume(reading, 'smokeSeals', true, said);
}

function readHand(said: Said | undefined, reading: Reading): void {
  if (!said) return;
  const hand = readValue('handing', said.text.trim().toUpperCase());
  if (hand.ok) return put(reading, 'handing', hand.value, said);
  leaveOpen(reading, said, hand.says);
}

function readReader(said: Said | undefined, notes: readonly Said[], reading: Reading): void {
  if (said) {
    const plain = oneSpelling(said.text);
    if (/^(yes|y|x|cr|card reader)$/.test(plain)) return assume(reading, 'readerSides', 'secure', said);
    if (/^(no|n|none)$/.test(plain)) return assume(reading, 'readerSides', 'none', said);
    return leaveOpen(reading, said, `“${said.text.trim()}” does not say where a credential is read.`);
  }
  const note = notes.find(
    (cell) => /\bcard[- ]?readers?\b/i.test(cell.text) && !/\bno card/i.test(cell.text),
  );
  if (note) assume(reading, 'readerSides', 'secure', note);
}

function readExterior(texts: readonly Said[], reading: Reading): void {
  const said = texts.find((cell) => /\bexterior\b/i.test(cell.text));
  if (said) assume(reading, 'exterior', true, said);
}
