/** Widths of lines in CSS pixels at a camera scale; lines keep their weight while the camera zooms. */
export interface LineWeights {
  /** Contour, detail, crease. */
  readonly k: number;
  readonly d: number;
  readonly h: number;
  /** Cut edge of the drape, cord, film over the cord, prepared skin, accent outline. */
  readonly cloth: number;
  readonly cord: number;
  readonly film: number;
  readonly prepared: number;
  readonly accent: number;
}

/** @param pxPerCm CSS pixels per centimetre of the room */
export function lineWeights(pxPerCm: number): LineWeights {
  const k = Math.min(2.1, Math.max(1.1, 1 + 0.098 * pxPerCm));
  const between = (room: number, field: number): number => room + (field - room) * Math.min(1.6, Math.max(-0.35, (pxPerCm - 3.8) / 6.6));
  return {
    k, d: 0.62 * k, h: 0.45 * k,
    cloth: between(4, 6), cord: between(3.2, 4.6), film: between(8.2, 11), prepared: between(3.4, 5), accent: between(5, 8),
  };
}
