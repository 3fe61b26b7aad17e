/** A canvas that is kept off the screen. In a worker it is one without a document; both draw alike, and only what they share is used. */
export function makeCanvas(): HTMLCanvasElement {
  return typeof document === 'undefined' ? (new OffscreenCanvas(1, 1) as unknown as HTMLCanvasElement) : document.createElement('canvas');
}
