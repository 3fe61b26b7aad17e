import { World } from '../../../src/core/physics/index.ts';
import { box, capsule } from './geometry.ts';

const GRAVITY = 9.81;
const HALF_WIDTH = 0.05;
const HALF_HEIGHT = 0.015;

export type Slider = 'box' | 'tilted box' | 'capsule';

export interface SlideOptions {
  readonly angle: number;
  readonly friction: number;
  readonly slider?: Slider;
  readonly massKg?: number;
  readonly settleSeconds?: number;
  readonly seconds: number;
  readonly speed?: number;
  readonly sleep?: boolean;
}

/**
 * A slider on a plane inclined by `angle` (rad). The plane is drawn level and gravity turned, or (tilted box) really inclined.
 * Returns how far it moved (m) and its speed at the end (m/s).
 */
export function slide(options: SlideOptions): { way: number; speed: number } {
  const { angle, friction, slider = 'box', massKg = 0.5 } = options;
  const tilted = slider === 'tilted box';
  const c = tilted ? Math.cos(angle) : 1;
  const s = tilted ? -Math.sin(angle) : 0;
  const world = new World({ sleep: options.sleep ?? false });
  world.addBody({ kind: 'static', x: 0.1 * s, y: -0.1 * c, c, s, shapes: [box(5, 0.1)], friction });
  const shape = slider === 'capsule' ? capsule([-HALF_WIDTH, 0], [HALF_WIDTH, 0], HALF_HEIGHT) : box(HALF_WIDTH, HALF_HEIGHT);
  const block = world.addBody({
    kind: 'dynamic', x: -3 * c - HALF_HEIGHT * s, y: -3 * s + HALF_HEIGHT * c, c, s, massKg, shapes: [shape], friction, gravityScale: tilted ? 1 : 0,
  });
  world.finalize();
  if (!tilted) world.setBodyForce(block, massKg * GRAVITY * Math.sin(angle), -massKg * GRAVITY * Math.cos(angle));
  for (let k = 0; k < (options.settleSeconds ?? 0.25) * 120; k++) world.step();
  if (options.speed !== undefined) world.setBodyVelocity(block, options.speed, 0);
  const x = world.bodyX[block]!;
  const y = world.bodyY[block]!;
  for (let k = 0; k < options.seconds * 120; k++) world.step();
  return { way: Math.hypot(world.bodyX[block]! - x, world.bodyY[block]! - y), speed: Math.hypot(world.bodyVx[block]!, world.bodyVy[block]!) };
}
