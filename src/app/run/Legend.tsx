import type { SurfaceMark } from '../../core/room/picture.ts';
import { Swatch } from './Swatch.tsx';

const MARKS: readonly (readonly [SurfaceMark, string])[] = [
  ['sterile', 'sterile'],
  ['unsterile', 'unsterile'],
  ['became', 'became unsterile'],
  ['prepared', 'prepared'],
];

/** What the patterns in the room mean, under shown coaching. */
export const Legend = () => (
  <ul class="legend" aria-label="Patterns in the room">
    {MARKS.map(([mark, words]) => (
      <li key={mark}>
        <Swatch mark={mark} /> {words}
      </li>
    ))}
  </ul>
);
