import type { SurfaceMark } from '../../../core/room/picture.ts';
import { ACCENT, BREAK, GLOVE_LINE } from '../palette.ts';
import { turning } from '../pen/affine.ts';
import { ellipsePath } from '../pen/curves.ts';
import { paintMark, paintPattern } from '../pen/hatch.ts';
import { joinPaths, parsePath, type PathData } from '../pen/pathData.ts';
import type { Pen } from '../pen/pen.ts';
import type { Shade } from '../pen/shade.ts';
import { ASSISTANT_HAND_SHADE, CUFF_SHADE, GLOVE_SHADE, OPERATOR_HAND_SHADE } from '../pen/shades.ts';
import { outlinesOf, type Outlines } from './outlines.ts';
import type { Finger, FingerLayer, HandShape } from './poses.ts';

export type HandPart = 'fingers' | 'palm' | 'back' | 'cuff';

/** What covers a hand: a glove, or the bare skin of one of the two persons. */
export type Skin = 'glove' | 'assistant' | 'operator';

export interface HandDrawing {
  readonly shape: HandShape;
  readonly skin: Skin;
  /** The cuff of its glove is turned back as it came out of the packet. */
  readonly turnedBack?: boolean;
  /** Angle of the cuff against the hand, in degrees, as seen in the hand's own frame. */
  readonly cuffDeg: number;
  /** 0 to 1: how much of the outline of the active hand is seen. */
  readonly active: number;
  readonly marks: Readonly<Record<HandPart, SurfaceMark>>;
  /** Draws what the hand holds, between far and near fingers. */
  readonly tool?: () => void;
}

export const NO_MARKS: HandDrawing['marks'] = { fingers: 'sterile', palm: 'sterile', back: 'sterile', cuff: 'sterile' };

const CUFF = parsePath('M2 -26C-10 -28 -22 -32 -32 -35C-44 -38 -54 -40 -68 -42C-72 -28 -72 28 -68 41C-54 40 -44 38 -32 35C-22 33 -10 29 2 27Z');
const TURNED_BACK = parsePath('M4 -27C-8 -29.4 -22 -33 -30 -34.4C-33 -20 -33 20 -30 34C-22 32.6 -8 30 4 28Z');
const CUFF_ROOT = parsePath('M14 -26C4 -25 -4 -25.4 -10 -26.6C-18 -29 -26 -31.6 -34 -34L-34 34C-26 32 -18 29.4 -10 27.2C-4 26 4 25.6 14 26Z');
/** Fades out to both sides, so that no edge is seen where the cuff ends in the hand. */
const CUFF_ROOT_SHADE: Shade = { stops: [[0, '#F4EEDF00'], [0.42, '#F4EEDF'], [0.72, '#F4EEDF'], [1, '#F4EEDF00']], axis: [-34, 0, 14, 0] };
const BARE_ROOT = parsePath('M10 -27.6C0 -27 -8 -27 -14 -27.4L-14 28C-8 27.4 0 27.6 10 29.6Z');
const THUMB_ROOT = parsePath('M-6 -26C6 -30 16 -36 30 -40L46 -30C44 -16 30 -2 16 2L-6 6Z');
const WRIST = ellipsePath(0, 0, 26.4);
const WRIST_FILL = ellipsePath(0, 0, 25.2);
const STYLES: Readonly<Record<Skin, { readonly fill: Shade; readonly line: string }>> = {
  glove: { fill: GLOVE_SHADE, line: GLOVE_LINE },
  assistant: { fill: ASSISTANT_HAND_SHADE, line: '#855E45' },
  operator: { fill: OPERATOR_HAND_SHADE, line: '#5F3B25' },
};

/** Draws a hand; the pen's frame is that of the hand, in millimetres. */
export function paintHand(pen: Pen, hand: HandDrawing): void {
  const gloved = hand.skin === 'glove';
  const outlines = outlinesOf(hand.shape, gloved);
  const body = new HandBody(pen, hand, outlines);
  if (hand.active > 0) body.paintOutline();
  if (gloved) body.paintCuff();
  body.paintLayer('far');
  if (hand.shape.toolAfter === 'far') hand.tool?.();
  body.paintPalmEdge();
  if (hand.shape.toolAfter === 'palm') hand.tool?.();
  body.paintLayer('near');
  body.paintPalm();
  body.paintLayer('front');
  body.paintThumbRoot();
  body.paintCreases();
}

/** The steps of drawing one hand, in the order of `paintHand`. */
class HandBody {
  private readonly cuffPen: Pen;
  private readonly gloved: boolean;
  private readonly style: (typeof STYLES)[Skin];

