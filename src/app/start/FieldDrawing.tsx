/** The field from above, as a small drawing: drape, opening, prepared skin, probe and cord. Decoration only. */
export const FieldDrawing = () => (
  <svg class="field-drawing" viewBox="0 0 420 190" aria-hidden="true">
    <path class="fd-cloth" d="M10 40 C90 12 180 30 232 22 C300 12 362 30 410 24 C402 80 414 128 404 172 C330 184 276 166 206 176 C140 186 74 168 16 178 C24 128 4 92 10 40 Z" />
    <path class="fd-fold" d="M78 24 C70 70 92 120 76 176 M338 22 C348 74 328 122 342 176 M20 108 C60 102 96 112 132 106 M290 102 C330 96 364 106 406 98" />
    <ellipse class="fd-skin" cx="206" cy="100" rx="62" ry="44" />
    <ellipse class="fd-prepared" cx="206" cy="100" rx="40" ry="27" />
    <ellipse class="fd-dots" cx="206" cy="100" rx="40" ry="27" />
    <path class="fd-film" d="M262 84 C300 60 316 90 350 74 C372 64 384 40 408 44" />
    <path class="fd-cord" d="M262 84 C300 60 316 90 350 74 C372 64 384 40 408 44" />
    <path class="fd-probe" d="M214 92 L226 80 C238 74 254 74 264 80 L268 88 C260 98 244 102 232 102 L220 104 Z" />
  </svg>
);
