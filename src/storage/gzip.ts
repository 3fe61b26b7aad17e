const GZIP_MAGIC = [0x1f, 0x8b] as const;
/** An unzipped file larger than this is no run of ours. */
const TEXT_BYTES_MAX = 64 * 1024 * 1024;

/** Compresses text. */
export async function zipText(text: string): Promise<Uint8Array<ArrayBuffer>> {
  const stream = new Blob([text]).stream().pipeThrough(new CompressionStream('gzip'));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}

/** Text of a file, unzipped when it is zipped; null when the zip is damaged or far too large. */
export async function fileText(file: Blob): Promise<string | null> {
  const head = new Uint8Array(await file.slice(0, 2).arrayBuffer());
  if (head[0] !== GZIP_MAGIC[0] || head[1] !== GZIP_MAGIC[1]) return file.size > TEXT_BYTES_MAX ? null : file.text();
  try {
    return await readAtMost(file.stream().pipeThrough(new DecompressionStream('gzip')), TEXT_BYTES_MAX);
  } catch {
    return null;
  }
}

/** Reads a stream as text, giving up beyond a size, so that a small file cannot fill the memory. */
async function readAtMost(stream: ReadableStream<Uint8Array>, bytesMax: number): Promise<string | null> {
  const reader = stream.getReader();
  const decoder = new TextDecoder();
  let text = '';
  let bytes = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) return text + decoder.decode();
    bytes += value.length;
    if (bytes > bytesMax) {
      await reader.cancel();
      return null;
    }
    text += decoder.decode(value, { stream: true });
  }
}
