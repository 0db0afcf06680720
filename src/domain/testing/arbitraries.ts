import fc from 'fast-check';
import { type CodeBasis, ibcEditions, necEditions, nfpa101Editions, nfpa72Editions } from '../codes/basis.ts';
import type { FloorPlan, Pin } from '../model/floorPlan.ts';
import type { Standard } from '../model/standard.ts';
import type { Arrow, Photo } from '../model/photo.ts';
import type { Command, Edit } from '../commands/command.ts';
import type { Bid, ItemEntry, Price } from '../model/bid.ts';
import type { Fact, Facts } from '../model/fact.ts';
import {
  buildingFactKeys,
  type FactKey,
  type FactValue,
  fieldInfo,
  openingFactKeys,
} from '../model/fields.ts';
import {
  type Amendment,
  type Floor,
  type Opening,
  type Override,
  type Project,
  type StoredSet,
  scoreParts,
  securityLevels,
  type Space,
  type Weights,
} from '../model/project.ts';
import {
  type Closet,
  currentKinds,
  type Product,
  type Run,
  type Supply,
  supplyFeeds,
} from '../model/power.ts';
import { deviceIds } from '../devices/devices.ts';
import { uses } from '../model/uses.ts';
import { type Remark, type Verdict, verdictKinds } from '../model/verdict.ts';

/** Made-up projects of any shape that the schema allows, for properties that must hold for all of them. */

/** Any text a person or a file might bring, broken surrogates included. */
const aText = fc.oneof(fc.string({ maxLength: 12 }), fc.string({ unit: 'binary', maxLength: 6 }));
const aName = aText.filter((text) => text.trim() !== '');

/** A small pool, so that edits hit what exists. */
const anId = fc.constantFrom('a', 'b', 'c', 'd', '7', '10');

const anInstant = fc
  .date({ min: new Date('2020-01-01'), max: new Date('2035-01-01'), noInvalidDate: true })
  .map((date) => date.toISOString());
const aDay = anInstant.map((instant) => instant.slice(0, 10));

export function aValueOf<K extends FactKey>(key: K): fc.Arbitrary<FactValue<K>> {
  const info = fieldInfo(key);
  const any = (): fc.Arbitrary<unknown> => {
    switch (info.kind) {
      case 'yesNo':
        return fc.boolean();
      case 'choice':
        return fc.constantFrom(...Object.keys(info.options ?? {}));
      case 'number':
        // Whole numbers fit both kinds of number fields.
        return fc.integer({ min: Math.ceil(info.min ?? 0), max: Math.floor(info.max ?? 100) });
    }
  };
  return any() as fc.Arbitrary<FactValue<K>>;
}

const aStamp = fc.record({ at: anInstant, by: aText }, { requiredKeys: [] });

export function aFactOf<K extends FactKey>(key: K): fc.Arbitrary<Fact<FactValue<K>>> {
  const value = aValueOf(key);
  const bare: fc.Arbitrary<Fact<FactValue<K>>> = fc.oneof(
    value.map((value) => ({ is: 'known' as const, value })),
    fc.tuple(value, aName).map(([value, from]) => ({ is: 'assumed' as const, value, from })),
    fc.constant({ is: 'unknown' as const }),
  );
  return fc.tuple(bare, aStamp).map(([fact, stamp]) => ({ ...fact, ...stamp }));
}

/** Facts of an opening or of a building; by far not all are ever known. */
export function someFacts(keys: readonly FactKey[] = openingFactKeys): fc.Arbitrary<Facts> {
  return fc
    .uniqueArray(fc.constantFrom(...keys), { maxLength: 8 })
    .chain((chosen) =>
      fc
        .tuple(...chosen.map((key) => aFactOf(key)))
        .map((facts) => Object.fromEntries(chosen.map((key, index) => [key, facts[index]])) as Facts),
    );
}

