/**
 * Numbered, named steps from one file format to the next: plain object in, plain object out. A step never
 * imports today's types, because it must still work when those have changed.
 */
export interface Migration {
  readonly to: number;
  readonly name: string;
  readonly up: (project: unknown) => unknown;
}

type Raw = Readonly<Record<string, unknown>>;
const isObject = (value: unknown): value is Raw =>
  value !== null && typeof value === 'object' && !Array.isArray(value);

/**
 * Spaces say what they are used for, how large they are and how long the way is before people have a choice; the
 * project remembers the number of each hardware set. All of it is not known yet. What is damaged passes through as
 * it is, to be set aside where everything else is.
 */
function spacesGetUseAndArea(project: unknown): unknown {
  if (!isObject(project)) return project;
  const { spaces } = project;
  const asked = { use: null, areaFt2: null, commonPathFt: null };
  return {
    setNumbers: {},
    ...project,
    ...(isObject(spaces)
      ? {
          spaces: Object.fromEntries(
            Object.entries(spaces).map(([id, space]) => [
              id,
              isObject(space) ? { ...asked, ...space } : space,
            ]),
          ),
        }
      : {}),
  };
}

/** A fact under another name or with another answer; what is no fact passes through to be set aside. */
type Step = (fact: Raw) => Readonly<Record<string, Raw>>;
const unanswered = ({ value: _value, from: _from, ...stamp }: Raw): Raw => ({ ...stamp, is: 'unknown' });

const factsOfThree: Readonly<Record<string, Step>> = {
  // "Seen" was seen; "not seen" did not say whether one was painted over, so it is the plainest of the answers.
  labelSeen: (fact) => ({
    fireLabel: 'value' in fact ? { ...fact, value: fact.value === true ? 'seen' : 'none' } : fact,
  }),
  // One answer stood for leaf and frame. "Yes" was both of them; "no" did not say which, so both are asked again.
  preparedUnderLabel: (fact) => {
    const each = fact.value === true ? fact : unanswered(fact);
    return { framePrepared: each, leafPrepared: each };
  },
  // The graver of what the old answer may have meant; a padlock takes a key or a tool.
  existingArrangement: (fact) => ({
    existingArrangement:
      fact.value === 'chainOrPadlock'
        ? { ...fact, is: 'assumed', value: 'padlock', from: 'recorded as chain, padlock or slide bolt' }
        : fact,
  }),
};

function withSightOfThree(review: unknown): unknown {
  if (!isObject(review) || !isObject(review['saw']) || !isObject(review['saw']['facts'])) return review;
  const facts = Object.entries(review['saw']['facts']).flatMap(([key, value]): [string, unknown][] => {
    if (key === 'labelSeen') return [['fireLabel', value === null ? null : value === true ? 'seen' : 'none']];
    if (key === 'preparedUnderLabel')
      return [
        ['framePrepared', value],
        ['leafPrepared', value],
      ];
    return [[key, value === 'chainOrPadlock' ? 'padlock' : value]];
  });
  return { ...review, saw: { ...review['saw'], facts: Object.fromEntries(facts) } };
}

function withFactsOfThree(facts: unknown): unknown {
  if (!isObject(facts)) return facts;
  return Object.fromEntries(
    Object.entries(facts).flatMap(([key, fact]): [string, unknown][] => {
      const step = Object.hasOwn(factsOfThree, key) ? factsOfThree[key] : undefined;
      return step && isObject(fact) ? Object.entries(step(fact)) : [[key, fact]];
    }),
  );
}

/**
 * The fire label is described and no longer only seen or not, a preparation under the label is told of frame and leaf
 * apart, and a padlock is not a slide bolt. What a reviewer saw is told in the new words, so that a mark is stale only
 * where more than a word changed.
 */
function labelsAndPreparations(project: unknown): unknown {
  if (!isObject(project)) return project;
  const { openings } = project;
  return {
    ...project,
    ...('building' in project ? { building: withFactsOfThree(project['building']) } : {}),
    ...(isObject(openings)
      ? {
          openings: Object.fromEntries(
            Object.entries(openings).map(([id, opening]) => [
              id,
              isObject(opening)
                ? {
                    ...opening,
                    ...('facts' in opening ? { facts: withFactsOfThree(opening['facts']) } : {}),
                    ...('review' in opening ? { review: withSightOfThree(opening['review']) } : {}),
                  }
                : opening,
            ]),
          ),
        }
      : {}),
  };
}

