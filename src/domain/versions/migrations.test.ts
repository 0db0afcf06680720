import { describe, expect, test } from 'vitest';
import { migrations } from './migrations.ts';

/** Before and after of each step, written out: today's types and defaults must not reach into them. */
function step(name: string) {
  const found = migrations.find((one) => one.name === name);
  if (!found) throw new Error(`No migration is called ${name}.`);
  return found.up;
}

describe('SpacesGetUseAndArea, format 1 to 2', () => {
  const up = step('SpacesGetUseAndArea');
  const before = {
    id: 'p',
    spaces: {
      s: { id: 's', name: 'Hall', kind: 'room', occupantLoad: 40, color: 'from a newer version' },
      t: { id: 't', name: 'Street', kind: 'outside', occupantLoad: null },
    },
    openings: { o: { id: 'o' } },
  };

  test('spaces get what is not known yet, the project an empty list of set numbers, and the rest stays', () => {
    const untouched = structuredClone(before);
    expect(up(before)).toEqual({
      id: 'p',
      spaces: {
        s: {
          id: 's',
          name: 'Hall',
          kind: 'room',
          occupantLoad: 40,
          color: 'from a newer version',
          use: null,
          areaFt2: null,
          commonPathFt: null,
        },
        t: {
          id: 't',
          name: 'Street',
          kind: 'outside',
          occupantLoad: null,
          use: null,
          areaFt2: null,
          commonPathFt: null,
        },
      },
      openings: { o: { id: 'o' } },
      setNumbers: {},
    });
    expect(before).toEqual(untouched);
  });

  test('what was damaged before is passed on as it was, to be set aside and shown', () => {
    expect(up('porridge')).toBe('porridge');
    expect(up({ id: 'p', spaces: [] })).toEqual({ id: 'p', spaces: [], setNumbers: {} });
    expect(up({ spaces: { s: 'a hall' } })).toEqual({ spaces: { s: 'a hall' }, setNumbers: {} });
  });
});

describe('OutsideSaysWhereItLeads, format 3 to 4', () => {
  const up = step('OutsideSaysWhereItLeads');

  test('every space gets the question unanswered, and an answer that is there stays', () => {
    const before = { spaces: { s: { id: 's', kind: 'outside' }, t: { id: 't', publicWay: false } } };
    const untouched = structuredClone(before);
    expect(up(before)).toEqual({
      spaces: { s: { id: 's', kind: 'outside', publicWay: null }, t: { id: 't', publicWay: false } },
    });
    expect(before).toEqual(untouched);
  });

  test('what was damaged before is passed on as it was, to be set aside and shown', () => {
    expect(up('porridge')).toBe('porridge');
    expect(up({ spaces: { s: 'a yard' } })).toEqual({ spaces: { s: 'a yard' } });
    expect(up({ spaces: [] })).toEqual({ spaces: [] });
  });
});

describe('LabelsAndPreparations, format 2 to 3', () => {
  const up = step('LabelsAndPreparations');
  const at = '2026-01-02T03:04:05.000Z';
  const opening = (facts: object) => up({ openings: { o: { id: 'o', mark: '101', facts } } });
  const after = (facts: object) => ({ openings: { o: { id: 'o', mark: '101', facts } } });

  test('a label seen or not seen becomes the answer that says as much', () => {
    expect(opening({ labelSeen: { is: 'known', value: true, at, by: 'A' } })).toEqual(
      after({ fireLabel: { is: 'known', value: 'seen', at, by: 'A' } }),
    );
    expect(opening({ labelSeen: { is: 'assumed', value: false, from: 'plan' } })).toEqual(
      after({ fireLabel: { is: 'assumed', value: 'none', from: 'plan' } }),
    );
    expect(opening({ labelSeen: { is: 'unknown', at } })).toEqual(
      after({ fireLabel: { is: 'unknown', at } }),
    );
  });

  test('made with the preparation: frame and leaf both; not made with it: both are asked again', () => {
    const made = { is: 'known', value: true, at };
    expect(opening({ preparedUnderLabel: made })).toEqual(after({ framePrepared: made, leafPrepared: made }));
    const open = { is: 'unknown', at };
    expect(opening({ preparedUnderLabel: { is: 'assumed', value: false, from: 'plan', at } })).toEqual(
      after({ framePrepared: open, leafPrepared: open }),
    );
  });

  test('a chain, padlock or slide bolt is taken for a padlock until somebody looks', () => {
    expect(opening({ existingArrangement: { is: 'known', value: 'chainOrPadlock', at } })).toEqual(
      after({
        existingArrangement: {
          is: 'assumed',
          value: 'padlock',
          from: 'recorded as chain, padlock or slide bolt',
          at,
        },
      }),
    );
    const bar = { existingArrangement: { is: 'known', value: 'freeBar' } };
    expect(opening(bar)).toEqual(after(bar));
  });

  test('what a reviewer saw is told in the new words', () => {
    const mark = (facts: object) => ({ verdict: 'approved', saw: { candidate: null, facts } });
    const saw = {
      labelSeen: false,
      preparedUnderLabel: true,
      latch: 'bored',
      existingArrangement: 'chainOrPadlock',
    };
    expect(up({ openings: { o: { review: mark(saw) }, p: { review: mark({ labelSeen: null }) } } })).toEqual({
      openings: {
        o: {
          review: mark({
            fireLabel: 'none',
            framePrepared: true,
            leafPrepared: true,
            latch: 'bored',
            existingArrangement: 'padlock',
          }),
        },
        p: { review: mark({ fireLabel: null }) },
      },
    });
    expect(up({ openings: { o: { review: null }, p: { review: { saw: 3 } } } })).toEqual({
      openings: { o: { review: null }, p: { review: { saw: 3 } } },
    });
  });

  test('facts of the building likewise, everything else stays, and the input is not touched', () => {
    const before = {
      id: 'p',
      building: { labelSeen: { is: 'known', value: true }, highRise: { is: 'unknown' } },
      openings: { o: { id: 'o' } },
    };
    const untouched = structuredClone(before);
    expect(up(before)).toEqual({
      id: 'p',
      building: { fireLabel: { is: 'known', value: 'seen' }, highRise: { is: 'unknown' } },
      openings: { o: { id: 'o' } },
    });
    expect(before).toEqual(untouched);
  });

  test('what was damaged before is passed on as it was, to be set aside and shown', () => {
    expect(up('porridge')).toBe('porridge');
    expect(up({ openings: { o: 'a door', p: { facts: [1] } } })).toEqual({
      openings: { o: 'a door', p: { facts: [1] } },
    });
    expect(opening({ labelSeen: 'yes' })).toEqual(after({ labelSeen: 'yes' }));
  });
});