  constructor(private readonly pen: Pen, private readonly hand: HandDrawing, private readonly outlines: Outlines) {
    this.cuffPen = pen.in(turning(hand.cuffDeg));
    this.gloved = hand.skin === 'glove';
    this.style = STYLES[hand.skin];
  }

  private get silhouette(): PathData { return joinPaths([...Object.values(this.outlines), this.hand.shape.palm, WRIST]); }

  private get cuff(): PathData { return this.hand.turnedBack ? TURNED_BACK : CUFF; }

  /** Accent with a white casing, so that it holds on cloth, skin and gown alike. */
  paintOutline(): void {
    const { accent } = this.pen.weights;
    for (const [line, weight] of [['#FFFFFF', accent + 4], [ACCENT, accent]] as const) {
      if (this.gloved) this.cuffPen.path(this.cuff, { line, weight, alpha: this.hand.active });
      this.pen.path(this.silhouette, { line, weight, alpha: this.hand.active });
    }
  }

  paintCuff(): void {
    this.pen.path(WRIST, this.style);
    this.cuffPen.path(this.cuff, { fill: CUFF_SHADE, line: GLOVE_LINE });
    // What shows at the wrist under a turned-back cuff has its mark there.
    if (!this.hand.turnedBack) paintMark(this.cuffPen, CUFF, this.hand.marks.cuff);
  }

  paintLayer(layer: FingerLayer): void {
    const { order, toolAfter } = this.hand.shape;
    for (const [finger, own] of order) {
      if (own !== layer) continue;
      this.paintFinger(finger);
      if (toolAfter === finger) this.hand.tool?.();
    }
  }

  private paintFinger(finger: Finger): void {
    this.pen.path(this.outlines[finger], this.style);
    paintMark(this.pen, this.outlines[finger], this.hand.marks.fingers);
  }

  /** The palm covers the inner half of this line later, so it is drawn twice as wide. */
  paintPalmEdge(): void { this.pen.path(this.hand.shape.palm, { ...this.style, weight: this.pen.weights.k * 1.8 }); }

  /** The palm covers the roots of the fingers and the end of the cuff. */
  paintPalm(): void {
    const { palm } = this.hand.shape;
    const { marks } = this.hand;
    const { fill } = this.style;
    this.pen.path(palm, { fill });
    this.pen.path(this.gloved ? WRIST_FILL : BARE_ROOT, { fill });
    if (this.gloved && marks.cuff === 'sterile') this.cuffPen.path(CUFF_ROOT, { fill: CUFF_ROOT_SHADE });
    // The back of the hand is what the viewer sees; the palm side shows only where the back is as it was.
    const mark = marks.back === 'sterile' ? marks.palm : marks.back;
    if (mark === 'sterile') return;
    paintPattern(this.pen, palm, mark);
    if (this.gloved) paintPattern(this.pen, WRIST_FILL, mark);
    this.pen.clipped(palm, () => this.pen.path(palm, { line: mark === 'became' ? BREAK : this.style.line, weight: 'd' }));
  }

  /** Where all is sterile, thumb and palm are one. */
  paintThumbRoot(): void {
    const { fingers, palm, back } = this.hand.marks;
    const plain = [fingers, palm, back].every((mark) => mark === 'sterile');
    if (this.hand.shape.thumbRoot && plain) this.pen.path(THUMB_ROOT, { fill: this.style.fill });
  }

  paintCreases(): void {
    const { line } = this.style;
    const creases = this.hand.shape.creases.map(parsePath);
    const [sharp, soft] = [creases.slice(0, -2), creases.slice(-2)];
    this.pen.path(joinPaths(sharp), { line, weight: 'h', alpha: 0.62 });
    this.pen.path(joinPaths(soft), { line, weight: 'h', alpha: 0.32 });
    if (!this.gloved) return;
    this.cuffPen.path(this.hand.turnedBack ? 'M-8 -29C-10 -14 -10 14 -8 29' : 'M-63 -41C-66 -30 -66 28 -63 40', { line, weight: 'd', alpha: 0.8 });
    this.cuffPen.path('M-50 -37C-44 -30 -40 -20 -38 -8M-54 33C-46 26 -42 18 -38 8M-26 -31C-20 -22 -18 -12 -20 -2M-28 32C-22 24 -18 16 -18 8', { line, weight: 'h', alpha: 0.5 });
    this.pen.path('M-2 -17C3 -9 3 9 -2 17M7 -19C10 -13 11 -6 10 1', { line, weight: 'h', alpha: 0.4 });
  }
}
