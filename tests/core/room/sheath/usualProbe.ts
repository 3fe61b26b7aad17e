import { headShape } from '../../../../src/core/room/sheath/headShape.ts';
import { newInside, type Bubble, type SheathInside } from '../../../../src/core/room/sheath/inside.ts';
import { THING_SHAPES } from '../../../../src/core/room/itemShapes.ts';

const { halfLength, halfHeight } = THING_SHAPES.probe;

/** The room's probe with the usual cord. */
export const PROBE = headShape({ halfLengthM: halfLength, halfWidthM: halfHeight, cordRadiusM: 0.0035 });

/** A sheath with that much gel at the face (mL) and these bubbles, each as arc coordinate (m, −0 as 0) and volume (mL). */
export const sheathWith = (gelMl: number, ...bubbles: (readonly [number, number])[]): SheathInside => ({ ...newInside(), gelMl, bubbles: bubbles.map(([sM, ml]): Bubble => ({ sM: sM + 0, ml })) });

/** All air between film and probe, in millilitres. */
export const airMl = ({ bubbles }: SheathInside): number => bubbles.reduce((sum, { ml }) => sum + ml, 0);