describe('ClosetsAndSupplies, format 3 to 4', () => {
  const up = step('ClosetsAndSupplies');

  test('the four tables come in empty, and the rest stays', () => {
    const before = { id: 'p', openings: { o: { id: 'o' } } };
    expect(up(before)).toEqual({ ...before, closets: {}, supplies: {}, productBook: {}, runs: {} });
    expect(before).toEqual({ id: 'p', openings: { o: { id: 'o' } } });
  });

  test('what stood under these names is kept, and what is no project passes through', () => {
    const closets = { c: { name: 'from elsewhere' } };
    expect(up({ closets })).toEqual({ closets, supplies: {}, productBook: {}, runs: {} });
    expect(up('porridge')).toBe('porridge');
  });
});

test('UsualOfTheBuilding, format 3 to 4: nothing is usual yet, and the rest stays', () => {
  const up = step('UsualOfTheBuilding');
  expect(up({ id: 'p', building: { highRise: 1 } })).toEqual({
    id: 'p',
    building: { highRise: 1 },
    usual: {},
  });
  expect(up('porridge')).toBe('porridge');
});

test('FloorsGetPlans, format 5 to 6: there are none yet, and what a file says of them stays', () => {
  const up = step('FloorsGetPlans');
  expect(up({ id: 'p', pins: { a: 1 } })).toEqual({ id: 'p', plans: {}, pins: { a: 1 } });
  expect(up('porridge')).toBe('porridge');
});

test('LetterOfThePacket and OwnersStandards, format 5 to 6: none was kept, and what a file says of them stays', () => {
  expect(step('LetterOfThePacket')({ id: 'p' })).toEqual({ letter: '', id: 'p' });
  expect(step('LetterOfThePacket')({ letter: 'Dear' })).toEqual({ letter: 'Dear' });
  expect(step('OwnersStandards')({ id: 'p' })).toEqual({ standards: {}, id: 'p' });
  expect(step('OwnersStandards')({ standards: { a: 1 } })).toEqual({ standards: { a: 1 } });
  for (const name of ['LetterOfThePacket', 'OwnersStandards'])
    expect(step(name)('porridge')).toBe('porridge');
});

test('OpeningsGetPhotos, format 5 to 6: there are none yet, and what a file says of them stays', () => {
  const up = step('OpeningsGetPhotos');
  expect(up({ id: 'p' })).toEqual({ id: 'p', photos: {} });
  expect(up({ photos: { a: 1 } })).toEqual({ photos: { a: 1 } });
  expect(up('porridge')).toBe('porridge');
});

describe('reviewsBecomeLog', () => {
  const up = step('ReviewsBecomeLog');
  const mark = {
    verdict: 'toAhj',
    by: 'Reviewer',
    on: '2026-03-09',
    reason: 'Ask about the delay.',
    saw: { candidate: null, basis: 'IBC 2021', facts: { latch: 'bored', isPair: null } },
  };

  test('a mark becomes an entry that keeps what it kept, without a hash', () => {
    const earlier = { ...mark, verdict: 'approved', on: '2026-03-01' };
    const before = { openings: { o: { id: 'o', mark: '101', review: mark }, p: { review: earlier } } };
    const untouched = structuredClone(before);
    const after = up(before) as { openings: object; verdicts: Record<string, object>; verdictIndex: object };
    expect(after.openings).toEqual({ o: { id: 'o', mark: '101' }, p: {} });
    expect(after.verdicts['review-o']).toMatchObject({
      sequence: 2,
      openingIds: ['o'],
      verdict: 'passedToAuthority',
      hash: '',
      saw: {
        basis: 'IBC 2021',
        openings: {
          o: {
            mark: '101',
            candidate: null,
            facts: { latch: { is: 'known', value: 'bored' }, isPair: { is: 'unknown', value: null } },
          },
        },
      },
    });
    expect(after.verdicts['review-p']).toMatchObject({ sequence: 1, verdict: 'approved' });
    expect(after.verdictIndex).toEqual({ 'review-o': '', 'review-p': '' });
    expect(before).toEqual(untouched);
  });

  test('no mark leaves no entry; a damaged one stays where it was, to be set aside', () => {
    const after = up({ openings: { o: { review: null }, p: { review: { saw: 3 } }, q: 'a door' } });
    expect(after).toMatchObject({
      openings: { o: {}, p: { review: { saw: 3 } }, q: 'a door' },
      verdicts: {},
    });
    expect(up('porridge')).toBe('porridge');
  });
});
