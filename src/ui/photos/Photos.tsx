import { useState } from 'react';
import { fieldInfo } from '../../domain/model/fields.ts';
import type { Opening, Project } from '../../domain/model/project.ts';
import { photoInWords, photosAt, photosMissing, photoWords } from '../../domain/survey/photos.ts';
import { Opened } from '../review/Opened.tsx';
import { PhotoButton } from './PhotoButton.tsx';
import { PhotoEditor } from './PhotoEditor.tsx';
import { PhotoPicture } from './PhotoPicture.tsx';

interface Props {
  readonly project: Project;
  readonly opening: Opening;
  readonly atFirst?: boolean;
}

/** Every photo of an opening, what is still to be taken, and one of them open to be written on. */
export function Photos({ project, opening, atFirst = false }: Props) {
  const photos = photosAt(project, opening.id);
  const missing = photosMissing(project, opening);
  const [openId, setOpenId] = useState<string | null>(null);
  const open = photos.find(({ id }) => id === openId);
  return (
    <section className="section" aria-label={photoWords.title}>
      <Opened
        summary={
          <>
            {photoWords.title}{' '}
            <span className="note">{photos.length === 0 ? photoWords.none : photos.length}</span>
          </>
        }
        atFirst={atFirst || missing.length > 0}
      >
        <div className="stack">
          {missing.length > 0 && (
            <div className="stack stack-tight" role="group" aria-label={photoWords.missing}>
              <p className="lettering soft">{photoWords.missing}</p>
              <div className="row">
                {missing.map((key) => (
                  <PhotoButton key={key} opening={opening} about={key} label={fieldInfo(key).label} />
                ))}
              </div>
            </div>
          )}
          {photos.length > 0 && (
            <ul className="photo-list">
              {photos.map((photo) => (
                <li key={photo.id}>
                  <button
                    type="button"
                    className="photo-thumb"
                    aria-expanded={photo.id === openId}
                    onClick={() => setOpenId(photo.id === openId ? null : photo.id)}
                  >
                    <PhotoPicture photo={photo} isSaid />
                    <span className="photo-words">{photoInWords(photo)}</span>
                  </button>
                </li>
              ))}
            </ul>
          )}
          {open && <PhotoEditor key={open.id} opening={opening} photo={open} />}
          <div className="row">
            <PhotoButton opening={opening} about="" label={photoWords.take} />
            <PhotoButton opening={opening} about="" label={photoWords.choose} fromFiles />
          </div>
          <p className="note">{photoWords.stripped}</p>
        </div>
      </Opened>
    </section>
  );
}
