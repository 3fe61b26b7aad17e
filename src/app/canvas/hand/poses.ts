import type { HandPose } from '../../../core/room/picture.ts';
import { parsePath, type PathData } from '../pen/pathData.ts';
import type { WidePoint } from '../pen/curves.ts';

export const FINGERS = ['thumb', 'index', 'middle', 'ring', 'little'] as const;
export type Finger = (typeof FINGERS)[number];

/** Where a finger is drawn: under the palm and the tool, over the tool, or over everything (a thumb in front). */
export type FingerLayer = 'far' | 'near' | 'front';

/**
 * A pose as centre lines with half widths in millimetres: origin at the wrist crease, fingers along +x, thumb towards −y, the back of
 * the hand to the viewer. It is the operator's right hand; the left one is its mirror image. All poses have the same points, so
 * that one blends into another.
 */
export interface HandShape {
  readonly palm: PathData;
  readonly fingers: Readonly<Record<Finger, readonly WidePoint[]>>;
  /** Far to near. */
  readonly order: readonly (readonly [Finger, FingerLayer])[];
  /** The tool lies over the fingers of this layer and under those that follow; the finger named last under it. */
  readonly toolAfter: Finger | 'palm' | 'far';
  readonly creases: readonly string[];
  /** Where the fingertips meet, in millimetres. */
  readonly grip: readonly [number, number];
  /** Blends the root of a thumb in front into the palm. */
  readonly thumbRoot: boolean;
}

const PALM_OPEN = parsePath('M-6 -27C8 -29 20 -34 34 -38C52 -43 72 -43 90 -41C99 -39 104 -32 105 -22C107 -8 105 8 100 20C97 30 92 38 84 41C70 45 50 43 32 38C18 34 6 30 -6 27Z');
const PALM_CLOSED = parsePath('M-6 -26C8 -28 20 -33 36 -36C54 -40 72 -40 86 -38C97 -36 102 -28 103 -18C105 -6 103 10 98 22C94 32 88 38 80 40C64 43 46 41 30 37C18 33 6 29 -6 26Z');
const PALM_LINES = ['M20 8C40 14 56 16 72 18', 'M22 -2C40 2 58 2 76 -2'];

const open: HandShape = {
  palm: PALM_OPEN,
  fingers: {
    thumb: [[18, -18, 19], [48, -46, 16.5], [80, -68, 12.6], [106, -82, 10]],
    index: [[84, -29, 12.5], [128, -41, 11.2], [154, -47, 9.8], [172, -51, 8.4]],
    middle: [[90, -8, 12.6], [139, -11, 11.2], [167, -13, 9.9], [188, -14, 8.3]],
    ring: [[86, 13, 12], [131, 17, 10.8], [157, 20, 9.5], [176, 22, 7.9]],
    little: [[76, 30, 10.8], [111, 41, 9.6], [130, 47, 8.4], [146, 52, 7]],
  },
  order: [['thumb', 'far'], ['index', 'near'], ['middle', 'near'], ['ring', 'near'], ['little', 'near']],
  toolAfter: 'palm',
  creases: ['M83 -34C88 -31 90 -27 89 -22', 'M92 -14C96 -10 97 -5 95 0', 'M88 9C91 12 92 17 90 21', 'M78 29C81 31 82 35 80 38',
    'M124 -48C127 -45 129 -41 128 -36', 'M128 -50C131 -46 133 -42 132 -37', 'M136 -19C139 -15 140 -9 138 -4', 'M141 -19C144 -15 145 -9 143 -4',
    'M129 9C132 13 132 19 130 24', 'M134 10C137 14 137 20 134 24', 'M109 34C111 37 111 43 108 47', 'M113 36C115 39 115 44 112 48',
    'M78 -79C83 -74 86 -69 87 -63', 'M18 -24C34 -20 52 -22 70 -28', 'M22 -6C42 -4 62 -6 80 -8', 'M20 8C40 12 58 13 74 14'],
  grip: [176, -6],
  thumbRoot: false,
};

