import type { Side } from '../../core/base/side.ts';
import { placeHolds } from '../../core/room/placedHold.ts';
import { marksOf } from './art/marks.ts';
import { UltrasoundScreen } from './art/ultrasoundScreen.ts';
import { blendPictures } from './blendPictures.ts';
import { MOVING_LAYERS } from './drawingOrder.ts';
import type { Frame } from './frame.ts';
import { HandMotion } from './hand/handMotion.ts';
import { Labels } from './labels/labels.ts';
import { paintLeadLine } from './leadLine.ts';
import { LAYER_PAINTERS } from './layerPainters.ts';
import { Lens } from './lens.ts';
import { makeCanvas } from './makeCanvas.ts';
import type { Painter, Shot } from './painter.ts';
import { PictureCache } from './pictureCache.ts';
import { Pen } from './pen/pen.ts';
import type { Backend } from './render/backend.ts';
import { StillPictures } from './stillPictures.ts';

/** Paints the room on the thread that it lives on. */
export class RoomPainter implements Painter {
  readonly ready = true;
  readonly canvas: HTMLCanvasElement;
  readonly renderer: 'canvas' | 'webgl';
  private readonly stills: StillPictures;
  private readonly labels = new Labels();
  private readonly cache = new PictureCache();
  private readonly ultrasound = new UltrasoundScreen();
  private readonly motion: Readonly<Record<Side, HandMotion>>;
  /** A context that nothing is drawn on. */
  private readonly scratch = makeCanvas().getContext('2d')!;

  /** @param reducedMotion fingers and outline change at once */
  constructor(private readonly backend: Backend, reducedMotion: boolean) {
    this.canvas = backend.canvas;
    this.renderer = backend.kind;
    this.stills = new StillPictures(backend);
    this.motion = { left: new HandMotion(reducedMotion), right: new HandMotion(reducedMotion) };
  }

  paint(shot: Shot): void {
    this.fitTo(shot);
    const { shown, activeHand, holds: next = [], slowLabels = false, named = true, pointer = null, nowMs, density, toScreen } = shot;
    const picture = blendPictures(shot.previous, shot.current, shot.blend);
    const camera = new Lens(shot);
    const holds = placeHolds(picture, next);
    const markOf = marksOf(picture, shown);
    const frameOn = (ctx: CanvasRenderingContext2D): Frame => ({
      pen: Pen.over(ctx, toScreen, density), picture, nowMs, camera, motion: this.motion, labels: this.labels,
      markOf, shown, activeHand, holds, slowLabels, named, ultrasound: this.ultrasound, cache: this.cache,
    });
    const together = this.stills.update(frameOn(this.scratch));
    this.backend.render(together !== 'nothing', (ctx) => {
      const frame = frameOn(ctx);
      this.stills.paintRest(frame, together);
      for (const layer of MOVING_LAYERS) LAYER_PAINTERS[layer](frame);
      if (pointer && activeHand) paintLeadLine(ctx, density, pointer, camera.roomToScreen(picture.hands[activeHand].x, picture.hands[activeHand].y));
    });
  }

  /** Gives the canvas as many pixels as the screen has. */
  private fitTo({ widthPx, heightPx, density }: Shot): void {
    const [width, height] = [Math.max(1, Math.round(widthPx * density)), Math.max(1, Math.round(heightPx * density))];
    if (width !== this.canvas.width || height !== this.canvas.height) this.backend.resize(width, height);
  }

  destroy(): void {
    this.backend.destroy();
  }
}
