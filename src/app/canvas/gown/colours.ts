import { down, type Shade } from '../pen/shade.ts';

/** Bare skin of the operator's arms, the knit of a cuff, the light inside of a gown and the cover of its table. */
export const SKIN_SHADE: Shade = down('#B58660', '#966542');
export const SKIN_LINE = '#5F3B25';
export const KNIT = '#E9EFF2';
export const KNIT_LINE = '#6C8391';
export const INSIDE = '#DDE8EE';
export const CLOTH_SHADE: Shade = down('#C6D7E1', '#A9C0CD');
export const WRAPPER_SHADE: Shade = down('#CFE0EE', '#A9C4DA');
export const WRAPPER_LINE = '#33597A';
