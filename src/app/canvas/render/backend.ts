/** A picture that is kept and only shown in every frame. */
export interface KeptPicture {
  /** Its own canvas, to be drawn on in device pixels. */
  readonly ctx: CanvasRenderingContext2D;
  show(visible: boolean): void;
  /** Gives it a size in device pixels; what was drawn is lost. */
  reshape(width: number, height: number): void;
  /** To be called after drawing. */
  changed(): void;
}

/** What puts pictures on the screen. Everything is in device pixels. */
export interface Backend {
  readonly kind: 'canvas' | 'webgl';
  readonly canvas: HTMLCanvasElement;
  /** What lies under the moving things; it covers the screen. */
  readonly still: KeptPicture;
  resize(width: number, height: number): void;
  /** Shows the still picture, if it is wanted, and over it what `paint` draws; the context comes with the identity as its transform. */
  render(withStill: boolean, paint: (ctx: CanvasRenderingContext2D) => void): void;
  destroy(): void;
}