const aFloorId = fc.option(anId);
const anOverride: fc.Arbitrary<Override> = fc.record({
  candidate: aName,
  reason: aName,
  by: aText,
  at: anInstant,
});
const aSeenFact = fc.record({
  is: fc.constantFrom('known' as const, 'assumed' as const, 'unknown' as const),
  value: fc.option(fc.oneof(fc.boolean(), aText)),
});
const aVerdict = (id: fc.Arbitrary<string>): fc.Arbitrary<Verdict> =>
  fc.record({
    id,
    sequence: fc.integer({ min: 1, max: 9 }),
    openingIds: fc.array(anId, { maxLength: 2 }),
    questions: fc.array(aText, { maxLength: 2 }),
    verdict: fc.constantFrom(...verdictKinds),
    by: aName,
    role: aText,
    firm: fc.constant(''),
    license: fc.constant(''),
    reference: fc.constant(''),
    on: aDay,
    at: fc.option(anInstant),
    reason: aText,
    conditions: fc.array(aText, { maxLength: 2 }),
    withdraws: fc.option(anId),
    saw: fc.record({
      basis: aText,
      program: aText,
      amendments: fc.constant({}),
      openings: fc.dictionary(
        anId,
        fc.record({
          mark: aText,
          candidate: fc.option(aName),
          facts: fc.dictionary(fc.constantFrom(...openingFactKeys), aSeenFact, { maxKeys: 3 }),
        }),
        { maxKeys: 2 },
      ),
    }),
    previousHash: aText,
    hash: aText,
  });
const aRemark = (id: fc.Arbitrary<string>): fc.Arbitrary<Remark> =>
  fc.record({
    id,
    openingId: anId,
    kind: fc.constantFrom('comment' as const, 'question' as const),
    text: aName,
    by: aText,
    at: anInstant,
    answers: fc.constant({}),
    closed: fc.option(fc.record({ by: aText, at: anInstant })),
  });

const aShare = fc.integer({ min: 0, max: 100 }).map((percent) => percent / 100);
const anArrow = (id: fc.Arbitrary<string>): fc.Arbitrary<Arrow> =>
  fc.record({ id, fromX: aShare, fromY: aShare, toX: aShare, toY: aShare });

/** Of the few openings there are, so that a removal meets its photos. */
const aPhoto = (id: fc.Arbitrary<string>): fc.Arbitrary<Photo> =>
  fc.record({
    id,
    openingId: anId,
    about: fc.constantFrom('', 'edge', 'fireLabel', 'ofALaterVersion'),
    caption: aText.map((text) => text.slice(0, 300)),
    arrows: table(anArrow, 2),
    sha256: fc.constantFrom('a', 'b', '0').map((digit) => digit.repeat(64)),
    widthPx: fc.constantFrom(1200, 1600),
    heightPx: fc.constantFrom(1200, 1600),
    bytes: fc.integer({ min: 1, max: 400_000 }),
    at: anInstant,
    by: aText,
  });

const aPlan = (id: fc.Arbitrary<string>): fc.Arbitrary<FloorPlan> =>
  fc.record({
    id,
    floorId: anId,
    name: aText.map((text) => text.slice(0, 120)),
    sha256: fc.constantFrom('c', 'd').map((digit) => digit.repeat(64)),
    widthPx: fc.constantFrom(1200, 3000),
    heightPx: fc.constantFrom(900, 2000),
    bytes: fc.integer({ min: 1, max: 400_000 }),
    scale: fc.option(
      fc.record({
        fromX: aShare,
        fromY: aShare,
        toX: aShare,
        toY: aShare,
        lengthFt: fc.constantFrom(3, 120.5),
      }),
    ),
    at: anInstant,
    by: aText,
  });
const aPin = (id: fc.Arbitrary<string>): fc.Arbitrary<Pin> =>
  fc.record({ id, planId: anId, x: aShare, y: aShare });

const aMark = fc
  .oneof(
    fc.integer({ min: 1, max: 999 }).map(String),
    fc.tuple(fc.integer({ min: 100, max: 199 }), fc.constantFrom('A', 'B')).map((parts) => parts.join('')),
    aName,
  )
  .filter((mark) => mark.length <= 40);

function anOpening(id: fc.Arbitrary<string> = anId): fc.Arbitrary<Opening> {
  return fc.record({
    id,
    mark: aMark,
    floorId: aFloorId,
    fromSpaceId: fc.option(anId),
    toSpaceId: fc.option(anId),
    facts: someFacts(),
    notes: aText,
    override: fc.option(anOverride, { freq: 4 }),
  });
}

const aFloor = (id: fc.Arbitrary<string>): fc.Arbitrary<Floor> =>
  fc.record({ id, name: aName, level: fc.oneof(fc.integer({ min: -3, max: 60 }), fc.constantFrom(0.5, -0)) });

const aSpace = (id: fc.Arbitrary<string>): fc.Arbitrary<Space> =>
  fc
    .record({ space: aBareSpace(id), useFrom: fc.option(aName, { freq: 3 }) })
    .map(({ space, useFrom }) => (useFrom === null ? space : { ...space, useFrom }));
