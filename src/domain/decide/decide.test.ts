import { describe, expect, test } from 'vitest';
import { known } from '../testing/facts.ts';
import type { Facts } from '../model/fact.ts';
import type { FactValues } from '../model/fields.ts';
import { newOpening, newProject } from '../model/newProject.ts';
import type { Opening } from '../model/project.ts';
import { decide } from './decide.ts';
import { reportOf } from '../words/report.ts';
import { nextToSettle, openQuestions } from './whatMatters.ts';

const office: FactValues = {
  doorType: 'single',
  leafMaterial: 'hollowMetal',
  frameMaterial: 'hollowMetal',
  latch: 'bored',
  egressRole: 'exitAccess',
  exitDirection: 'towardSecure',
  roomUse: 'office',
  occupancyGroup: 'B',
  occupantLoad: 4,
  fireRatingMin: 0,
  wallRatingMin: 0,
  readerSides: 'secure',
  operator: 'none',
  powerAtDoor: true,
  cablePath: true,
  workStatus: 'new',
  egressHardwareHeightIn: 40,
  securityNeed: 'medium',
  traffic: 'medium',
  appearance: 'standard',
  exterior: false,
  publicEntrance: false,
  mainDoor: false,
  existingArrangement: 'none',
  othersLeaveThroughRoom: false,
  closing: 'selfClosing',
  frameGrouted: false,
  frameConduit: true,
  wallConstruction: 'gypsum',
  latchPreload: false,
  lockFunction: 'storeroom',
  basisConfirmed: true,
  amendmentsReviewed: true,
  federalHealthCare: false,
};
const factsOf = (values: FactValues) =>
  Object.fromEntries(Object.entries(values).map(([key, value]) => [key, known(value)])) as Facts;
const decided = (change: FactValues = {}, override: Opening['override'] = null) =>
  decide(
    { ...newProject('p', 'P'), openings: {} },
    { ...newOpening('o', '1'), facts: factsOf({ ...office, ...change }), override },
  );
const byHand = (candidate: string) => ({ candidate, reason: 'r', by: 'b', at: '2026-01-01T00:00:00Z' });

