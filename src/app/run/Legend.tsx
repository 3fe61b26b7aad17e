/** What the patterns in the room mean, under shown coaching. */
export const Legend = () => (
  <ul class="legend" aria-label="Patterns in the room">
    <li>
      <span class="swatch swatch-sterile" aria-hidden="true" /> sterile
    </li>
    <li>
      <span class="swatch swatch-unsterile" aria-hidden="true" /> unsterile
    </li>
    <li>
      <span class="swatch swatch-became" aria-hidden="true" /> became unsterile
    </li>
    <li>
      <span class="swatch swatch-prepared" aria-hidden="true" /> prepared
    </li>
  </ul>
);