const aBareSpace = (id: fc.Arbitrary<string>): fc.Arbitrary<Space> =>
  fc.record({
    id,
    name: aName,
    floorId: aFloorId,
    kind: fc.constantFrom('room', 'corridor', 'stair', 'lobby', 'elevator', 'outside', 'roof', 'court'),
    securityLevel: fc.option(fc.constantFrom(...securityLevels)),
    occupantLoad: fc.option(fc.nat(5000)),
    use: fc.option(fc.constantFrom(...uses)),
    areaFt2: fc.option(fc.double({ min: 0, max: 5_000_000, noNaN: true })),
    commonPathFt: fc.option(fc.integer({ min: 0, max: 5000 })),
    publicWay: fc.option(fc.boolean()),
  });

const anAmendment = (id: fc.Arbitrary<string>): fc.Arbitrary<Amendment> =>
  fc.record({
    id,
    says: aName,
    source: aName,
    effect: fc.constantFrom('prohibit', 'require', 'signOff'),
    when: fc.dictionary(fc.constantFrom(...openingFactKeys), fc.oneof(fc.boolean(), aText), { maxKeys: 2 }),
    devices: fc.array(aName, { maxLength: 2 }),
    releases: fc.array(aName, { maxLength: 2 }),
    failModes: fc.array(fc.constantFrom('failSafe', 'failSecure'), { maxLength: 1 }),
  });

export const aBasis: fc.Arbitrary<CodeBasis> = fc.record({
  ibc: fc.option(fc.constantFrom(...ibcEditions)),
  nfpa101: fc.option(fc.constantFrom(...nfpa101Editions)),
  nec: fc.option(fc.constantFrom(...necEditions)),
  nfpa72: fc.option(fc.constantFrom(...nfpa72Editions)),
});

export const someWeights: fc.Arbitrary<Weights> = fc
  .tuple(...scoreParts.map(() => fc.nat(100)))
  .map((numbers) => Object.fromEntries(scoreParts.map((part, index) => [part, numbers[index]])) as Weights)
  .chain((weights) =>
    fc
      .option(
        fc.dictionary(
          fc.constantFrom(...deviceIds),
          fc.record({ points: fc.constantFrom(1, 2, 5, 10), says: aName }),
          { maxKeys: 2 },
        ),
        { freq: 2 },
      )
      .map((preferred) => (preferred === null ? weights : { ...weights, preferred })),
  );

/** A table of things that know their own key. */
function table<T>(
  thing: (id: fc.Arbitrary<string>) => fc.Arbitrary<T>,
  most: number,
): fc.Arbitrary<Record<string, T>> {
  return fc
    .uniqueArray(anId, { maxLength: most })
    .chain((ids) =>
      fc
        .tuple(...ids.map((id) => thing(fc.constant(id))))
        .map((things) => Object.fromEntries(ids.map((id, index) => [id, things[index] as T]))),
    );
}

const anAmount = (most: number) => fc.double({ min: 0.001, max: most, noNaN: true });

export const aCloset = (id: fc.Arbitrary<string>): fc.Arbitrary<Closet> =>
  fc.record({
    id,
    name: aName,
    floorId: aFloorId,
    spaceId: fc.option(anId),
    linePower: fc.option(fc.boolean()),
    temperatureC: fc.option(fc.integer({ min: -40, max: 60 })),
    notes: aText,
  });

export const aSupply = (id: fc.Arbitrary<string>): fc.Arbitrary<Supply> =>
  fc.record({
    id,
    name: aName,
    closetId: fc.option(anId),
    volts: fc.oneof(fc.constantFrom(12, 24), anAmount(60)),
    current: fc.constantFrom(...currentKinds),
    amps: anAmount(40),
    peakAmps: fc.option(anAmount(100)),
    outputs: fc.integer({ min: 1, max: 64 }),
    class2: fc.boolean(),
    batteryAh: fc.option(fc.double({ min: 0, max: 200, noNaN: true })),
    holdsVolts: fc.boolean(),
    fedBy: fc.constantFrom(...supplyFeeds),
  });

const someIds = fc.dictionary(anId, fc.constant(true as const), { maxKeys: 2, noNullPrototype: true });
const aStandard = (id: fc.Arbitrary<string>): fc.Arbitrary<Standard> =>
  fc.record(
    {
      id,
      name: aName,
      edition: aName,
      amendments: someIds,
      products: someIds,
      items: someIds,
      templates: table(() => fc.record({ name: aName, facts: someFacts(['doorType', 'latch']) }), 2),
      columns: fc.dictionary(aName, aName, { maxKeys: 2 }),
    },
    { requiredKeys: ['id', 'name', 'edition', 'amendments', 'products', 'items'] },
  );

