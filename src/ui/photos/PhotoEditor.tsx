import { type PointerEvent, useId, useState } from 'react';
import type { Edit } from '../../domain/commands/command.ts';
import { longestCaption, type Photo } from '../../domain/model/photo.ts';
import type { Opening } from '../../domain/model/project.ts';
import {
  aboutInWords,
  captioned,
  type Ends,
  firstArrow,
  isArrow,
  movedByKey,
  movedTo,
  photoPlaces,
  photoWords,
  pointedAt,
} from '../../domain/survey/photos.ts';
import { useApp, useApplication } from '../context.ts';
import { PhotoPicture } from './PhotoPicture.tsx';
import { shareOf } from './shareOf.ts';

interface Props {
  readonly opening: Pick<Opening, 'id' | 'mark'>;
  readonly photo: Photo;
}

/** One photo: what it shows, its caption, and arrows drawn on it with a finger, a mouse or the keyboard. */
export function PhotoEditor({ opening, photo }: Props) {
  const app = useApplication();
  const { dispatch, tell } = app.store.getState();
  const isReadOnly = useApp(({ saving }) => saving.kind === 'readOnly');
  const id = useId();
  const [drawing, setDrawing] = useState(false);
  const [drawn, setDrawn] = useState<Ends>();
  const change = (what: string, edit: Edit, typing?: string) =>
    dispatch(`${opening.mark}: ${what}`, [edit], typing);
  const arrows = Object.values(photo.arrows);
  const keep = (ends: Ends) => change('arrow on a photo', pointedAt(photo, app.newId(), ends));
  const remove = () => {
    change('photo removed', { kind: 'putPhoto', id: photo.id, value: null });
    tell({ kind: 'told', says: photoWords.removed });
  };
  const pens = {
    onPointerDown: (event: PointerEvent<HTMLElement>) => {
      event.currentTarget.setPointerCapture(event.pointerId);
      const { x, y } = shareOf(event);
      setDrawn({ fromX: x, fromY: y, toX: x, toY: y });
    },
    onPointerMove: (event: PointerEvent<HTMLElement>) => {
      const { x, y } = shareOf(event);
      setDrawn((before) => before && { ...before, toX: x, toY: y });
    },
    onPointerUp: () => {
      if (drawn && isArrow(drawn)) {
        keep(drawn);
        setDrawing(false);
      }
      setDrawn(undefined);
    },
    onPointerCancel: () => setDrawn(undefined),
  };
  return (
    <div className="stack photo-editor">
      <PhotoPicture photo={photo} drawn={drawn}>
        {drawing ? (
          <div className="photo-pen" data-testid="pen" {...pens} />
        ) : (
          !isReadOnly &&
          arrows.flatMap((arrow, index) =>
            (['from', 'to'] as const).map((end) => (
              <button
                key={arrow.id + end}
                type="button"
                className="photo-end"
                aria-label={
                  end === 'from' ? photoWords.arrowTail(index + 1) : photoWords.arrowHead(index + 1)
                }
                aria-describedby={`${id}keys`}
                style={{
                  insetInlineStart: `${(end === 'from' ? arrow.fromX : arrow.toX) * 100}%`,
                  insetBlockStart: `${(end === 'from' ? arrow.fromY : arrow.toY) * 100}%`,
                }}
                onKeyDown={(event) => {
                  const moved = movedByKey(arrow, end, event.key);
                  if (!moved) return;
                  event.preventDefault();
                  change('arrow moved', pointedAt(photo, arrow.id, moved), `arrow ${arrow.id} ${end}`);
                }}
              />
            )),
          )
        )}
      </PhotoPicture>
      {!isReadOnly && (
        <div className="row">
          <button
            type="button"
            className="button"
            aria-pressed={drawing}
            onClick={() => setDrawing(!drawing)}
            onKeyDown={(event) => {
              // By keyboard there is nothing to drag: an arrow comes at once and its ends are moved.
              if (event.key !== 'Enter' && event.key !== ' ') return;
              event.preventDefault();
              keep(firstArrow);
            }}
          >
            {photoWords.draw}
          </button>
          {arrows.map((arrow, index) => (
            <button
              key={arrow.id}
              type="button"
              className="button button-quiet"
              onClick={() => change('arrow removed', pointedAt(photo, arrow.id, null))}
            >
              {photoWords.removeArrow(index + 1)}
            </button>
          ))}
        </div>
      )}
      {drawing && (
        <p className="note" role="status">
          {photoWords.drawing}
        </p>
      )}
      <p id={`${id}keys`} className={arrows.length > 0 ? 'note' : 'visually-hidden'}>
        {photoWords.moveByKeys}
      </p>
      <label className="field">
        <span className="lettering soft">{photoWords.caption}</span>
        <textarea
          className="input notes"
          rows={1}
          maxLength={longestCaption}
          value={photo.caption}
          readOnly={isReadOnly}
          onChange={(event) =>
            change('caption', captioned(photo, event.target.value), `caption ${photo.id} ${id}`)
          }
        />
      </label>
      <div className="row">
        <label className="field">
          <span className="lettering soft">{photoWords.shows}</span>
          <select
            value={photo.about}
            disabled={isReadOnly}
            onChange={(event) => change('what a photo shows', movedTo(photo, event.target.value))}
          >
            {[...new Set([photo.about, '', ...photoPlaces])].map((about) => (
              <option key={about} value={about}>
                {aboutInWords(about)}
              </option>
            ))}
          </select>
        </label>
        {!isReadOnly && (
          <button type="button" className="button button-remove button-small row-end" onClick={remove}>
            {photoWords.remove}
          </button>
        )}
      </div>
    </div>
  );
}
