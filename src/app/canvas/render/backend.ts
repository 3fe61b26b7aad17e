/** A picture that is kept and only shown in every frame. */
export interface KeptPicture {
  /** Its own canvas, to be drawn on in device pixels. */
  readonly ctx: CanvasRenderingContext2D;
  /** Gives it a new size and place in device pixels; what was drawn is lost. */
  reshape(x: number, y: number, width: number, height: number): void;
  moveTo(x: number, y: number): void;
  /** To be called after drawing. */
  changed(): void;
}

/** What puts pictures on the screen. Everything is in device pixels. */
export interface Backend {
  readonly kind: 'canvas' | 'webgl';
  readonly canvas: HTMLCanvasElement;
  /** Kept pictures lie on each other in the order in which they were made. */
  keep(): KeptPicture;
  resize(width: number, height: number): void;
  /** Shows the kept pictures and over them what `paint` draws; the context comes with the identity as its transform. */
  render(paint: (ctx: CanvasRenderingContext2D) => void): void;
  destroy(): void;
}