export const aProduct = (id: fc.Arbitrary<string>): fc.Arbitrary<Product> =>
  fc
    .tuple(
      fc.record({
        id,
        of: fc.oneof(
          fc.constantFrom('magnet', 'strikeMortise', 'mortiseLock', 'reader', 'controller'),
          aName,
        ),
        maker: aText,
        part: aName,
        volts: fc.constantFrom(12, 24),
        current: fc.constantFrom(...currentKinds),
        steadyA: anAmount(5),
        peakA: fc.option(anAmount(20)),
        leastVolts: fc.option(anAmount(60)),
        suppressor: fc.constantFrom('builtIn' as const, 'none' as const, null),
        listing: aText,
        price: fc.option(fc.double({ min: 0, max: 5000, noNaN: true })),
      }),
      aStamp,
    )
    .map(([product, stamp]) => ({ ...product, ...stamp }));

const stampedValue = <T>(value: fc.Arbitrary<T>) =>
  fc.tuple(value, aStamp).map(([value, stamp]) => ({ value, ...stamp }));
const aRun = (id: fc.Arbitrary<string>): fc.Arbitrary<Run> =>
  fc.record({
    id,
    lengthFt: fc.option(stampedValue(fc.double({ min: 0, max: 5000, noNaN: true }))),
    closetId: fc.option(stampedValue(anId)),
    supplyId: fc.option(stampedValue(anId)),
  });

/** A small pool as well; a set stands for what it is made of, in any writing. */
const aSignature = fc.constantFrom('a', 'mortise|butt ×3', '12', 'ß');
const aSetNumber = aName.filter((text) => text.length <= 40);

const aPrice = (id: fc.Arbitrary<string>): fc.Arbitrary<Price> =>
  fc.record(
    { id, amount: fc.constantFrom(0, 12.5, 999_999), at: anInstant },
    { requiredKeys: ['id', 'amount'] },
  );
const anItemEntry = (id: fc.Arbitrary<string>): fc.Arbitrary<ItemEntry> =>
  fc.record({ id, finish: aText, keySet: aText, suppliedBy: aText, installedBy: aText, wiredBy: aText });
const aBid: fc.Arbitrary<Bid> = fc.record({
  projectNumber: aText,
  address: aText,
  drawnBy: aText,
  checkedBy: aText,
  currency: fc.constantFrom('USD', 'EUR'),
  locale: fc.constantFrom('en-US', 'de-DE'),
  taxPercent: fc.option(fc.constantFrom(0, 7.25)),
  markUpPercent: fc.option(fc.constantFrom(0, 15)),
});

const aHardwareSet = (id: fc.Arbitrary<string>): fc.Arbitrary<StoredSet> =>
  fc.record(
    {
      id,
      number: aSetNumber,
      name: aName,
      revision: fc.nat({ max: 3 }),
      members: fc.dictionary(anId, fc.constant(true as const), { maxKeys: 3 }),
      content: aSignature,
      formerly: aSignature,
    },
    { requiredKeys: ['id', 'number', 'name', 'revision', 'members', 'content'] },
  );

/** Any project; marks may repeat, as an import may bring it. */
export const aProject: fc.Arbitrary<Project> = fc.record({
  id: anId,
  name: aName,
  preparedBy: aText,
  jurisdiction: aText,
  notes: aText,
  letter: aText,
  basis: aBasis,
  amendments: table(anAmendment, 3).map((all) => Object.values(all)),
  building: someFacts(buildingFactKeys),
  usual: someFacts(['leafMaterial', 'leafWidthIn', 'wishLockdown']),
  weights: someWeights,
  floors: table(aFloor, 3),
  spaces: table(aSpace, 3),
  openings: table(anOpening, 5),
  closets: table(aCloset, 2),
  supplies: table(aSupply, 2),
  productBook: table(aProduct, 2),
  runs: table(aRun, 3),
  hardwareSets: table(aHardwareSet, 3),
  prices: table(aPrice, 2),
  itemBook: table(anItemEntry, 2),
  bid: aBid,
  verdicts: table(aVerdict, 1),
  verdictIndex: fc.dictionary(anId, aText, { maxKeys: 1 }),
  remarks: table(aRemark, 1),
  photos: table(aPhoto, 2),
  plans: table(aPlan, 1),
  pins: table(aPin, 2),
  standards: table(aStandard, 2),
});

const aFactEdit = (keys: readonly FactKey[]) =>
  fc
    .constantFrom(...keys)
    .chain((fact) => fc.record({ fact: fc.constant(fact), value: fc.option(aFactOf(fact)) }));

