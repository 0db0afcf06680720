// oxlint-disable-next-line import/default -- the bundler makes an address of it
import workerAddress from 'pdfjs-dist/legacy/build/pdf.worker.min.mjs?url';
import { sizeWithin } from './jpeg.ts';

/** A PDF with its pages, to be drawn one at a time; the library is loaded when the first one is chosen. */
export interface OpenPdf {
  readonly pages: number;
  /** The page as a picture with its longest side this long. */
  readonly draw: (page: number, longestPx: number) => Promise<Blob | undefined>;
  readonly close: () => void;
}
export type ReadPdf =
  | { readonly ok: true; readonly pdf: OpenPdf }
  | { readonly ok: false; readonly says: string };

const mostBytes = 100_000_000;

export async function isPdf(file: Blob): Promise<boolean> {
  const head = new Uint8Array(await file.slice(0, 1024).arrayBuffer());
  return new TextDecoder('latin1').decode(head).includes('%PDF-');
}

export async function openPdf(file: Blob): Promise<ReadPdf> {
  if (file.size > mostBytes) {
    return {
      ok: false,
      says: `The PDF is ${Math.round(file.size / 1e6)} MB, too large to be opened here. Save the page that is needed by itself.`,
    };
  }
  const library = await import('pdfjs-dist/legacy/build/pdf.mjs').catch(() => undefined);
  if (!library) {
    return {
      ok: false,
      says: 'The PDF reader is not on this device yet. Reload the app with a network and try again. An image of the plan works without it.',
    };
  }
  const { getDocument, GlobalWorkerOptions } = library;
  GlobalWorkerOptions.workerSrc = workerAddress;
  const task = getDocument({
    data: new Uint8Array(await file.arrayBuffer()),
    // The policy of the page lets no text become code, and nothing is fetched: a plan needs lines and embedded letters.
    isEvalSupported: false,
    useWasm: false,
    enableXfa: false,
    stopAtErrors: false,
    verbosity: 0,
  });
  try {
    const document = await task.promise;
    return {
      ok: true,
      pdf: {
        pages: document.numPages,
        close: () => void task.destroy(),
        draw: async (number, longestPx) => {
          const page = await document.getPage(number);
          const natural = page.getViewport({ scale: 1 });
          // A page without a size would make a picture without one.
          const size = { widthPx: Math.max(1, natural.width), heightPx: Math.max(1, natural.height) };
          const enlarged = longestPx / Math.max(size.widthPx, size.heightPx);
          const viewport = page.getViewport({ scale: enlarged });
          const { widthPx, heightPx } = sizeWithin(
            { widthPx: viewport.width, heightPx: viewport.height },
            longestPx,
          );
          const canvas = globalThis.document.createElement('canvas');
          canvas.width = widthPx;
          canvas.height = heightPx;
          await page.render({ canvas, viewport, background: '#fff' }).promise;
          return new Promise((resolve) => {
            canvas.toBlob((blob) => resolve(blob ?? undefined), 'image/png');
          });
        },
      },
    };
  } catch (error) {
    void task.destroy();
    const name = error instanceof Error ? error.name : '';
    return {
      ok: false,
      says:
        name === 'PasswordException'
          ? 'The PDF opens with a password. Save a copy without one and choose that.'
          : 'The PDF is damaged or none, so no page of it can be drawn. Nothing was changed.',
    };
  }
}
