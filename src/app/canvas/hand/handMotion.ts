import type { HandPose } from '../../../core/room/picture.ts';
import { blendShapes } from './blendShapes.ts';
import { HAND_SHAPES, type HandShape } from './poses.ts';

const CHANGE_MS = 160;
const OUTLINE_MS = 120;

/** What one hand looks like over time: fingers that move from pose to pose, an outline that comes and goes. */
export class HandMotion {
  private pose: HandPose = 'open';
  private from: HandShape = HAND_SHAPES.open;
  private startMs = -Infinity;
  private outline = 0;
  private lastMs = 0;

  constructor(private readonly reducedMotion: boolean) {}

  shape(pose: HandPose, nowMs: number): HandShape {
    if (pose !== this.pose) {
      this.from = this.between(nowMs);
      this.pose = pose;
      this.startMs = nowMs;
    }
    return this.between(nowMs);
  }

  /** How much of the active hand's outline is seen, 0 to 1. */
  active(isActive: boolean, nowMs: number): number {
    const step = this.reducedMotion ? 1 : Math.max(0, nowMs - this.lastMs) / OUTLINE_MS;
    this.lastMs = nowMs;
    this.outline = isActive ? Math.min(1, this.outline + step) : Math.max(0, this.outline - step);
    return this.outline;
  }

  /** Names the shape that is seen now. */
  shapeKey(nowMs: number): string {
    const t = this.progress(nowMs);
    return t >= 1 ? this.pose : `${this.startMs} ${this.pose} ${t.toFixed(2)}`;
  }

  private progress(nowMs: number): number {
    return this.reducedMotion ? 1 : Math.min(1, (nowMs - this.startMs) / CHANGE_MS);
  }

  private between(nowMs: number): HandShape {
    const t = this.progress(nowMs);
    return blendShapes(this.from, HAND_SHAPES[this.pose], t * t * (3 - 2 * t));
  }
}
