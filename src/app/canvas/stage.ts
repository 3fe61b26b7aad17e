import type { RoomPicture } from '../../core/room/picture.ts';
import { canPaintBeside, paintBeside, warmUpPainter } from './beside/paintBeside.ts';
import { Camera } from './camera.ts';
import { drawHand } from './hand/handThumbnail.ts';
import { looksSame } from './looksSame.ts';
import type { Painter, StageView } from './painter.ts';
import type { RendererChoice } from './render/chooseBackend.ts';

export interface StageOptions {
  readonly renderer: RendererChoice;
  /** Camera, fingers and outline change at once. */
  readonly reducedMotion: boolean;
}

/** The room on the screen. */
export interface Stage {
  readonly renderer: 'canvas' | 'webgl';
  readonly camera: Camera;
  /** Draws the instant between two pictures; `blend` 0 is the previous one, 1 the current one. */
  draw(previous: RoomPicture, current: RoomPicture, blend: number, view: StageView): void;
  /** To be called when the host has a new size. */
  resize(): void;
  /** Draws one hand with what it holds into another canvas, as large as that is shown. */
  readonly drawHand: typeof drawHand;
  destroy(): void;
}

/** Fingers, outline and labels have found their places this long after the last change, in milliseconds. */
const SETTLE_MS = 700;
/** Sharper than this is not seen and costs time. */
const MOST_DENSITY = 2;

/** Does beforehand what a stage will need. */
export function warmUpStage(renderer: RendererChoice): void {
  if (renderer !== 'webgl') warmUpPainter();
}

/** Puts a canvas into the host, as large as the host. It is filled by a worker where that can be, and on the page's thread for WebGL. */
export async function createStage(host: HTMLElement, { renderer, reducedMotion }: StageOptions): Promise<Stage> {
  const here = async (): Promise<Painter> => (await import('./paintHere.ts')).paintHere(renderer, reducedMotion);
  if (renderer === 'webgl' || !canPaintBeside()) return new RoomStage(host, reducedMotion, await here());
  let stage: RoomStage | null = null;
  const painter = await paintBeside(reducedMotion, () => void here().then((other) => stage?.changePainter(other))).catch(here);
  return (stage = new RoomStage(host, reducedMotion, painter));
}

class RoomStage implements Stage {
  readonly camera: Camera;
  readonly drawHand = drawHand;
  private density = 1;
  private drawn: RoomPicture | null = null;
  private look = '';
  private settledMs = 0;
  private gone = false;

  constructor(private readonly host: HTMLElement, reducedMotion: boolean, private painter: Painter) {
    this.camera = new Camera(reducedMotion);
    this.showCanvas();
    this.resize();
  }

  get renderer(): 'canvas' | 'webgl' { return this.painter.renderer; }

  /** Goes on with another painter, when this one has failed. */
  changePainter(painter: Painter): void {
    if (this.gone) { painter.destroy(); return; }
    this.painter.canvas.remove();
    this.painter.destroy();
    this.painter = painter;
    this.showCanvas();
  }

  private showCanvas(): void {
    const { canvas } = this.painter;
    Object.assign(canvas.style, { display: 'block', width: '100%', height: '100%', touchAction: 'none' });
    this.host.append(canvas);
    this.drawn = null;
  }

  resize(): void {
    this.density = Math.min(MOST_DENSITY, globalThis.devicePixelRatio || 1);
    this.camera.resize(this.host.clientWidth, this.host.clientHeight);
  }

  draw(previous: RoomPicture, current: RoomPicture, blend: number, view: StageView): void {
    const nowMs = performance.now();
    const { camera, density } = this;
    camera.furnish(current.scenario);
    camera.advance(current.hands.left.holds !== null || current.hands.right.holds !== null, nowMs);
    if (!this.painter.ready) return;
    if (this.isDrawn(current, view, nowMs)) return;
    const { toScreen, widthPx, heightPx } = camera;
    this.painter.paint({ previous, current, blend, toScreen, widthPx, heightPx, density, nowMs, ...view });
  }

  /** Whether the screen shows this already, as it does while nothing moves. */
  private isDrawn(picture: RoomPicture, view: StageView, nowMs: number): boolean {
    const { toScreen, widthPx, heightPx } = this.camera;
    const look = `${view.activeHand} ${view.shown} ${view.named} ${JSON.stringify(view.holds)} ${view.pointer?.x} ${view.pointer?.y} ${toScreen.join(' ')} ${widthPx} ${heightPx} ${this.density}`;
    if (this.drawn === null || look !== this.look || !looksSame(this.drawn, picture)) this.settledMs = nowMs + SETTLE_MS;
    else if (nowMs > this.settledMs) return true;
    this.drawn = picture;
    this.look = look;
    return false;
  }

  destroy(): void {
    this.gone = true;
    this.painter.canvas.remove();
    this.painter.destroy();
  }
}
