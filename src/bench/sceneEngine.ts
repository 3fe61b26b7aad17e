import type { ShapeSpec } from '../core/physics/index.ts';

/** What the bench scene asks of a physics engine, so that two engines can run the same scene and script. */
export interface SceneEngine {
  addStatic(shape: ShapeSpec, x: number, y: number, friction: number): number;
  addBody(body: SceneBody): number;
  addStrand(strand: SceneStrand): number;
  finalize(): void;
  step(): void;
  nodeCount(strand: number): number;
  nodeX(strand: number, index: number): number;
  nodeY(strand: number, index: number): number;
  bodyPose(body: number): { x: number; y: number; c: number; s: number; vx: number; vy: number };
  setBodyForce(body: number, fx: number, fy: number): void;
  /** False if the node cannot be gripped. */
  gripNode(hand: number, strand: number, index: number): boolean;
  releaseNode(hand: number, strand: number, index: number): void;
  gripBody(hand: number, body: number): void;
  releaseBody(hand: number, body: number): void;
}

export interface SceneBody {
  readonly shape: ShapeSpec;
  readonly x: number;
  readonly y: number;
  readonly massKg: number;
  readonly friction: number;
  readonly floats?: boolean;
  readonly lockRotation?: boolean;
}

export interface SceneStrand {
  readonly points: readonly (readonly [number, number])[];
  readonly linkM: number;
  readonly massPerM: number;
  readonly radius: number;
  readonly radiusOnStatic: number;
  readonly stiffnessN: number;
  readonly bendingNm2: number;
  readonly friction: number;
  readonly airDragPerS: number;
  readonly startPinned?: boolean;
  /** Fixes the last node to a point of a body. */
  readonly endBody?: { readonly body: number; readonly x: number; readonly y: number };
}