/** `put…` edits carry a thing under its own id. */
function putting<K extends string, T>(kind: K, thing: (id: fc.Arbitrary<string>) => fc.Arbitrary<T>) {
  return anId.chain((id) =>
    fc.record({ kind: fc.constant(kind), id: fc.constant(id), value: fc.option(thing(fc.constant(id))) }),
  );
}

/** Any edit of the right shape. Some do not fit the project they meet and are refused, as in life. */
export const anEdit: fc.Arbitrary<Edit> = fc.oneof(
  fc.record({
    kind: fc.constant('setProject' as const),
    field: fc.constantFrom('name', 'preparedBy', 'jurisdiction', 'notes', 'letter'),
    value: aText,
  }),
  fc.record({ kind: fc.constant('setBasis' as const), value: aBasis }),
  fc.record({ kind: fc.constant('setWeights' as const), value: someWeights }),
  aFactEdit(buildingFactKeys).map((said) => ({ kind: 'setBuildingFact' as const, ...said })),
  aFactEdit(openingFactKeys).map((said) => ({ kind: 'setUsual' as const, ...said })),
  putting('putFloor', aFloor),
  putting('putSpace', aSpace),
  putting('putAmendment', anAmendment),
  putting('putOpening', anOpening),
  putting('putHardwareSet', aHardwareSet),
  putting('putPrice', aPrice),
  putting('putItemEntry', anItemEntry),
  aBid.map((value) => ({ kind: 'setBid' as const, value })),
  fc.record({
    kind: fc.constant('setOpening' as const),
    id: anId,
    field: fc.constantFrom('floorId', 'fromSpaceId', 'toSpaceId'),
    value: fc.option(anId),
  }),
  fc.record({ kind: fc.constant('setOpening' as const), id: anId, field: fc.constant('mark'), value: aMark }),
  fc.record({
    kind: fc.constant('setOpening' as const),
    id: anId,
    field: fc.constant('notes'),
    value: aText,
  }),
  fc.tuple(anId, aFactEdit(openingFactKeys)).map(([id, said]) => ({ kind: 'setFact' as const, id, ...said })),
  anId.chain((id) =>
    fc.record({
      kind: fc.constant('appendVerdict' as const),
      id: fc.constant(id),
      value: aVerdict(fc.constant(id)),
    }),
  ),
  putting('putRemark', aRemark),
  putting('putPhoto', aPhoto),
  putting('putPlan', aPlan),
  putting('putPin', aPin),
  fc.record({ kind: fc.constant('setOverride' as const), id: anId, value: fc.option(anOverride) }),
  fc.record({
    kind: fc.constant('keepSetNumbers' as const),
    value: fc.dictionary(aSignature, fc.option(aSetNumber), { maxKeys: 3 }),
  }),
  putting('putCloset', aCloset),
  putting('putSupply', aSupply),
  putting('putStandard', aStandard),
  putting('putProduct', aProduct),
  putting('putRun', aRun),
  fc.record({
    kind: fc.constant('setRun' as const),
    id: anId,
    field: fc.constantFrom('closetId', 'supplyId'),
    value: fc.option(stampedValue(anId)),
  }),
  fc.record({
    kind: fc.constant('setRun' as const),
    id: anId,
    field: fc.constant('lengthFt'),
    value: fc.option(stampedValue(fc.integer({ min: -5, max: 6000 }))),
  }),
  fc.record({
    kind: fc.constant('setAside' as const),
    value: fc.array(fc.record({ where: aText, says: aText, raw: fc.jsonValue(), openingId: anId }), {
      maxLength: 2,
    }),
  }),
  fc.record({
    kind: fc.constant('settle' as const),
    part: fc.record({
      record: anId.map((id) => `openings/${id}`),
      field: fc.constantFrom('notes', 'facts/latch', ''),
      value: fc.constant(undefined),
    }),
  }),
  fc.record({
    kind: fc.constant('takeParts' as const),
    parts: fc.uniqueArray(
      fc.record({
        record: fc.constantFrom('project', 'building', 'extra'),
        field: fc.constantFrom('notes', 'later'),
        value: aText,
      }),
      { maxLength: 2, selector: ({ record, field }) => `${record} ${field}` },
    ),
    history: fc.constant(null),
  }),
) as fc.Arbitrary<Edit>;

/** Edits that undo takes back: a verdict stays in its log. */
export const anUndoable = anEdit.filter((edit) => edit.kind !== 'appendVerdict');

export const aCommand: fc.Arbitrary<Command> = fc.record({
  id: anId,
  at: anInstant,
  by: aText,
  label: aText,
  edits: fc.array(anEdit, { minLength: 1, maxLength: 4 }),
});
