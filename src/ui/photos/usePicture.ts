import { useEffect, useState } from 'react';
import { useApplication } from '../context.ts';

export type Shown =
  | { readonly is: 'loading' }
  | { readonly is: 'gone' }
  | { readonly is: 'here'; readonly address: string };

/** A picture as an address that an image takes; it is let go of with the component. */
export function usePicture(sha256: string): Shown {
  const { photos } = useApplication();
  const [read, setRead] = useState<{ readonly of: string; readonly shown: Shown }>();
  useEffect(() => {
    let address: string | undefined;
    let left = false;
    void photos.read(sha256).then((bytes) => {
      if (left) return;
      if (bytes) address = URL.createObjectURL(new Blob([new Uint8Array(bytes)], { type: 'image/jpeg' }));
      setRead({ of: sha256, shown: address === undefined ? { is: 'gone' } : { is: 'here', address } });
    });
    return () => {
      left = true;
      if (address !== undefined) URL.revokeObjectURL(address);
    };
  }, [photos, sha256]);
  return read?.of === sha256 ? read.shown : { is: 'loading' };
}
