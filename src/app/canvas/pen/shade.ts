/** A soft fill: colours from one side of the shape to the other, light from above. */
export interface Shade {
  /** [place 0..1, colour as `#rrggbb` or `#rrggbbaa`]. */
  readonly stops: readonly (readonly [number, string])[];
  /** Over the shape on the screen from top to bottom, from left to right, or between two points of the drawing frame. */
  readonly axis: 'down' | 'across' | readonly [x0: number, y0: number, x1: number, y1: number];
}

export type Fill = string | Shade;

const even = (colours: readonly string[]): Shade['stops'] => colours.map((colour, i) => [i / (colours.length - 1), colour]);
export const down = (...colours: string[]): Shade => ({ stops: even(colours), axis: 'down' });
/** Three colours with the middle one at 0.55, along a fixed line of the drawing frame. */
export const fixed = (axis: readonly [number, number, number, number], light: string, base: string, dark: string): Shade => ({
  stops: [[0, light], [0.55, base], [1, dark]], axis,
});
