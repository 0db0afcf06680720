import { describe, expect, test } from 'vitest';
import { limitingStrength, type StrengthValues, strengthMembers } from './strength.ts';

const officeDoor: StrengthValues = {
  latch: 'bored',
  latchProjectionIn: 0.5,
  leafMaterial: 'woodSolidCore',
  frameMaterial: 'hollowMetal',
  frameGrouted: false,
};
const steel: StrengthValues = {
  leafMaterial: 'hollowMetal',
  frameMaterial: 'hollowMetal',
  frameGrouted: false,
};

describe('what limits the opening', () => {
  test('a strike is as strong as the latch it frees', () => {
    expect(limitingStrength('strikeCylindrical', officeDoor)).toEqual({
      lbf: 500,
      highestLbf: 500,
      limitedBy: 'latch',
    });
    expect(
      limitingStrength('strikeMortise', { ...steel, latch: 'mortise', latchProjectionIn: 0.75 }),
    ).toEqual({ lbf: 1250, highestLbf: 1250, limitedBy: 'latch' });
    expect(limitingStrength('strikeRim', { ...steel, latch: 'rimExit', latchProjectionIn: 0.75 }).lbf).toBe(
      700,
    );
  });
  test.each([
    [
      'strikeMortise',
      { latch: 'mortise', latchProjectionIn: 0.75, leafMaterial: 'woodMineralCore' },
      600,
      'doorEdge',
    ],
    ['magnet', {}, 1200, 'device'],
    ['magnet', { leafMaterial: 'aluminiumNarrow' }, 600, 'doorEdge'],
    ['magnet', { leafMaterial: 'glassFrameless' }, 300, 'doorEdge'],
    ['magnet', { frameMaterial: 'aluminium' }, 600, 'frame'],
    ['magnet', { leafMaterial: 'woodHollowCore' }, 150, 'doorEdge'],
    ['shearMagnet', {}, 1500, 'frame'],
    ['mortiseLock', { latch: 'pushPull' }, 1250, 'device'],
    ['cylindricalLock', { latch: 'bored', latchProjectionIn: 0.1 }, 800, 'device'],
    ['exitTrim', { latch: 'verticalRods', latchProjectionIn: 0.5 }, 700, 'latch'],
    ['exitTrim', { latch: 'pushPull' }, 800, 'device'],
    ['latchRetractionMotor', { latch: 'rimExit', latchProjectionIn: 0.75 }, 700, 'latch'],
    ['latchRetractionSolenoid', { latch: 'rimPlusRods', latchProjectionIn: 0.75 }, 700, 'latch'],
    [
      'glassPatchLock',
      { latch: 'patch', leafMaterial: 'glassFrameless', frameMaterial: 'none' },
      300,
      'frame',
    ],
    ['batteryLock', {}, 800, 'device'],
    ['strikeMortise', { latch: 'pushPull', latchProjectionIn: 0.5 }, 0, 'latch'],
    ['strikeMortise', { latch: 'roller', latchProjectionIn: 0.5 }, 0, 'latch'],
  ] as const)('%s with %o', (id, values, lbf, limitedBy) => {
    expect(limitingStrength(id, { ...steel, ...values })).toEqual({ lbf, highestLbf: lbf, limitedBy });
  });
});

describe('engagement', () => {
  const at = (latchProjectionIn: number) =>
    limitingStrength('strikeMortise', { ...steel, latch: 'mortise', latchProjectionIn }).lbf;
  test('full, more than full, half, the least that holds, and less', () => {
    expect([0.75, 1, 0.375, 0.25, 0.249].map(at)).toEqual([1250, 1250, 625, expect.closeTo(416.67, 1), 0]);
    expect(
      strengthMembers('strikeMortise', { ...steel, latch: 'mortise', latchProjectionIn: 0.249 }).willNotHold,
    ).toBe(true);
    expect(
      strengthMembers('strikeMortise', { ...steel, latch: 'mortise', latchProjectionIn: 0.25 }).willNotHold,
    ).toBe(false);
  });
});

describe('what is not known is a band, never a guess', () => {
  test.each([
    ['strikeCylindrical', { ...officeDoor, latchProjectionIn: undefined }, 250, 500],
    ['strikeCylindrical', { ...officeDoor, latch: undefined, leafMaterial: 'hollowMetal' }, 500, 600],
    ['strikeMortise', { ...steel, latch: 'hookbolt' }, 0, 1500],
    ['shearMagnet', { ...steel, frameGrouted: undefined }, 1500, 1500],
    ['magnet', { ...steel, frameMaterial: 'wood' }, 300, 800],
    ['magnet', { ...steel, frameMaterial: undefined }, 300, 1200],
    ['magnet', { ...steel, leafMaterial: undefined }, 150, 1200],
    ['magnet', { ...steel, leafMaterial: 'gateFramed', frameMaterial: 'posts' }, 600, 1200],
    ['magnet', {}, 150, 1200],
  ] as const)('%s', (id, values, lowest, highest) => {
    const known = Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined));
    const found = limitingStrength(id, known);
    expect([found.lbf, found.highestLbf]).toEqual([lowest, highest]);
  });
  test('grout strengthens a steel frame by 500 lbf and no other', () => {
    const frame = (values: StrengthValues) =>
      strengthMembers('magnet', values).members.find((one) => one.id === 'frame');
    expect(frame({ ...steel, frameGrouted: true })).toMatchObject({ lowestLbf: 2000, highestLbf: 2000 });
    expect(frame({ leafMaterial: 'hollowMetal', frameMaterial: 'hollowMetal' })).toMatchObject({
      lowestLbf: 1500,
      highestLbf: 2000,
    });
    expect(frame({ ...steel, frameMaterial: 'wood', frameGrouted: true })).toMatchObject({
      lowestLbf: 300,
      highestLbf: 800,
    });
    expect(frame({})).toMatchObject({ lowestLbf: 300, highestLbf: 2000 });
  });
});

test('the members are listed with their source, and a device with its own latch has no latch member', () => {
  const strike = strengthMembers('strikeCylindrical', officeDoor);
  expect(strike.members.map((one) => [one.id, one.lowestLbf])).toEqual([
    ['device', 1500],
    ['latch', 500],
    ['frame', 1500],
    ['doorEdge', 600],
  ]);
  expect(strike.members.every((one) => one.source === 'practice' && one.says.endsWith('.'))).toBe(true);
  expect(strengthMembers('magnet', officeDoor).members.map((one) => one.id)).toEqual([
    'device',
    'frame',
    'doorEdge',
  ]);
});