/** “Outside” ended every way out; whether it is a public way or a fenced yard nobody had been asked. */
function outsideSaysWhereItLeads(project: unknown): unknown {
  if (!isObject(project) || !isObject(project['spaces'])) return project;
  return {
    ...project,
    spaces: Object.fromEntries(
      Object.entries(project['spaces']).map(([id, space]) => [
        id,
        isObject(space) ? { publicWay: null, ...space } : space,
      ]),
    ),
  };
}

/** Closets, supplies, product book and runs come in, each empty: what a file says of them already stays. */
function closetsAndSupplies(project: unknown): unknown {
  if (!isObject(project)) return project;
  return { closets: {}, supplies: {}, productBook: {}, runs: {}, ...project };
}

/** What most doors of the building are like is kept beside what holds for all of it. */
function usualOfTheBuilding(project: unknown): unknown {
  return isObject(project) ? { usual: {}, ...project } : project;
}

/**
 * Numbers of hardware sets were kept by what a set was made of; a set is now a thing of its own with its openings. Which
 * openings those are only the rules can say, so what it was known by stays with it until they do. Ids follow the
 * numbers: two copies of one file come out alike.
 */
function setsOfTheirOwn(project: unknown): unknown {
  if (!isObject(project)) return project;
  const { setNumbers, ...rest } = project;
  // A damaged table passes through under its new name, to be set aside where everything else is; a missing one is missed.
  if (!isObject(setNumbers)) return setNumbers === undefined ? rest : { hardwareSets: setNumbers, ...rest };
  const sets: Record<string, Raw> = {};
  for (const [formerly, number] of Object.entries(setNumbers).toSorted(([a], [b]) => (a < b ? -1 : 1))) {
    const free = (id: string): string => (Object.hasOwn(sets, id) ? free(`${id}-2`) : id);
    const id = free(`set-${typeof number === 'string' ? number : formerly.length}`);
    sets[id] = { id, number, name: '', revision: 0, members: {}, content: '', formerly };
  }
  return { hardwareSets: sets, ...rest };
}

/** Prices, who does what, and the terms of the bid come in, each empty. */
function pricesAndBid(project: unknown): unknown {
  if (!isObject(project)) return project;
  const bid = {
    projectNumber: '',
    address: '',
    drawnBy: '',
    checkedBy: '',
    currency: 'USD',
    locale: 'en-US',
    taxPercent: null,
    markUpPercent: null,
  };
  return { prices: {}, itemBook: {}, bid, ...project };
}

const verdictOfThree: Readonly<Record<string, string>> = { toAhj: 'passedToAuthority' };

/** A mark as an entry; undefined for what is none, so that it stays with its opening to be set aside. */
function entryOfThree(openingId: string, opening: Raw): Raw | undefined {
  const review = opening['review'];
  if (!isObject(review) || !isObject(review['saw']) || !isObject(review['saw']['facts'])) return undefined;
  const { verdict, by, on, reason, saw } = review;
  if (typeof by !== 'string' || typeof on !== 'string' || typeof verdict !== 'string') return undefined;
  const facts = Object.entries(review['saw']['facts']).map(([key, value]) => [
    key,
    { is: value === null ? 'unknown' : 'known', value },
  ]);
  const { candidate = null, basis = '' } = saw;
  return {
    id: `review-${openingId}`.slice(0, 64),
    openingIds: [openingId],
    questions: [],
    verdict: verdictOfThree[verdict] ?? verdict,
    by: by.slice(0, 200),
    role: '',
    firm: '',
    license: '',
    reference: '',
    on,
    at: null,
    reason: reason ?? '',
    conditions: [],
    withdraws: null,
    saw: {
      basis,
      program: '',
      amendments: {},
      openings: {
        [openingId]: { mark: opening['mark'] ?? '', candidate, facts: Object.fromEntries(facts) },
      },
    },
    previousHash: '',
    hash: '',
  };
}

