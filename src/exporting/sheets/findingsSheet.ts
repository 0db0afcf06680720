import { startSentence } from '../../domain/text/midSentence.ts';
import type { BuildingFinding } from '../../domain/building/finding.ts';
import { conditionsInWords } from '../../domain/building/sentences.ts';
import type { Project } from '../../domain/model/project.ts';
import { severityWords } from '../../domain/simulate/outcome.ts';
import { reasonOfRule } from './reasons.ts';
import { counted } from '../../domain/text/counted.ts';

/** One finding as it prints, with the number it is called by when people speak of it. */
export interface FindingLine {
  readonly number: number;
  readonly says: string;
  /** Rule, sections and how it was read; empty where the walk through the building found it. */
  readonly source: string;
  readonly when: string;
  readonly openings: readonly string[];
  readonly way: readonly string[];
}
export interface FindingGroup {
  readonly severity: string;
  readonly says: string;
  readonly lines: readonly FindingLine[];
}
export interface FindingsSheet {
  readonly says: string;
  readonly groups: readonly FindingGroup[];
  readonly notes: readonly string[];
}

/** What was found about the building as a whole, the worst first. */
export function findingsSheet(project: Project, findings: readonly BuildingFinding[]): FindingsSheet {
  let number = 0;
  const marksOf = (ids: readonly string[]) => ids.map((id) => project.openings[id]?.mark ?? id);
  const groups = (['severe', 'serious', 'note'] as const).flatMap((severity): FindingGroup[] => {
    const lines = findings
      .filter((one) => one.severity === severity)
      .map((one) => ({
        number: (number += 1),
        says: one.says,
        source: one.ruleId === undefined ? '' : reasonOfRule(one.ruleId, 'note', '', project.basis).source,
        when: one.conditions.length === 0 ? always : startSentence(conditionsInWords(one.conditions)),
        openings: marksOf(one.openingIds),
        way: marksOf(one.path),
      }));
    return lines.length === 0
      ? []
      : [{ severity: severityWords[severity], says: counted(lines.length, 'finding'), lines }];
  });
  return {
    says: counted(findings.length, 'finding'),
    groups,
    notes: [
      'When names the conditions of the building in which a finding shows. A path lists openings in the order a person meets them.',
      'Findings follow from the survey and from what is chosen at each opening. What was not surveyed was not checked.',
    ],
  };
}

const always = 'In any condition';
