const ADDRESS_KEPT_MS = 10_000;

/** Hands bytes to the browser to be saved under a name. */
export function saveBlob(content: Blob, name: string): void {
  const address = URL.createObjectURL(content);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), ADDRESS_KEPT_MS);
}