/**
 * The mark of an opening becomes an entry of the project's log, to which later ones are added. Reasons, rules and the
 * building were not kept with it and stay absent; so does the hash, and the entry says by that where it came from.
 */
function reviewsBecomeLog(project: unknown): unknown {
  if (!isObject(project)) return project;
  const { openings } = project;
  const empty = { verdicts: {}, verdictIndex: {}, remarks: {} };
  if (!isObject(openings)) return { ...empty, ...project };
  const entries: Raw[] = [];
  const without = Object.entries(openings).map(([id, opening]): [string, unknown] => {
    if (!isObject(opening) || !('review' in opening)) return [id, opening];
    const entry = entryOfThree(id, opening);
    if (!entry && opening['review'] !== null) return [id, opening];
    if (entry) entries.push(entry);
    const { review: _review, ...rest } = opening;
    return [id, rest];
  });
  const inOrder = entries.toSorted((a, b) =>
    `${String(a['on'])} ${String(a['id'])}` < `${String(b['on'])} ${String(b['id'])}` ? -1 : 1,
  );
  return {
    ...empty,
    ...project,
    openings: Object.fromEntries(without),
    verdicts: Object.fromEntries(
      inOrder.map((entry, index) => [entry['id'], { ...entry, sequence: index + 1 }]),
    ),
    verdictIndex: Object.fromEntries(inOrder.map((entry) => [entry['id'], ''])),
  };
}

/** An opening may say what a building model calls it. Nobody has said so yet, and an absent name is none. */
function openingsNameTheirModel(project: unknown): unknown {
  return project;
}

/** Until then the letter that was edited stayed in one browser and did not travel with the project. */
function letterOfThePacket(project: unknown): unknown {
  return isObject(project) ? { letter: '', ...project } : project;
}

/** Openings get photos. There are none yet: what a file says of them already stays. */
function openingsGetPhotos(project: unknown): unknown {
  return isObject(project) ? { photos: {}, ...project } : project;
}

/** Floors get a drawing with openings and closets pinned on it. */
function floorsGetPlans(project: unknown): unknown {
  return isObject(project) ? { plans: {}, pins: {}, ...project } : project;
}

/** The project remembers which edition of an owner’s standard it follows. */
function ownersStandards(project: unknown): unknown {
  return isObject(project) ? { standards: {}, ...project } : project;
}

/** Use and load of a space may say which model they were taken from. Nobody has said so yet. */
function spacesSayWhereTheirUseIsFrom(project: unknown): unknown {
  return project;
}

/**
 * Weights may name preferred devices, and a standard that is followed may bring templates and mappings. There are none yet, and
 * an absent list is none.
 */
function standardsBringMore(project: unknown): unknown {
  return project;
}

export const migrations: readonly Migration[] = [
  { to: 2, name: 'SpacesGetUseAndArea', up: spacesGetUseAndArea },
  { to: 3, name: 'LabelsAndPreparations', up: labelsAndPreparations },
  { to: 4, name: 'OutsideSaysWhereItLeads', up: outsideSaysWhereItLeads },
  { to: 4, name: 'ClosetsAndSupplies', up: closetsAndSupplies },
  { to: 4, name: 'UsualOfTheBuilding', up: usualOfTheBuilding },
  { to: 4, name: 'SetsOfTheirOwn', up: setsOfTheirOwn },
  { to: 4, name: 'PricesAndBid', up: pricesAndBid },
  { to: 4, name: 'ReviewsBecomeLog', up: reviewsBecomeLog },
  { to: 5, name: 'OpeningsNameTheirModel', up: openingsNameTheirModel },
  { to: 6, name: 'LetterOfThePacket', up: letterOfThePacket },
  { to: 6, name: 'OwnersStandards', up: ownersStandards },
  { to: 6, name: 'OpeningsGetPhotos', up: openingsGetPhotos },
  { to: 6, name: 'FloorsGetPlans', up: floorsGetPlans },
  { to: 7, name: 'SpacesSayWhereTheirUseIsFrom', up: spacesSayWhereTheirUseIsFrom },
  { to: 7, name: 'StandardsBringMore', up: standardsBringMore },
];

/** Format 1 is the first; several steps may lead to the same one. */
export const newestFormat = Math.max(1, ...migrations.map((step) => step.to));
