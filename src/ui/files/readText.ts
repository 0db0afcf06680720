export type ReadText =
  | { readonly ok: true; readonly text: string; readonly note: string }
  | { readonly ok: false; readonly says: string };

/** A text file in UTF-8 or, as older spreadsheets write it, in Windows-1252. */
export async function readText(file: Pick<Blob, 'arrayBuffer'>): Promise<ReadText> {
  let bytes: Uint8Array;
  try {
    bytes = new Uint8Array(await file.arrayBuffer());
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return { ok: false, says: `The file could not be read from the disk (${why}).` };
  }
  // Every workbook is a zip archive, and those begin with these two letters.
  if (bytes[0] === 0x50 && bytes[1] === 0x4b) {
    return { ok: false, says: 'This is a workbook, not CSV. Save the sheet as CSV and open that.' };
  }
  try {
    return { ok: true, text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), note: '' };
  } catch {
    const text = new TextDecoder('windows-1252').decode(bytes);
    return {
      ok: true,
      text,
      note: 'The file is not in UTF-8; it was read as Windows-1252. Check accents and signs.',
    };
  }
}
