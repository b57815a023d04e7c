/** Hands a text to the person as a file. */
export function saveFile(name: string, text: string): void {
  download(new File([text], name, { type: 'text/plain' }));
}

/** Downloads a file. */
export function download(file: File): void {
  const url = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = url;
  link.download = file.name;
  link.click();
  // The browser has taken the address over by the next turn of its loop.
  setTimeout(() => URL.revokeObjectURL(url), 0);
}
