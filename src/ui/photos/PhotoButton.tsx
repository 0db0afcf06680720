import { useEffect, useRef, useState } from 'react';
import type { Opening } from '../../domain/model/project.ts';
import { aboutInWords, photoWords } from '../../domain/survey/photos.ts';
import { midSentence } from '../../domain/text/midSentence.ts';
import { useApp, useApplication } from '../context.ts';
import { downloadPicture } from '../files/download.ts';
import './photos.css';

interface Props {
  readonly opening: Pick<Opening, 'id' | 'mark'>;
  /** The fact or place that the picture shows; '' for the opening. */
  readonly about: string;
  readonly label: string;
  /** Said to a reader in place of the label, where several buttons carry one. */
  readonly name?: string;
  /** Pictures that are on the device already, several at once. */
  readonly fromFiles?: boolean;
}

interface Failed {
  readonly says: string;
  /** Kept until it is tried again: a picture from a camera is nowhere else. */
  readonly file: File | null;
}

/** One press opens the camera, or the list of files where there is none. */
export function PhotoButton({ opening, about, label, name, fromFiles = false }: Props) {
  const { photos } = useApplication();
  const isReadOnly = useApp(({ session, saving }) => !session.ready || saving.kind === 'readOnly');
  const input = useRef<HTMLInputElement>(null);
  const [failed, setFailed] = useState<readonly Failed[]>([]);
  const [working, setWorking] = useState(0);
  const [kept, setKept] = useState(false);
  useEffect(() => {
    const element = input.current;
    const onCancel = () => {
      if (!fromFiles) setFailed([{ says: photoWords.refusedByCamera, file: null }]);
    };
    element?.addEventListener('cancel', onCancel);
    return () => element?.removeEventListener('cancel', onCancel);
  }, [fromFiles]);
  const keep = async (files: readonly File[]) => {
    setFailed([]);
    setKept(false);
    setWorking(files.length);
    const notKept: Failed[] = [];
    for (const file of files) {
      // oxlint-disable-next-line no-await-in-loop -- one after the other: a phone has room for one open picture
      const added = await photos.add(opening, about, file);
      if (!added.ok)
        notKept.push({ says: files.length > 1 ? `${file.name}: ${added.says}` : added.says, file });
    }
    setWorking(0);
    setKept(notKept.length < files.length);
    setFailed(notKept);
  };
  const again = failed.flatMap(({ file }) => file ?? []);
  return (
    <>
      <label className="button photo-button" data-disabled={isReadOnly || undefined}>
        <span aria-hidden={name !== undefined || undefined}>{label}</span>
        {name !== undefined && <span className="visually-hidden">{name}</span>}
        <input
          ref={input}
          type="file"
          accept="image/*"
          disabled={isReadOnly || working > 0}
          {...(fromFiles ? { multiple: true } : { capture: 'environment' as const })}
          onChange={(event) => {
            const files = [...(event.target.files ?? [])];
            // The same picture may be chosen again.
            event.target.value = '';
            if (files.length > 0) void keep(files);
          }}
        />
      </label>
      {(working > 0 || kept) && (
        <span role="status" className="note photo-said">
          {working > 0 ? photoWords.working : photoWords.kept(midSentence(aboutInWords(about)))}
        </span>
      )}
      {failed.length > 0 && (
        <div role="alert" className="stack stack-tight photo-failed">
          {failed.map(({ says }) => (
            <p key={says} className="field-error">
              {says}
            </p>
          ))}
          {again.length > 0 && (
            <div className="row">
              <button type="button" className="button" onClick={() => void keep(again)}>
                {photoWords.again}
              </button>
              <button type="button" className="button" onClick={() => again.forEach(downloadPicture)}>
                {photoWords.toFile}
              </button>
            </div>
          )}
        </div>
      )}
    </>
  );
}
