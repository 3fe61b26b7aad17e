import type { SurfaceMark } from '../../core/room/picture.ts';
import { BREAK, BREAK_TINT, HATCH, PREPARED, PREPARED_DOT } from './palette.ts';

const FRAME = '#5E6C75';
let count = 0;

/** Swatch of a state for legends, as SVG text. Size in CSS pixels. It is a picture beside its word, so it is hidden from readers. */
export function swatch(mark: SurfaceMark, width = 26, height = 18): string {
  const id = `swatch${(count += 1)}`;
  const box = (fill: string, line: string): string => `<rect x=".75" y=".75" width="${width - 1.5}" height="${height - 1.5}" rx="3" fill="${fill}" stroke="${line}"/>`;
  const open = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" aria-hidden="true" focusable="false">`;
  const tile = (size: number, inner: string): string =>
    `<defs><pattern id="${id}" width="${size}" height="${size}" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">${inner}</pattern></defs>`;
  switch (mark) {
    case 'sterile': return `${open}${box('#FFFFFF', FRAME)}</svg>`;
    case 'unsterile':
      return `${open}${tile(5, `<path d="M0 0V5" stroke="${HATCH}"/>`)}${box('#FFFFFF', 'none')}${box(`url(#${id})`, FRAME)}</svg>`;
    case 'became':
      return `${open}${tile(8, `<path d="M0 0H8V8H0Z" fill="${BREAK_TINT}"/><path d="M0 0V8M0 0H8" stroke="${BREAK}" stroke-width="3.6"/>`)}${box('#FFFFFF', 'none')}${box(`url(#${id})`, BREAK)}</svg>`;
    case 'prepared': {
      const y = 4.2;
      return `${open}${box('#E6C3A6', '#8A5E42')}<path d="M1.8 ${y}H${width - 1.8}" stroke="${PREPARED}" stroke-width="4.4"/>`
        + `<path d="M4 ${y}H${width - 3}" stroke="${PREPARED_DOT}" stroke-width="2.6" stroke-dasharray=".1 5.6" stroke-linecap="round"/></svg>`;
    }
  }
}
