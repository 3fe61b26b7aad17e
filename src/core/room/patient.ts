import { PI, sin } from '../base/portableMath.ts';
import type { Rng } from '../base/rng.ts';
import { secondsToSteps, STEPS_PER_SECOND } from '../base/time.ts';
import type { CueKind } from '../scenario/schema.ts';
import type { Scene } from './scene.ts';

/** Usual sizes of what happens (metres, seconds), common practice; a scenario scales them with `amount`. */
const TURN_M = 0.03;
const TURN_S = 1.4;
const COUGH_M = 0.012;
const COUGH_S = 1.8;
const PULL_M = 0.12;
const PULL_S = 3;
/** An itch passes by itself after this time (s). */
const ITCH_S = 60;

const WORDS: Readonly<Record<CueKind, string>> = {
  patientTurns: 'The patient turns.',
  cough: 'The patient coughs.',
  cordPulled: 'Someone pulls the cord at the machine.',
  itch: 'Your nose itches.',
};

interface Motion {
  readonly kind: CueKind;
  readonly startStep: number;
  readonly amount: number;
  readonly way: number;
}

/** What happens to the operator: cues by step, the moving patient, the pulled cord, the itch. Plain data in `save`. */
export class Happenings {
  private running: Motion[] = [];
  private restX = 0;
  private next = 0;
  itchUntil = -1;
  humpX = 0;
  humpY: number;

  constructor(
    private readonly scene: Scene,
    private readonly rng: Rng,
  ) {
    this.humpY = scene.layout.mattress.top;
  }

  /** Starts what is due at this step and moves what is under way. Returns the cues that begin, in words. */
  step(step: number): { kind: CueKind; words: string }[] {
    const begun: { kind: CueKind; words: string }[] = [];
    const cues = this.scene.scenario.cues;
    const order = [...cues.keys()].sort((a, b) => cues[a]!.atS - cues[b]!.atS || a - b);
    while (this.next < order.length && secondsToSteps(cues[order[this.next]!]!.atS) <= step) {
      const cue = cues[order[this.next]!]!;
      this.next++;
      const way = this.rng.next() < 0.5 ? -1 : 1;
      if (cue.kind === 'itch') this.itchUntil = step + ITCH_S * STEPS_PER_SECOND;
      else this.running.push({ kind: cue.kind, startStep: step, amount: cue.amount, way });
      begun.push({ kind: cue.kind, words: WORDS[cue.kind] });
    }
    if (this.running.length > 0 || this.humpY !== this.scene.layout.mattress.top) this.move(step);
    return begun;
  }

  /** An itch is felt now. */
  itches(step: number): boolean {
    return step < this.itchUntil;
  }

  /** The patient is set straight again and lies still. */
  lieStill(): void {
    this.running = [];
    this.restX = 0;
    this.humpX = 0;
    this.humpY = this.scene.layout.mattress.top;
    this.scene.world.teleportBody(this.scene.hump, 0, this.humpY, 1, 0);
  }

  save(): unknown {
    return { running: this.running.map((m) => ({ ...m })), restX: this.restX, next: this.next, itchUntil: this.itchUntil, humpX: this.humpX, humpY: this.humpY };
  }

  restore(saved: unknown): void {
    const s = saved as { running: Motion[]; restX: number; next: number; itchUntil: number; humpX: number; humpY: number };
    this.running = s.running.map((m) => ({ ...m }));
    this.restX = s.restX;
    this.next = s.next;
    this.itchUntil = s.itchUntil;
    this.humpX = s.humpX;
    this.humpY = s.humpY;
  }

  private move(step: number): void {
    const { world, layout } = this.scene;
    let x = this.restX;
    let y = layout.mattress.top;
    let pull = 0;
    const still: Motion[] = [];
    for (const motion of this.running) {
      const seconds = (step - motion.startStep) / STEPS_PER_SECOND;
      let over = false;
      if (motion.kind === 'patientTurns') {
        over = seconds >= TURN_S;
        // The patient turns back to the middle if already turned that way, so that the neck stays under the opening.
        const goal = this.restX * motion.way > 0 ? -this.restX : motion.way * TURN_M * motion.amount;
        x += goal * minimumJerk(seconds / TURN_S);
        if (over) this.restX += goal;
      } else if (motion.kind === 'cough') {
        over = seconds >= COUGH_S;
        if (!over) {
          const wave = sin((3 * PI * seconds) / COUGH_S);
          y += COUGH_M * motion.amount * wave * wave;
        }
      } else {
        over = seconds >= PULL_S;
        const t = seconds / PULL_S;
        if (!over) pull = Math.max(pull, PULL_M * motion.amount * (t < 0.3 ? minimumJerk(t / 0.3) : t < 0.6 ? 1 : 1 - minimumJerk((t - 0.6) / 0.4)));
      }
      if (!over) still.push(motion);
    }
    this.running = still;
    if (x !== this.humpX || y !== this.humpY) {
      world.driveBody(this.scene.hump, x, y, 1, 0);
      this.humpX = x;
      this.humpY = y;
    }
    const { outletXM, outletYM } = this.scene.scenario.room.machine;
    const end = world.strandStart(this.scene.cord) + world.strandSize(this.scene.cord) - 1;
    const outward = outletXM >= 0 ? 1 : -1;
    world.drivePin(end, outletXM + outward * pull, outletYM - 0.3 * pull);
  }
}

/** Share of the way after share t of the time, minimum-jerk profile (Flash and Hogan 1985: 10 t³ − 15 t⁴ + 6 t⁵). */
export function minimumJerk(t: number): number {
  if (t <= 0) return 0;
  if (t >= 1) return 1;
  return t * t * t * (10 + t * (6 * t - 15));
}
