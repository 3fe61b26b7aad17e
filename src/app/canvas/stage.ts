import type { Side } from '../../core/base/side.ts';
import type { RoomPicture } from '../../core/room/picture.ts';
import { marksOf } from './art/marks.ts';
import { UltrasoundScreen } from './art/ultrasoundScreen.ts';
import { blendPictures } from './blendPictures.ts';
import { Camera } from './camera.ts';
import { MOVING_LAYERS } from './drawingOrder.ts';
import { loadFonts } from './fonts.ts';
import type { Frame } from './frame.ts';
import { drawHand } from './hand/handThumbnail.ts';
import { HandMotion } from './hand/handMotion.ts';
import { Labels } from './labels/labels.ts';
import { LAYER_PAINTERS } from './layerPainters.ts';
import { looksSame } from './looksSame.ts';
import { PictureCache } from './pictureCache.ts';
import { Pen } from './pen/pen.ts';
import { chooseBackend, type RendererChoice } from './render/chooseBackend.ts';
import type { Backend } from './render/backend.ts';
import { StillPictures } from './stillPictures.ts';

export interface StageOptions {
  readonly renderer: RendererChoice;
  /** Camera, fingers and outline change at once. */
  readonly reducedMotion: boolean;
  /** Whether the patterns of sterility are shown. */
  readonly shown: boolean;
}

export interface StageView {
  readonly activeHand: Side;
  readonly shown: boolean;
  /** Labels look for new places less often. */
  readonly slowLabels?: boolean;
}

/** The room on the screen. */
export interface Stage {
  readonly canvas: HTMLCanvasElement;
  readonly renderer: 'canvas' | 'webgl';
  readonly camera: Camera;
  /** Draws the instant between two pictures; `blend` 0 is the previous one, 1 the current one. */
  draw(previous: RoomPicture, current: RoomPicture, blend: number, view: StageView): void;
  /** To be called when the host has a new size. */
  resize(): void;
  setShown(shown: boolean): void;
  /** Draws one hand with what it holds into another canvas, as large as that is shown. */
  readonly drawHand: typeof drawHand;
  destroy(): void;
}

/** Fingers, outline and labels have found their places this long after the last change, in milliseconds. */
const SETTLE_MS = 700;
/** Sharper than this is not seen and costs time. */
const MOST_DENSITY = 2;

/** Puts a canvas into the host, as large as the host. */
export async function createStage(host: HTMLElement, options: StageOptions): Promise<Stage> {
  const [backend] = await Promise.all([chooseBackend(options.renderer), loadFonts()]);
  return new RoomStage(host, options, backend);
}

class RoomStage implements Stage {
  readonly camera: Camera;
  readonly drawHand = drawHand;
  readonly canvas: HTMLCanvasElement;
  readonly renderer: 'canvas' | 'webgl';
  private readonly stills: StillPictures;
  private readonly labels = new Labels();
  private readonly cache = new PictureCache();
  private readonly ultrasound = new UltrasoundScreen();
  private readonly motion: Readonly<Record<Side, HandMotion>>;
  private shown: boolean;
  private density = 1;
  private drawn: RoomPicture | null = null;
  private look = '';
  private settledMs = 0;

  constructor(private readonly host: HTMLElement, options: StageOptions, private readonly backend: Backend) {
    this.camera = new Camera(options.reducedMotion);
    this.canvas = backend.canvas;
    this.renderer = backend.kind;
    this.stills = new StillPictures(backend);
    this.motion = { left: new HandMotion(options.reducedMotion), right: new HandMotion(options.reducedMotion) };
    this.shown = options.shown;
    Object.assign(this.canvas.style, { display: 'block', width: '100%', height: '100%', touchAction: 'none' });
    host.append(this.canvas);
    this.resize();
  }

  resize(): void {
    const { clientWidth, clientHeight } = this.host;
    this.density = Math.min(MOST_DENSITY, globalThis.devicePixelRatio || 1);
    this.backend.resize(Math.max(1, Math.round(clientWidth * this.density)), Math.max(1, Math.round(clientHeight * this.density)));
    Object.assign(this.canvas.style, { width: '100%', height: '100%' });
    this.camera.resize(clientWidth, clientHeight);
    this.drawn = null;
  }

  draw(previous: RoomPicture, current: RoomPicture, blend: number, view: StageView): void {
    const nowMs = performance.now();
    this.shown = view.shown;
    this.camera.furnish(current.scenario);
    this.camera.advance(current.hands.left.holds !== null || current.hands.right.holds !== null, nowMs);
    const picture = blendPictures(previous, current, blend);
    if (this.isDrawn(picture, view, nowMs)) return;
    const frameOn = (ctx: CanvasRenderingContext2D): Frame => ({
      pen: Pen.over(ctx, this.camera.toScreen, this.density), picture, nowMs, camera: this.camera, motion: this.motion, labels: this.labels,
      markOf: marksOf(picture, this.shown), shown: this.shown, activeHand: view.activeHand, slowLabels: view.slowLabels ?? false, ultrasound: this.ultrasound, cache: this.cache,
    });
    const together = this.stills.update(frameOn(SCRATCH()));
    this.backend.render(together !== 'nothing', (ctx) => {
      const frame = frameOn(ctx);
      this.stills.paintRest(frame, together);
      for (const layer of MOVING_LAYERS) LAYER_PAINTERS[layer](frame);
    });
  }

  /** Whether the screen shows this already, as it does while nothing moves. */
  private isDrawn(picture: RoomPicture, view: StageView, nowMs: number): boolean {
    const look = `${view.activeHand} ${view.shown} ${this.camera.toScreen.join(' ')} ${this.canvas.width} ${this.canvas.height}`;
    if (this.drawn === null || look !== this.look || !looksSame(this.drawn, picture)) this.settledMs = nowMs + SETTLE_MS;
    else if (nowMs > this.settledMs) return true;
    this.drawn = picture;
    this.look = look;
    return false;
  }

  setShown(shown: boolean): void { this.shown = shown; }

  destroy(): void {
    this.canvas.remove();
    this.backend.destroy();
  }
}

let scratch: CanvasRenderingContext2D | null = null;
/** A context that nothing is drawn on. */
const SCRATCH = (): CanvasRenderingContext2D => (scratch ??= document.createElement('canvas').getContext('2d')!);
