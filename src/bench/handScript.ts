import { Rng } from '../core/base/rng.ts';
import { segmentsCross } from '../core/physics/segments.ts';
import type { BedScene } from './bedScene.ts';

const DT = 1 / 120;
const HAND_MASS = 0.4;
const SPRING_RATE = 40; // rad/s of the critically damped pull
const LEASH = 0.12; // m that the wanted place may run ahead of the hand

/** Limits of the scripted hands. */
export interface HandLimits {
  readonly speed: number;
  readonly forceN: number;
}

export const WORKING: HandLimits = { speed: 1, forceN: 20 };
export const ABUSED: HandLimits = { speed: 2, forceN: 40 };
export const CALM: HandLimits = { speed: 0.3, forceN: 20 };
/** The hands stay where they are. */
export const STILL: HandLimits = { speed: 0, forceN: 20 };

const PROBE = 0;
const CORD = 1;
const DRAPE = 2;

interface Hand {
  readonly body: number;
  x: number;
  y: number;
  goalX: number;
  goalY: number;
  mode: 'idle' | 'sweep' | 'approach' | 'carry';
  timer: number;
  object: number;
  node: number;
  holds: boolean;
  legs: number;
}

/** Seeded hands that approach, grip, carry along three points and let go, or sweep through the scene. */
export class HandScript {
  grips = 0;
  readonly hands: readonly Hand[];
  private readonly rng: Rng;

  constructor(private readonly scene: BedScene, private readonly limits: HandLimits, seed: number) {
    this.rng = new Rng(seed);
    this.hands = scene.hands.map((body, k): Hand => {
      const { x, y } = scene.engine.bodyPose(body);
      return { body, x, y, goalX: x, goalY: y, mode: 'idle', timer: k === 0 ? 0.7 : 1.7, object: 0, node: 0, holds: false, legs: 0 };
    });
  }

  /** Decides and pulls; call once before each step of the engine. */
  drive(): void {
    for (const hand of this.hands) {
      hand.timer -= DT;
      if (hand.timer <= 0 && this.limits.speed > 0) this.decide(hand);
      if (hand.mode === 'approach') [hand.goalX, hand.goalY] = [this.objectX(hand), this.objectY(hand) + 0.03];
      this.pull(hand);
    }
  }

  private decide(hand: Hand): void {
    if (hand.mode === 'idle' || hand.mode === 'sweep') this.choose(hand);
    else if (hand.mode === 'approach') this.tryGrip(hand);
    else {
      hand.legs++;
      this.wander(hand, 0.5);
      if (hand.legs === 3) this.release(hand);
    }
  }

  private choose(hand: Hand): void {
    const { rng, scene } = this;
    if (rng.next() < 0.25) {
      hand.mode = 'sweep';
      hand.timer = 0.6;
      hand.goalX = rng.between(-0.8, 0.9);
      hand.goalY = rng.between(-0.3, 0.6);
      return;
    }
    hand.mode = 'approach';
    hand.timer = 1.8 / this.limits.speed;
    hand.object = Math.floor(rng.next() * 3);
    const other = this.hands.find((one) => one !== hand)!;
    if (hand.object === PROBE && other.holds && other.object === PROBE) hand.object = CORD;
    hand.node = 2 + Math.floor(rng.next() * ((hand.object === CORD ? scene.cordNodes : scene.drapeNodes) - 4));
  }

  private wander(hand: Hand, seconds: number): void {
    hand.goalX = this.rng.between(-0.8, 0.9);
    hand.goalY = this.rng.between(0.05, 0.7);
    hand.timer = seconds;
  }

