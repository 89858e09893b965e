/** Hands a text or picture to the browser as a file to save. */
export function download(name: string, content: string | Blob, type: string): void {
  const url = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // The click has started the download; the address may go once the browser has read it.
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}
