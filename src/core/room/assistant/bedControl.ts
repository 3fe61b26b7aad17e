import type { RequestId } from '../../commands/command.ts';
import type { Layout } from '../layout.ts';

/** How far the bed goes at one request (m), common practice. */
export const BED_STEP_M = 0.05;
/** The control hangs beside the rail, outside a sheet that hangs over it, at the frame under the mattress (m). */
const BESIDE_M = 0.06;
const BELOW_M = 0.02;

/** Way in which a request moves the bed: 1 up, −1 down, 0 for any other. */
export const bedWay = (request: RequestId): 1 | -1 | 0 => (request === 'bedUp' ? 1 : request === 'bedDown' ? -1 : 0);

/** Where the control of the bed is on a side (1: right of the screen), toward its foot and so before the plane of bed and field; metres. */
export const bedControl = ({ crest, mattress }: Layout, side: 1 | -1): readonly [number, number] => [crest[side > 0 ? 'left' : 'right'].x + side * BESIDE_M, mattress.bottom - BELOW_M];
