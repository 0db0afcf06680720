import { casesInWords } from '../../domain/manual/ruleGroups.ts';
import { answerInWords, manualCase } from '../../domain/manual/ruleManual.ts';
import { casesOf } from '../../domain/rules/allCases.ts';
import type { Rule } from '../../domain/rules/rule.ts';
import { runCase } from '../../domain/rules/runCase.ts';

/** The cases a rule is tested by, judged again at the moment they are opened. */
export default function CaseTable({ rule }: { rule: Rule }) {
  const rows = casesOf(rule).map((one) => {
    const said = manualCase(one);
    const given = answerInWords(runCase(rule, one));
    return { ...said, given, asExpected: given === said.answer };
  });
  const wrong = rows.filter((row) => !row.asExpected).length;
  const hasClauses = rows.some((row) => row.clause !== '');
  return (
    <div className="stack stack-tight">
      <p className="note">{casesInWords(rows.length, wrong)}</p>
      <table className="schedule schedule-close schedule-folds">
        <thead>
          <tr>
            <th scope="col">What is at the door</th>
            {hasClauses && <th scope="col">Clause</th>}
            <th scope="col">Applied to</th>
            <th scope="col">Answer</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row, index) => (
            // Two cases may read alike; their place in the rule tells them apart.
            // oxlint-disable-next-line react/no-array-index-key
            <tr key={index}>
              <td data-head="Door">
                <div>
                  {row.name}
                  <span className="note case-facts">
                    {[...row.stands, ...(row.under === '' ? [] : [row.under])].join('; ') || 'nothing known'}
                  </span>
                </div>
              </td>
              {hasClauses && <td data-head="Clause">{row.clause || 'the only clause'}</td>}
              <td data-head="Applied to">{row.on || 'the opening'}</td>
              <td data-head="Answer">
                <span>
                  {row.given}{' '}
                  {row.asExpected ? (
                    <span className="case-tick">
                      <span aria-hidden="true">✓</span>
                      <span className="visually-hidden">as expected</span>
                    </span>
                  ) : (
                    <strong>× expected: {row.answer}</strong>
                  )}
                </span>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