describe('a decision', () => {
  test('is settled on an ordinary office door, with its parts and what was ruled out', () => {
    const decision = decided();
    expect(decision.state).toBe('settled');
    expect(decision.chosen?.candidate.release).toBe('free');
    expect(decision.rejected.length).toBeGreaterThan(20);
    expect(decision.rejected.every((one) => one.because.length > 0)).toBe(true);
  });

  test('names nothing before door type, leaf and latch are known, and asks for them first', () => {
    for (const gone of ['doorType', 'leafMaterial', 'latch'] as const) {
      const { [gone]: _gone, ...rest } = office;
      const project = newProject('p', 'P');
      const opening = { ...newOpening('o', '1'), facts: factsOf(rest) };
      const decision = decide(project, opening);
      expect([gone, decision.state, decision.chosen]).toEqual([gone, 'open', null]);
      expect(nextToSettle(project, opening, decision)).toBe(gone);
    }
  });

  test('waits for what may still be asked for, signed, or rank another first, and says for what', () => {
    const without = (gone: keyof FactValues) => {
      const { [gone]: _gone, ...rest } = office;
      return decide(newProject('p', 'P'), { ...newOpening('o', '1'), facts: factsOf(rest) });
    };
    const waits = (gone: keyof FactValues) => {
      const decision = without(gone);
      const { deciding, signing } = openQuestions(decision);
      return [decision.state, [...deciding.keys(), ...signing.keys()]];
    };
    // A weather-rated device, asked for outdoors.
    expect(waits('exterior')).toEqual(['open', expect.arrayContaining(['exterior'])]);
    // A lock found to be unlawful is signed for.
    expect(waits('existingArrangement')).toEqual(['open', expect.arrayContaining(['existingArrangement'])]);
    // At another need another lock comes first.
    expect(waits('securityNeed')).toEqual(['open', expect.arrayContaining(['securityNeed'])]);
    expect(decided().state).toBe('settled');
  });

  test('keeps unlabeled devices off a rated door and names why, in and outside the fit table', () => {
    const why = (change: FactValues) =>
      decided({ fireRatingMin: 90, fireLabel: 'seen', ...change })
        .rejected.find((one) => one.candidate.id === 'boltMotor/safe/sensor')
        ?.because.map((step) => step.rule.id);
    expect(why({})?.filter((id) => id === 'FIT-22')).toHaveLength(1);
    const { latch: _latch, ...noLatch } = office;
    const open = decide(newProject('p', 'P'), {
      ...newOpening('o', '1'),
      facts: factsOf({ ...noLatch, fireRatingMin: 90 }),
    });
    expect(open.rows.length).toBeGreaterThan(1);
    const bolt = open.rejected.find((one) => one.candidate.id === 'boltMotor/safe/sensor');
    expect(bolt?.because.filter((step) => step.rule.id === 'FIT-22')).toHaveLength(1);
    const outside = decided({ fireRatingMin: 90, fireLabel: 'seen', latch: 'patch' });
    expect(outside.rows).toEqual([]);
    const there = outside.rejected.find((one) => one.candidate.id === 'boltMotor/safe/sensor');
    expect(there?.because.map((step) => step.rule.id)).toContain('FIT-22');
  });

  test('leaves no entrance with lock power to batteries, and takes them where no wire can come', () => {
    const entrance: FactValues = {
      doorType: 'pair',
      leafMaterial: 'aluminiumMedium',
      frameMaterial: 'aluminium',
      latch: 'verticalRods',
      egressRole: 'exteriorExit',
      roomUse: 'lobby',
      securityNeed: 'medium',
    };
    expect(decided(entrance).chosen?.candidate.id).toBe('exitTrim/secure/free');
    expect(decided({ ...entrance, powerAtDoor: false, cablePath: false }).chosen?.candidate.id).toBe(
      'batteryLock/asIs/free',
    );
  });

  test('of detention goes to a reviewer and recommends nothing', () => {
    const decision = decided({ roomUse: 'detention', occupancyGroup: 'I-3' });
    expect(decision.state).toBe('referred');
    expect(decision.chosen).toBeNull();
  });

  test('on a contradiction recommends nothing', () => {
    const decision = decided({ fireRatingMin: 75 });
    expect(decision.state).toBe('refused');
    expect(decision.chosen).toBeNull();
  });

  test('a choice by hand stands and is signed for, and one that a rule forbids is never settled', () => {
    const allowed = decided({}, byHand('cylindricalLock/secure/free'));
    expect(allowed.chosen?.candidate.id).toBe('cylindricalLock/secure/free');
    expect(reportOf(allowed).signOffs[0]?.sentence).toContain('was chosen by hand');
    const forbidden = decided({}, byHand('magnet/safe/none'));
    expect(forbidden.state).toBe('severe');
    expect(
      reportOf(forbidden)
        .signOffs.map((one) => one.sentence)
        .join(' '),
    ).toContain('Refused by rule, chosen by a person');
  });

  test('puts a recorded need that the rules refuse to the reviewer, with the rule, and no other', () => {
    const said = (change: FactValues) =>
      reportOf(decided(change)).signOffs.filter((one) => one.sentence.includes('recorded as needed'));
    expect(said({})).toEqual([]);
    expect(said({ wishKeyLock: true }).map((one) => one.ruleId)).toEqual([expect.stringMatching(/^R-/)]);
  });

  test('hears what rules ask of the choice alone', () => {
    const withSensor = decided({}, byHand('magnet/safe/sensor'));
    expect(withSensor.requires.length).toBeGreaterThan(decided().requires.length);
  });

  test('tells which steps wait for a missing fact', () => {
    const { egressRole: _role, ...rest } = office;
    const decision = decide(newProject('p', 'P'), { ...newOpening('o', '1'), facts: factsOf(rest) });
    expect(decision.depends.length).toBeGreaterThan(0);
    expect(decision.depends.every((step) => !step.sure)).toBe(true);
  });
});