const pinch: HandShape = {
  palm: PALM_CLOSED,
  fingers: {
    thumb: [[20, -18, 19], [58, -44, 16], [98, -58, 12.6], [150, -43, 8.6]],
    index: [[84, -22, 12.6], [124, -20, 11.4], [148, -25, 10], [165, -36, 8]],
    middle: [[86, 4, 12.6], [122, 12, 11.4], [143, 24, 10], [147, 38, 8.2]],
    ring: [[80, 18, 12], [110, 28, 11.4], [124, 38, 10.2], [120, 47, 8.6]],
    little: [[70, 29, 11], [94, 40, 10], [106, 48, 9], [102, 55, 7.6]],
  },
  order: [['little', 'far'], ['ring', 'far'], ['middle', 'near'], ['index', 'near'], ['thumb', 'front']],
  toolAfter: 'middle',
  creases: ['M82 -28C87 -25 89 -20 88 -15', 'M88 -3C92 0 93 6 91 10', 'M121 -28C125 -25 126 -18 124 -13', 'M126 -28C130 -25 131 -19 129 -14',
    'M120 5C124 8 125 14 123 19', 'M97 -68C101 -64 102 -58 100 -52', 'M102 -68C106 -64 107 -58 105 -52', ...PALM_LINES],
  grip: [159, -38],
  thumbRoot: true,
};

const syringe: HandShape = {
  palm: PALM_CLOSED,
  fingers: {
    thumb: [[20, -18, 19], [52, -44, 16], [86, -56, 12.8], [142, -41, 8.8]],
    index: [[84, -20, 12.6], [126, -12, 11.2], [150, -10, 9.8], [168, -10, 8]],
    middle: [[84, 6, 12.6], [124, 14, 11.4], [146, 10, 10], [160, 2, 8.2]],
    ring: [[78, 22, 12], [112, 28, 11.2], [126, 20, 10], [118, 10, 8.6]],
    little: [[68, 30, 11], [98, 40, 10.2], [112, 34, 9.2], [106, 26, 8]],
  },
  order: [['little', 'far'], ['ring', 'far'], ['middle', 'near'], ['index', 'near'], ['thumb', 'front']],
  toolAfter: 'middle',
  creases: ['M82 -26C87 -23 89 -18 88 -13', 'M86 0C90 3 91 9 89 13', 'M123 -21C127 -18 128 -10 126 -5', 'M128 -21C132 -18 133 -10 131 -5',
    'M124 7C128 10 129 16 127 21', 'M85 -67C89 -63 90 -57 88 -51', 'M90 -67C94 -63 95 -57 93 -51', ...PALM_LINES],
  grip: [150, -27],
  thumbRoot: true,
};

const probe: HandShape = {
  palm: PALM_CLOSED,
  fingers: {
    thumb: [[18, -18, 19], [52, -46, 16.5], [92, -62, 12.8], [152, -58, 9]],
    index: [[84, -24, 12.6], [132, -25, 11.4], [158, -20, 10], [174, -14, 8.4]],
    middle: [[86, -3, 12.6], [134, 0, 11.4], [162, 6, 10], [178, 10, 8.4]],
    ring: [[78, 15, 12], [124, 22, 11.2], [150, 28, 10], [166, 31, 8.2]],
    little: [[68, 28, 11], [108, 40, 10.2], [131, 46, 9.2], [147, 48, 7.6]],
  },
  order: [['thumb', 'far'], ['little', 'near'], ['ring', 'near'], ['middle', 'near'], ['index', 'near']],
  toolAfter: 'far',
  creases: ['M82 -30C87 -27 89 -22 88 -17', 'M88 -9C92 -6 93 0 91 4', 'M82 11C85 14 86 19 84 23', 'M130 -33C134 -30 135 -24 133 -18',
    'M135 -33C139 -30 140 -25 138 -19', 'M133 -8C137 -5 137 3 135 8', 'M138 -7C142 -4 142 3 140 8', 'M123 15C126 18 127 24 124 29', 'M107 34C110 37 110 42 107 46', ...PALM_LINES],
  grip: [141, 5],
  thumbRoot: false,
};

export const HAND_SHAPES: Readonly<Record<HandPose, HandShape>> = { open, pinch, probe, syringe };
