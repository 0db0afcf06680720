import type { ReactNode } from 'react';
import type { Photo } from '../../domain/model/photo.ts';
import { type Ends, photoInWords, photoWords } from '../../domain/survey/photos.ts';
import { arrowShape } from '../../exporting/drawing/arrowShape.ts';
import './photos.css';
import { usePicture } from './usePicture.ts';

interface Props {
  readonly photo: Pick<Photo, 'about' | 'caption' | 'arrows' | 'sha256' | 'widthPx' | 'heightPx'>;
  /** An arrow that is being drawn and is not kept yet. */
  readonly drawn?: Ends | undefined;
  /** What it shows stands in words beside it. */
  readonly isSaid?: boolean;
  readonly children?: ReactNode;
}

/** A photo with its arrows over it, on screen and on paper alike. */
export function PhotoPicture({ photo, drawn, isSaid = false, children }: Props) {
  const { widthPx, heightPx } = photo;
  const shown = usePicture(photo.sha256);
  const arrows: readonly (Ends & { readonly id: string })[] = [
    ...Object.values(photo.arrows),
    ...(drawn ? [{ ...drawn, id: 'drawn' }] : []),
  ];
  if (shown.is !== 'here') {
    return (
      <p className="photo-missing note" role="status">
        {shown.is === 'gone' ? photoWords.gone : photoWords.loading}
      </p>
    );
  }
  return (
    <div className="photo-picture" style={{ aspectRatio: `${widthPx} / ${heightPx}` }}>
      <img
        src={shown.address}
        alt={isSaid ? '' : photoInWords(photo)}
        width={widthPx}
        height={heightPx}
        decoding="sync"
      />
      <svg viewBox={`0 0 ${widthPx} ${heightPx}`} aria-hidden="true">
        {arrows.map((arrow) => (
          <ArrowOver key={arrow.id} ends={arrow} widthPx={widthPx} heightPx={heightPx} />
        ))}
      </svg>
      {children}
    </div>
  );
}

function ArrowOver({ ends, widthPx, heightPx }: { ends: Ends; widthPx: number; heightPx: number }) {
  const { from, to, head, widthPx: stroke, haloPx } = arrowShape(ends, widthPx, heightPx);
  const shaft = { x1: from.x, y1: from.y, x2: to.x, y2: to.y };
  return (
    <g className="photo-arrow">
      <g className="photo-arrow-halo" strokeWidth={stroke + 2 * haloPx}>
        <line {...shaft} />
        <polygon points={head} strokeWidth={2 * haloPx} />
      </g>
      <line {...shaft} strokeWidth={stroke} />
      <polygon points={head} />
    </g>
  );
}
