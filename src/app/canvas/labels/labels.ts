import type { Frame } from '../frame.ts';
import { QUIET_INK } from '../palette.ts';
import { levelStretches } from '../art/level.ts';
import { fromSideBoxes } from '../gown/fromSide.ts';
import { drawLabel, type LabelArt } from './labelArt.ts';
import { arrange, type Box, type PlacedLabel } from './arrange.ts';
import { holdLabels } from './holdLabels.ts';
import { labelPlaces, type LabelPlace } from './places.ts';

/** Labels look for new places this often; calm for people who read slowly. */
const PERIOD_MS = 500;
const SLOW_PERIOD_MS = 2500;
const LEVEL_WORDS = 'no hands below';
const LEVEL_WORDS_FROM_PX_PER_M = 600;
/** So much of the words' width must be seen of the line. */
const LEVEL_PART = 0.6;

/** Names in the room with their leader lines. */
export class Labels {
  private readonly art = new Map<string, LabelArt>();
  private placed: readonly PlacedLabel[] = [];
  private lastMs = -Infinity;
  private lastView = '';

  /** Forgets the drawn words, when the font has arrived. */
  redraw(): void { this.art.clear(); }

  paint(frame: Frame): void {
    const { camera, nowMs, slowLabels, holds } = frame;
    // Another hold has its name at once.
    const view = `${camera.toScreen.join(' ')} ${camera.widthPx} ${holds.map(({ hold }) => hold.place + hold.of).join()}`;
    if (view !== this.lastView || nowMs - this.lastMs > (slowLabels ? SLOW_PERIOD_MS : PERIOD_MS)) {
      this.placed = arrange(placesOf(frame), this.placed, { frame, measure: (words) => this.artOf(words, frame), taken: [...this.levelBox(frame), ...fromSideBoxes(frame)] });
      this.lastMs = nowMs;
      this.lastView = view;
    }
    const places = placesOf(frame);
    for (const label of this.placed) {
      const place = places.find(({ words }) => words === label.words);
      if (place !== undefined) this.paintOne(frame, label, camera.roomToScreen(place.x, place.y), place.clearPx ?? 0);
    }
    this.paintLevelWords(frame);
  }

  /** Words at a place of the canvas (CSS pixels, upper left corner). */
  paintWords(frame: Frame, words: string, sizePx: number, x: number, y: number): void {
    const { ctx, density } = frame.pen;
    ctx.drawImage(this.artOf(words, frame, sizePx).canvas, Math.round(x * density), Math.round(y * density));
  }

  private levelBox(frame: Frame): Box[] {
    const { wide, high } = this.artOf(LEVEL_WORDS, frame);
    const corner = levelCorner(frame, wide);
    if (corner === null) return [];
    return [{ x0: corner.x, y0: corner.y, x1: corner.x + wide, y1: corner.y + high }];
  }

  private artOf(words: string, { camera, pen }: Pick<Frame, 'camera' | 'pen'>, sizePx = camera.pxPerM > 700 ? 17 : 16): LabelArt {
    const key = `${words} ${sizePx} ${pen.density}`;
    let art = this.art.get(key);
    if (art === undefined) this.art.set(key, (art = drawLabel(words, sizePx, pen.density, words === LEVEL_WORDS)));
    return art;
  }

  /** The words stay where they were placed; the leader follows its point. */
  private paintOne(frame: Frame, label: PlacedLabel, point: { x: number; y: number }, clearPx: number): void {
    const { ctx, density } = frame.pen;
    const [dx, dy] = [label.tieX - point.x, label.tieY - point.y];
    const clear = clearPx / Math.max(clearPx, 1, Math.hypot(dx, dy));
    const art = this.artOf(label.words, frame);
    ctx.strokeStyle = ctx.fillStyle = QUIET_INK;
    ctx.lineWidth = density;
    ctx.beginPath();
    ctx.moveTo(label.tieX * density, label.tieY * density);
    ctx.lineTo((point.x + dx * clear) * density, (point.y + dy * clear) * density);
    ctx.stroke();
    if (clearPx === 0) {
      ctx.beginPath();
      ctx.arc(point.x * density, point.y * density, 2.2 * density, 0, 2 * Math.PI);
      ctx.fill();
    }
    ctx.drawImage(art.canvas, Math.round(label.x * density), Math.round(label.y * density));
  }

  private paintLevelWords(frame: Frame): void {
    const art = this.artOf(LEVEL_WORDS, frame);
    const corner = levelCorner(frame, art.wide);
    if (corner === null) return;
    const { ctx, density } = frame.pen;
    ctx.drawImage(art.canvas, Math.round(corner.x * density), Math.round(corner.y * density));
  }
}

/** What is named, the next holds before all else; nothing twice. */
function placesOf({ holds, picture }: Frame): LabelPlace[] {
  const next = holdLabels(holds);
  return [...next, ...labelPlaces(picture).filter(({ words }) => !next.some((other) => other.words === words))];
}

/** Where the words begin under the level line, in CSS pixels; they are left out where the room is seen from afar. */
function levelCorner({ picture, camera }: Frame, wide: number): { x: number; y: number } | null {
  if (camera.pxPerM < LEVEL_WORDS_FROM_PX_PER_M) return null;
  for (const stretch of levelStretches(picture)) {
    const [a, b] = [stretch[0]!, stretch.at(-1)!].map(([x, y]) => camera.roomToScreen(x, y)) as [{ x: number; y: number }, { x: number; y: number }];
    const left = Math.max(a.x, 8);
    const right = Math.min(b.x, camera.widthPx - 8);
    if (right - left >= LEVEL_PART * wide) return { x: left, y: Math.max(a.y, b.y) + 3 };
  }
  return null;
}
