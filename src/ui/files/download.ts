/** Hands a text to the browser to be saved under a name. */
export function downloadText(name: string, text: string, type = 'text/csv;charset=utf-8'): void {
  download(name, new Blob([text], { type }));
}

const workbookType = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';
export function downloadBytes(name: string, bytes: Uint8Array): void {
  download(name, new Blob([new Uint8Array(bytes)], { type: workbookType }));
}

/** A picture that could not be kept, as it came from the camera. */
export function downloadPicture(file: File): void {
  download(file.name || 'photo.jpg', file);
}

function download(name: string, blob: Blob): void {
  const address = URL.createObjectURL(blob);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  document.body.append(link);
  link.click();
  link.remove();
  // Some browsers read the address only after the click has been handled.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** Letters and figures of the project's name, so that every system takes it. */
export function fileName(project: string, what: string): string {
  const plain = project
    .normalize('NFKD')
    .replaceAll(/[^\p{L}\p{N}]+/gu, '-')
    .replaceAll(/^-+|-+$/g, '')
    .slice(0, 60);
  return `${plain || 'project'} ${what}`;
}
