/** How much this browser holds for the app and allows it, in a sentence; asked anew each time, since photos fill it. */
export async function spaceUse(
  storage: Pick<StorageManager, 'estimate'> | undefined = (navigator as { readonly storage?: StorageManager })
    .storage,
): Promise<string> {
  try {
    return spaceInWords((await storage?.estimate?.()) ?? {});
  } catch {
    return spaceInWords({});
  }
}

/** From here on a day of photos may not fit any more. Common practice, no source. */
const shortShare = 0.8;

export function spaceInWords({ usage, quota }: StorageEstimate): string {
  if (usage === undefined || !quota) return 'This browser does not say how much room is left.';
  const said = `${sizeInWords(usage)} of about ${sizeInWords(quota)} that this browser allows are in use.`;
  if (usage < quota * shortShare) return said;
  return `${said} Room is running short: save a copy, then erase projects that are no longer needed here.`;
}

function sizeInWords(bytes: number): string {
  if (bytes >= 1e9) return `${(bytes / 1e9).toFixed(1)} GB`;
  return bytes >= 1e6 ? `${Math.round(bytes / 1e6)} MB` : 'Less than 1 MB';
}
