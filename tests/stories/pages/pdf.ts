import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface PdfWord {
  readonly text: string;
  /** Points from the left edge and from the lower edge of the page. */
  readonly x: number;
  readonly y: number;
  readonly width: number;
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
      return [{ text: item.str, x: x ?? 0, y: y ?? 0, width: item.width }];
    });
    const text = items.map((item) => ('str' in item ? item.str + (item.hasEOL ? ' ' : '') : '')).join('');
    pages.push({ width: width / 72, height: height / 72, words, text: text.replace(/\s+/g, ' ') });
  }
  await task.destroy();
  return pages;
}

/** Margins of every page, in points: what stands in them is on each page and fills none. */
const [topMargin, bottomMargin] = [0.62 * 72, 0.72 * 72];

/**
 * Share of a page that is written on, down to its last words: of its left and its right half each, so that a column that
 * stands empty beside a full one counts for half a page.
 */
export function fillOf({ words, width, height }: PdfPage): number {
  const top = height * 72 - topMargin;
  const inside = words.filter((word) => word.y > bottomMargin + 2 && word.y < top);
  const lowest = (halves: readonly PdfWord[]) => Math.min(top, ...halves.map((word) => word.y));
  const middle = (width * 72) / 2;
  const halves = [
    inside.filter((word) => word.x < middle),
    inside.filter((word) => word.x + word.width > middle),
  ];
  return halves.reduce((sum, half) => sum + (top - lowest(half)) / (top - bottomMargin) / 2, 0);
}
