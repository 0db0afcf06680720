import { screen, within } from '@testing-library/react';
import { describe, expect, test } from 'vitest';
import { decide } from '../../domain/decide/decide.ts';
import { reportFor } from '../../app/reports.ts';
import type { DecisionReport } from '../../domain/words/report.ts';
import { known } from '../../domain/testing/facts.ts';
import type { Facts } from '../../domain/model/fact.ts';
import { standingCaution } from '../../domain/text/cautions.ts';
import { projectOf, show } from '../../../tests/screens/show.tsx';
import { DecisionHead, DecisionPanel } from './DecisionPanel.tsx';

/** An office door as most are. */
const office: Facts = {
  doorType: known('single'),
  leafMaterial: known('woodSolidCore'),
  frameMaterial: known('hollowMetal'),
  frameGrouted: known(false),
  latch: known('mortise'),
  lockFunction: known('storeroom'),
  strikePrep: known('ansi478'),
  panicPresent: known(false),
  fireRatingMin: known(0),
  wallRatingMin: known(0),
  wallKind: known('none'),
  egressRole: known('exitAccess'),
  occupantLoad: known(6),
  roomUse: known('office'),
  occupancyGroup: known('B'),
  readerSides: known('secure'),
  securityNeed: known('medium'),
  existingArrangement: known('freeLever'),
  operator: known('none'),
  powerAtDoor: known(true),
  cablePath: known(true),
  workStatus: known('altered'),
  holdOpen: known('none'),
  othersLeaveThroughRoom: known(false),
  exterior: known(false),
  mainDoor: known(false),
  publicEntrance: known(false),
  leafRaceway: known(false),
  clinicalNeed: known('none'),
  traffic: known('medium'),
  appearance: known('standard'),
  frameConduit: known(true),
  wallConstruction: known('gypsum'),
  closing: known('selfClosing'),
  latchPreload: known(false),
  basisConfirmed: known(true),
  amendmentsReviewed: known(true),
  federalHealthCare: known(false),
};

function opened(facts: Facts, signOffs?: DecisionReport['signOffs']) {
  const project = projectOf({ '101': facts });
  const opening = project.openings['101'];
  if (!opening) throw new Error('The opening is missing.');
  const decision = decide(project, opening);
  const found = reportFor(decision);
  const report = { ...found, signOffs: signOffs ?? found.signOffs };
  const { user } = show(
    <>
      <DecisionHead decision={decision} state={decision.state} report={report} />
      <DecisionPanel project={project} opening={opening} decision={decision} report={report} />
    </>,
    project,
  );
  return { user, decision, report };
}

describe('a decision', () => {
  test('says what it recommends, how people leave, and by whom what is done', () => {
    const { report } = opened(office);
    expect(screen.getByRole('heading', { level: 2 })).toHaveTextContent(report.headline);
    expect(report.headline).toContain('lectric strike');
    expect(screen.getByText('Free mechanical egress')).toBeInTheDocument();
    expect(screen.getByRole('heading', { name: 'Hardware' })).toBeInTheDocument();
  });

  test('names the rule and the section by which something fell, and says when it was read second-hand', () => {
    const { decision, report } = opened(office);
    expect(screen.getByText(`Ruled out (${decision.rejected.length} arrangements)`)).toBeInTheDocument();
    const reasons = report.rejected.flatMap((device) => device.variants.flatMap((one) => one.because));
    const cited = reasons.find((one) => one.cites.length > 0);
    if (!cited) throw new Error('No rejection cites a section.');
    expect(screen.getAllByRole('link', { name: cited.ruleId }).length).toBeGreaterThan(0);
    expect(screen.getAllByText(cited.cites.join('; '), { exact: false }).length).toBeGreaterThan(0);
    const secondHand = [...reasons, ...report.cautions].find((one) => one.secondHand);
    expect(secondHand).toBeDefined();
    expect(screen.getAllByText(/second-hand/).length).toBeGreaterThan(0);
  });

  test('folds away what is only a note for the reviewer', () => {
    opened({}, [
      { flag: 'a', grade: 'must', sentence: 'Somebody must sign this.', ruleId: undefined },
      { flag: 'b', grade: 'note', sentence: 'Good to know.', ruleId: undefined },
    ]);
    expect(screen.getByText('Somebody must sign this.').closest('details')).toBeNull();
    expect(screen.getByText('Good to know.').closest('details')).not.toBeNull();
    expect(screen.getByText('Notes (1)')).toBeVisible();
  });

  test.each([
    ['settled', office],
    ['open', {}],
    ['refused', { ...office, fireRatingMin: known(90), fireLabel: known('none' as const) }],
  ] as const)('carries the caution while it is %s', (state, facts) => {
    const { decision } = opened(facts);
    expect(decision.state).toBe(state);
    expect(screen.getByText(standingCaution)).toBeVisible();
  });

  test('that is refused names what contradicts itself, with its rule', () => {
    const { report } = opened({ ...office, fireRatingMin: known(90), fireLabel: known('none' as const) });
    expect(screen.getByText('Refused')).toBeInTheDocument();
    const first = report.findings.find((one) => one.refuses);
    const heading = screen.getByRole('heading', { name: 'Contradictions in the survey' });
    const section = within(heading.closest('section') as HTMLElement);
    expect(section.getByText(first?.sentence ?? '')).toBeInTheDocument();
    expect(section.getAllByRole('link', { name: first?.ruleId ?? '' })[0]).toBeInTheDocument();
  });
});
