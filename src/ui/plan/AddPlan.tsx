import { useState } from 'react';
import { isPdf, type OpenPdf, openPdf } from '../../intake/picture/pdfPage.ts';
import type { Floor } from '../../domain/model/project.ts';
import { floorPlanWords, newPlan, planLongestPx } from '../../domain/project/floorPlans.ts';
import { useApp, useApplication } from '../context.ts';

interface Chosen {
  readonly pdf: OpenPdf;
  readonly name: string;
}

/** An image, or a page of a PDF, becomes the drawing of a floor. */
export function AddPlan({ floor }: { floor: Floor }) {
  const app = useApplication();
  const isReadOnly = useApp(({ session, saving }) => !session.ready || saving.kind === 'readOnly');
  const [chosen, setChosen] = useState<Chosen>();
  const [page, setPage] = useState(1);
  const [working, setWorking] = useState(false);
  const [problem, setProblem] = useState('');
  const keep = async (picture: Blob, name: string) => {
    const kept = await app.photos.keepPicture(picture, planLongestPx);
    if (!kept.ok) return setProblem(kept.says);
    const hand = { id: app.newId(), at: app.clock(), by: app.preferences.get('yourName') };
    const done = app.store.getState().dispatch(`Plan of ${floor.name}`, [newPlan(floor, name, kept, hand)]);
    if (!done.ok) setProblem(done.says);
  };
  const keepPage = async ({ pdf, name }: Chosen, number: number) => {
    const picture = await pdf.draw(number, planLongestPx).catch(() => undefined);
    if (!picture) return setProblem('This page cannot be drawn. Nothing was changed.');
    await keep(picture, pdf.pages > 1 ? `${name}, page ${number}` : name);
    pdf.close();
  };
  const take = async (file: File) => {
    if (!(await isPdf(file))) return keep(file, file.name);
    const read = await openPdf(file);
    if (!read.ok) return setProblem(read.says);
    const next = { pdf: read.pdf, name: file.name };
    if (read.pdf.pages === 1) return keepPage(next, 1);
    setChosen(next);
  };
  const during = async (work: () => Promise<void>) => {
    setProblem('');
    setWorking(true);
    try {
      await work();
    } catch (error) {
      setProblem(
        `The drawing could not be read (${error instanceof Error ? error.message : String(error)}).`,
      );
    } finally {
      setWorking(false);
    }
  };
  return (
    <div className="stack stack-tight">
      <label className="button photo-button self-start" data-disabled={isReadOnly || undefined}>
        <span>{floorPlanWords.choose}</span>
        <input
          type="file"
          accept="image/*,application/pdf,.pdf"
          disabled={isReadOnly || working}
          onChange={(event) => {
            const [file] = event.target.files ?? [];
            event.target.value = '';
            if (file) void during(() => take(file));
          }}
        />
      </label>
      {chosen && (
        <div className="row">
          <label className="field">
            <span className="lettering soft">{floorPlanWords.page}</span>
            <select value={page} onChange={(event) => setPage(Number(event.target.value))}>
              {Array.from({ length: chosen.pdf.pages }, (_, index) => (
                <option key={index} value={index + 1}>
                  {index + 1}
                </option>
              ))}
            </select>
          </label>
          <button
            type="button"
            className="button button-main"
            disabled={working}
            onClick={() => void during(() => keepPage(chosen, page))}
          >
            {floorPlanWords.takePage}
          </button>
        </div>
      )}
      {working && (
        <p role="status" className="note">
          {floorPlanWords.reading}
        </p>
      )}
      {problem !== '' && (
        <p role="alert" className="field-error">
          {problem}
        </p>
      )}
    </div>
  );
}
