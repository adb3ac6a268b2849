/** Hands a file to the browser to keep. Nothing is sent: the file is made on this device. */
export function downloadFile(fileName: string, content: Blob): void {
  const address = URL.createObjectURL(content);
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
