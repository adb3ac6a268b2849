/** Hands a text to the browser as a file to keep. Nothing is sent: the file is made on this device. `type` is its media type. */
export function downloadText(fileName: string, text: string, type = 'application/json'): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = fileName;
  document.body.append(link);
  link.click();
  link.remove();
  // The browser reads it after the click: let go too early, and the file is empty.
  setTimeout(() => URL.revokeObjectURL(address), keepFor);
}

/** Milliseconds. */
const keepFor = 60_000;
