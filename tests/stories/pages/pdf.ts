import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface PdfWord {
  readonly text: string;
  /** Points from the left edge and from the lower edge of the page. */
  readonly x: number;
  readonly y: number;
}

export interface PdfPage {
  /** Inches. */
  readonly width: number;
  readonly height: number;
  readonly words: readonly PdfWord[];
  /** All words with single spaces between them. */
  readonly text: string;
}

/** Reads a print back the way a recipient's reader would: words and where they stand. */
export async function readPdf(data: Uint8Array): Promise<readonly PdfPage[]> {
  const task = getDocument({ data: new Uint8Array(data), verbosity: 0 });
  const pdf = await task.promise;
  const pages: PdfPage[] = [];
  for (let number = 1; number <= pdf.numPages; number += 1) {
    const page = await pdf.getPage(number);
    const [, , width = 0, height = 0] = page.view;
    const { items } = await page.getTextContent();
    const words = items.flatMap((item): PdfWord[] => {
      if (!('str' in item) || item.str.trim() === '') return [];
      const [, , , , x, y] = item.transform as number[];
      return [{ text: item.str, x: x ?? 0, y: y ?? 0 }];
    });
    const text = items.map((item) => ('str' in item ? item.str + (item.hasEOL ? ' ' : '') : '')).join('');
    pages.push({ width: width / 72, height: height / 72, words, text: text.replace(/\s+/g, ' ') });
  }
  await task.destroy();
  return pages;
}
