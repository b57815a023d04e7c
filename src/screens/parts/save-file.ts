/** Hands a text to the person as a file. */
export function saveFile(name: string, text: string): void {
  const url = URL.createObjectURL(new Blob([text], { type: 'text/plain' }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // The browser has taken the address over by the next turn of its loop.
  setTimeout(() => URL.revokeObjectURL(url), 0);
}
