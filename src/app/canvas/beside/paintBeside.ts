import type { Painter, Shot } from '../painter.ts';
import type { RoomPicture } from '../../../core/room/picture.ts';
import type { StageReply, StageRequest } from './messages.ts';
import { newsOf } from './news.ts';

/** Longest wait for the worker to be ready, in milliseconds. */
const PATIENCE_MS = 15_000;
/** One shot being painted and one that waits for it. */
const SHOTS_UNDER_WAY_MAX = 2;

/** Whether this browser can let a worker fill a canvas of the page. */
export const canPaintBeside = (): boolean =>
  typeof Worker === 'function' && typeof OffscreenCanvas === 'function' && 'transferControlToOffscreen' in HTMLCanvasElement.prototype;

const startWorker = (): Worker => new Worker(new URL('./stageWorker.ts', import.meta.url), { type: 'module' });

/** A worker that was started before it is needed: loading what it paints with takes a while. */
let spare: Worker | null = null;

/** Starts the worker of the next painter, while nobody waits for it. */
export function warmUpPainter(): void {
  if (!canPaintBeside() || spare) return;
  const worker = startWorker();
  worker.addEventListener('error', () => {
    if (spare === worker) spare = null;
  });
  spare = worker;
}

/**
 * A painter in a worker, so that filling the canvas takes no time of the page's thread. Fails when the worker cannot be started.
 * @param onBroken called when the worker fails later on; it paints nothing more
 */
export async function paintBeside(reducedMotion: boolean, onBroken: () => void): Promise<Painter> {
  const painter = new WorkerPainter(spare ?? startWorker());
  spare = null;
  try {
    await painter.start(reducedMotion);
  } catch (error) {
    painter.destroy();
    throw error;
  }
  painter.onBroken = onBroken;
  return painter;
}

class WorkerPainter implements Painter {
  readonly canvas = document.createElement('canvas');
  readonly renderer = 'canvas';
  onBroken = (): void => {};
  private onReady = (): void => {};
  private underWay = 0;
  /** Pictures of the last frame, as the worker has them. */
  private previous: RoomPicture | null = null;
  private current: RoomPicture | null = null;

  constructor(private readonly worker: Worker) {
    worker.addEventListener('message', ({ data }: MessageEvent<StageReply>) => this.hear(data));
    worker.addEventListener('error', () => this.breakDown());
  }

  /** Hands the canvas over; done when the worker is ready to paint. */
  start(reducedMotion: boolean): Promise<void> {
    const canvas = this.canvas.transferControlToOffscreen();
    this.post({ kind: 'start', canvas, reducedMotion }, [canvas]);
    return new Promise((resolve, reject) => {
      this.onReady = resolve;
      this.onBroken = () => reject(new Error('the worker that paints could not be started'));
      setTimeout(this.onBroken, PATIENCE_MS);
    });
  }

  get ready(): boolean { return this.underWay < SHOTS_UNDER_WAY_MAX; }

  paint({ previous, current, ...shot }: Shot): void {
    const same = previous === this.previous && current === this.current;
    this.post({ kind: 'shot', shot, pictures: same ? null : { previous: newsOf(previous, this.current), current: newsOf(current, previous) } });
    this.previous = previous;
    this.current = current;
    this.underWay++;
  }

  destroy(): void { this.worker.terminate(); }

  /** Tells once that nothing more will be painted. */
  private breakDown(): void {
    const tell = this.onBroken;
    this.onBroken = () => {};
    tell();
  }

  private post(message: StageRequest, transfer: Transferable[] = []): void { this.worker.postMessage(message, transfer); }

  private hear(reply: StageReply): void {
    if (reply.kind === 'painted') this.underWay--;
    else if (reply.kind === 'ready') this.onReady();
    else this.breakDown();
  }
}