  private tryGrip(hand: Hand): void {
    const { engine, probe } = this.scene;
    const pose = engine.bodyPose(hand.body);
    const dx = this.objectX(hand) - pose.x;
    const dy = this.objectY(hand) - pose.y;
    const near = Math.sqrt(dx * dx + dy * dy) < (hand.object === PROBE ? 0.11 : 0.07);
    const other = this.hands.find((one) => one !== hand)!;
    const taken = other.holds && other.object === hand.object && (hand.object === PROBE || Math.abs(other.node - hand.node) < 6);
    hand.mode = 'carry';
    hand.legs = 0;
    hand.holds = false;
    this.wander(hand, 1.6);
    if (!near || taken || this.isBlocked(hand, pose.x, pose.y)) return;
    if (hand.object === PROBE) {
      engine.gripBody(hand.body, probe);
      hand.holds = true;
    } else hand.holds = engine.gripNode(hand.body, this.strandOf(hand), hand.node);
    if (hand.holds) this.grips++;
  }

  /** A grip needs a clear line from the palm: nothing is gripped through a strand. */
  private isBlocked(hand: Hand, x: number, y: number): boolean {
    const { engine, drape, cord } = this.scene;
    const tx = this.objectX(hand);
    const ty = this.objectY(hand);
    for (const strand of [drape, cord]) {
      const last = engine.nodeCount(strand) - 1;
      for (let i = 0; i < last; i++) {
        const own = strand === this.strandOf(hand) && (hand.object === PROBE ? i > last - 4 : Math.abs(i - hand.node) < 3);
        if (own) continue;
        if (segmentsCross(x, y, tx, ty, engine.nodeX(strand, i), engine.nodeY(strand, i), engine.nodeX(strand, i + 1), engine.nodeY(strand, i + 1))) return true;
      }
    }
    return false;
  }

  private release(hand: Hand): void {
    const { engine, probe } = this.scene;
    if (hand.holds && hand.object === PROBE) engine.releaseBody(hand.body, probe);
    else if (hand.holds) engine.releaseNode(hand.body, this.strandOf(hand), hand.node);
    hand.holds = false;
    hand.mode = 'idle';
    hand.timer = 0.3;
  }

  private strandOf(hand: Hand): number {
    return hand.object === DRAPE ? this.scene.drape : this.scene.cord;
  }

  private objectX(hand: Hand): number {
    const { engine, probe } = this.scene;
    return hand.object === PROBE ? engine.bodyPose(probe).x : engine.nodeX(this.strandOf(hand), hand.node);
  }

  private objectY(hand: Hand): number {
    const { engine, probe } = this.scene;
    return hand.object === PROBE ? engine.bodyPose(probe).y : engine.nodeY(this.strandOf(hand), hand.node);
  }

  /** Critically damped spring from the hand to its wanted place, with a force cap. */
  private pull(hand: Hand): void {
    const { engine } = this.scene;
    const body = engine.bodyPose(hand.body);
    const dx = hand.goalX - hand.x;
    const dy = hand.goalY - hand.y;
    const d = Math.sqrt(dx * dx + dy * dy);
    const most = this.limits.speed * DT;
    const share = hand.mode === 'idle' ? 0 : d > most ? most / d : 1;
    hand.x += dx * share;
    hand.y += dy * share;
    const wantedVx = (dx * share) / DT;
    const wantedVy = (dy * share) / DT;
    const leadX = hand.x - body.x;
    const leadY = hand.y - body.y;
    const lead = Math.sqrt(leadX * leadX + leadY * leadY);
    if (lead > LEASH) {
      hand.x = body.x + (leadX * LEASH) / lead;
      hand.y = body.y + (leadY * LEASH) / lead;
    }
    let fx = HAND_MASS * SPRING_RATE * (SPRING_RATE * (hand.x - body.x) + 1.6 * (wantedVx - body.vx));
    let fy = HAND_MASS * SPRING_RATE * (SPRING_RATE * (hand.y - body.y) + 1.6 * (wantedVy - body.vy));
    const force = Math.sqrt(fx * fx + fy * fy);
    if (force > this.limits.forceN) {
      fx *= this.limits.forceN / force;
      fy *= this.limits.forceN / force;
    }
    engine.setBodyForce(hand.body, fx, fy);
  }
}
