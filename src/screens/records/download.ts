// Hands a file to the person, without any server.

/** Offers `content` to be saved under `name`. */
export function download(name: string, content: string | Uint8Array<ArrayBuffer>): void {
  const url = URL.createObjectURL(new Blob([content], { type: 'application/octet-stream' }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // The browser has taken it by the next turn of its own; some need a moment longer.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}
