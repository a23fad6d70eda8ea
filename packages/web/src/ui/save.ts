/** Hands a file to the browser, which asks where to put it or puts it among the downloads. */
export function save(file: string, content: string | Uint8Array): void {
  const url = URL.createObjectURL(new Blob([content as Uint8Array<ArrayBuffer>]));
  Object.assign(document.createElement('a'), { href: url, download: file }).click();
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}
