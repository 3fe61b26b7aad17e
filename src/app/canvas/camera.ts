import type { Scenario } from '../../core/scenario/schema.ts';
import { frameOf, type Frame, type Framing } from './framing.ts';
import type { Affine } from './pen/affine.ts';

const GLIDE_MS = 450;
const ZOOM_LIMITS = { least: 150, most: 4000 } as const;

interface View {
  /** Middle of the screen, in metres of the room. */
  readonly x: number;
  readonly y: number;
  /** CSS pixels per metre. */
  readonly scale: number;
}

/** Which part of the room is seen; y goes up in the room and down on the screen. Screen points are CSS pixels of the host. */
export class Camera {
  private width = 1;
  private height = 1;
  private view: View = { x: 0, y: 1.16, scale: 1000 };
  private framing: Framing | Frame | null = 'work';
  private scenario: Scenario | null = null;
  private wanted: Framing | Frame | null = null;
  private glide: { from: View; to: View; startMs: number } | null = null;
  /** While something is held the camera does not move by itself. */
  private held = false;
  private readonly reducedMotion: boolean;

  constructor(reducedMotion: boolean) {
    this.reducedMotion = reducedMotion;
  }

  /** CSS pixels per metre. */
  get pxPerM(): number { return this.view.scale; }
  get widthPx(): number { return this.width; }
  get heightPx(): number { return this.height; }

  /** Maps metres of the room to CSS pixels. */
  get toScreen(): Affine {
    const { x, y, scale } = this.view;
    return [scale, 0, 0, -scale, this.width / 2 - x * scale, this.height / 2 + y * scale];
  }

  roomToScreen(x: number, y: number): { x: number; y: number } {
    const [a, , , d, e, f] = this.toScreen;
    return { x: a * x + e, y: d * y + f };
  }

  screenToRoom(x: number, y: number): { x: number; y: number } {
    const [a, , , d, e, f] = this.toScreen;
    return { x: (x - e) / a, y: (y - f) / d };
  }

  /** Tells where things stand; a framing that is shown follows. */
  furnish(scenario: Scenario): void {
    if (scenario === this.scenario) return;
    this.scenario = scenario;
    if (this.framing !== null && !this.held) this.view = this.viewOf(this.framing);
  }

  /** Frames a part of the room; waits while something is held, and glides there unless motion is to be reduced. */
  fit(framing: Framing | Frame): void {
    if (this.held) { this.wanted = framing; return; }
    this.wanted = null;
    this.framing = framing;
    const to = this.viewOf(framing);
    if (this.reducedMotion || this.width <= 1) { this.view = to; this.glide = null; } else this.glide = { from: this.view, to, startMs: performance.now() };
  }

  /** Magnifies by `factor`; the room under the screen point stays there. */
  zoom(factor: number, atX = this.width / 2, atY = this.height / 2): void {
    this.stop();
    const point = this.screenToRoom(atX, atY);
    const scale = Math.min(ZOOM_LIMITS.most, Math.max(ZOOM_LIMITS.least, this.view.scale * factor));
    this.view = { scale, x: point.x - (atX - this.width / 2) / scale, y: point.y + (atY - this.height / 2) / scale };
  }

  /** Moves the picture by pixels. */
  pan(dx: number, dy: number): void {
    this.stop();
    this.view = { ...this.view, x: this.view.x - dx / this.view.scale, y: this.view.y + dy / this.view.scale };
  }

  /** A new size of the host keeps the framing, or the scale and the middle while something is held or after a move by hand. */
  resize(width: number, height: number): void {
    const first = this.width <= 1;
    this.width = Math.max(1, width);
    this.height = Math.max(1, height);
    if (this.framing !== null && (first || !this.held)) { this.view = this.viewOf(this.framing); this.glide = null; }
  }

  /** To be told once a frame whether a hand holds something. Returns whether the view has changed. */
  advance(held: boolean, nowMs: number): boolean {
    this.held = held;
    if (held && this.glide !== null) this.glide = null;
    if (!held && this.wanted !== null) this.fit(this.wanted);
    if (this.glide === null) return false;
    const t = Math.min(1, (nowMs - this.glide.startMs) / GLIDE_MS);
    const eased = t * t * (3 - 2 * t);
    const { from, to } = this.glide;
    const scale = from.scale * (to.scale / from.scale) ** eased;
    this.view = { scale, x: from.x + (to.x - from.x) * eased, y: from.y + (to.y - from.y) * eased };
    if (t === 1) this.glide = null;
    return true;
  }

  private stop(): void {
    this.glide = null;
    this.framing = null;
    this.wanted = null;
  }

  private viewOf(framing: Framing | Frame): View {
    const { left, right, bottom, top } = typeof framing === 'string' ? frameOf(framing, this.scenario) : framing;
    const scale = Math.min(this.width / (right - left), this.height / (top - bottom));
    return { scale, x: (left + right) / 2, y: (bottom + top) / 2 };
  }
}
