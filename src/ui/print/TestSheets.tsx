import { Fragment } from 'react';
import { testColumns, testSigns } from '../../exporting/sequence/acceptance.ts';
import type { TestPage, TestPaper } from '../../exporting/sheets/testPages.ts';
import { TitleBlock } from './TitleBlock.tsx';

/** Filled in by hand at the door: a page for each opening, or half a page where the test is short. */
export function TestSheets({ papers }: { papers: readonly TestPaper[] }) {
  return papers.map(({ id, tests, title }) => (
    <Fragment key={id}>
      {tests.map((page, at) => (
        <OneTest
          key={page.id}
          page={page}
          half={tests.length === 1 ? undefined : at === 0 ? 'upper' : 'lower'}
          title={at === tests.length - 1 ? title : undefined}
        />
      ))}
    </Fragment>
  ));
}

interface OneProps {
  readonly page: TestPage;
  readonly half: 'upper' | 'lower' | undefined;
  /** At the foot of the page. */
  readonly title: TestPaper['title'] | undefined;
}

function OneTest({ page, half, title }: OneProps) {
  return (
    <article
      className="opening-sheet test-sheet"
      data-crowded={page.crowded || half !== undefined || undefined}
      data-half={half}
      aria-label={`Test of ${page.mark}`}
    >
      <header className="opening-sheet-head">
        <div className="opening-sheet-line">
          <h3 className="mark mark-large">{page.mark}</h3>
          <p className="lead">{page.place}</p>
        </div>
      </header>
      <div className="opening-sheet-body">
        <p className="test-arrangement">{page.arrangement}</p>
        {page.unsettled !== '' && <p className="set-unsettled">{page.unsettled}</p>}
        {page.noTest === '' ? <Lines page={page} /> : <p>{page.noTest}</p>}
      </div>
      <footer className="opening-sheet-foot">
        {/* Nothing to pass, so nothing to sign. */}
        {page.noTest === '' && <Signs />}
        {title && <TitleBlock cells={title} />}
      </footer>
    </article>
  );
}

function Lines({ page }: { page: TestPage }) {
  const [pass, fail, value, initials] = testColumns;
  return (
    <table className="schedule test-table">
      <thead>
        <tr>
          <th scope="col" className="num">
            No.
          </th>
          <th scope="col">Action</th>
          <th scope="col">What must happen</th>
          <th scope="col">{pass}</th>
          <th scope="col">{fail}</th>
          <th scope="col">{value}</th>
          <th scope="col">{initials}</th>
        </tr>
      </thead>
      <tbody>
        {page.lines.map((line) => (
          <tr key={line.number}>
            <td className="num">{line.number}</td>
            <th scope="row">
              <strong>{line.about}.</strong> {line.act}
            </th>
            <td>
              {line.expect} <span className="soft">{line.source}</span>
            </td>
            <td aria-label={pass} className="test-tick">
              <span className="test-box" />
            </td>
            <td aria-label={fail} className="test-tick">
              <span className="test-box" />
            </td>
            <td className="test-value">{line.value}</td>
            <td aria-label={initials} />
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Signs() {
  return (
    <div className="sign-lines test-signs">
      <dl>
        {testSigns.map((sign, index) => (
          // Two people sign in the same words; only their place tells them apart.
          // oxlint-disable-next-line react/no-array-index-key
          <div key={index}>
            <dt>{sign}</dt>
            <dd />
          </div>
        ))}
      </dl>
    </div>
  );
}
