import type { StateHash } from '../base/hash.ts';
import { Rng } from '../base/rng.ts';
import { SIDES } from '../base/side.ts';
import { secondsToSteps } from '../base/time.ts';
import type { Command } from '../commands/command.ts';
import type { Break } from '../ledger/break.ts';
import { ASSISTANT } from '../room/assistant/assistantBody.ts';
import { canSee } from '../room/assistant/lineOfSight.ts';
import type { Room } from '../room/room.ts';
import { questionOf, reasonOf } from './challengeWords.ts';
import type { ChallengeReport } from './result.ts';

/** Visual reaction (about 0.25 s, a general page on hand speed and reaction time) and then making up one's mind to speak (s). */
const REACTION_S = 0.25;
const DECIDE_S: readonly [number, number] = [0.3, 1.2];
/** Unanswered for so long, it is said again with its reason; after as long again the assistant leaves it (two-challenge rule; times common practice). */
const AGAIN_S = 6;
/** Hands are to come to rest within this time after the first words, and rest below this speed for so long (common practice; s, m/s). */
const STILL_WITHIN_S = 2;
const STILL_MPS = 0.04;
const STILL_FOR_S = 0.25;

interface Seen {
  readonly number: number;
  readonly dueStep: number;
}

interface Saved {
  readonly rng: number;
  readonly seen: readonly Seen[];
  readonly challenges: readonly ChallengeReport[];
  readonly stillSteps: number;
}

/**
 * The assistant's eyes and mouth: sees breaks in its line of sight as likely as it is attentive, asks about them, asks again with the
 * reason when nobody answers, and keeps how it was answered. Says nothing unless coaching is spoken.
 */
export class SpeakingUp {
  private readonly rng: Rng;
  private seen: Seen[] = [];
  private reports: ChallengeReport[] = [];
  /** Steps for which both hands have been at rest. */
  private stillSteps = 0;

  constructor(
    private readonly room: Room,
    seed: number,
  ) {
    this.rng = new Rng(seed ^ 0x2545f491);
  }

  get challenges(): readonly ChallengeReport[] {
    return this.reports;
  }

  /** One step, after the ledger has judged it; the breaks from place `known` on are new. Returns what the assistant says now. */
  step(step: number, breaks: readonly Break[], known: number, commands: readonly Command[]): { kind: string; words: string }[] {
    const { scenario } = this.room.scene;
    if (scenario.coaching !== 'spoken') return [];
    for (const broken of breaks.slice(known)) this.look(step, broken);
    for (const command of commands) {
      if (command.type === 'answer') this.answer(command.how, step);
      if (command.type === 'notice') this.answer('stop', step);
    }
    this.watchHands(step);
    return this.speak(step, breaks).map((words) => ({ kind: 'assistantSpeaks', words }));
  }

  hashInto(hash: StateHash): void {
    hash.addInt(this.reports.length).addInt(this.seen.length).addInt(this.stillSteps);
  }

  save(): unknown {
    const saved: Saved = { rng: this.rng.save(), seen: [...this.seen], challenges: [...this.reports], stillSteps: this.stillSteps };
    return saved;
  }

  restore(saved: unknown): void {
    const s = saved as Saved;
    this.rng.restore(s.rng);
    this.seen = [...s.seen];
    this.reports = [...s.challenges];
    this.stillSteps = s.stillSteps;
  }

  private look(step: number, broken: Break): void {
    const { assistant, torsoX, happenings, scene } = this.room;
    const { state } = assistant;
    const looking = { eyeX: state.torsoX, eyeY: ASSISTANT.eyeM - state.stoop, operatorX: torsoX, humpX: happenings.humpX, humpY: happenings.humpY };
    const attends = this.rng.next() < scene.scenario.assistant.attentive;
    const delayS = REACTION_S + this.rng.between(...DECIDE_S);
    if (attends && canSee(scene, looking, broken.x, broken.y)) this.seen.push({ number: broken.number, dueStep: step + secondsToSteps(delayS) });
  }

  /** Answers what stands open. */
  private answer(how: 'stop' | 'fine', step: number): void {
    this.reports = this.reports.map((one) => (one.answered === null ? { ...one, answered: { how, step } } : one));
  }

  private watchHands(step: number): void {
    const { world, hands } = this.room.scene;
    const rest = SIDES.every((side) => {
      const vx = world.bodyVx[hands[side]]!;
      const vy = world.bodyVy[hands[side]]!;
      return vx * vx + vy * vy < STILL_MPS * STILL_MPS;
    });
    this.stillSteps = rest ? this.stillSteps + 1 : 0;
    this.reports = this.reports.map((one) => {
      if (one.stillInTime !== null) return one;
      if (this.stillSteps >= secondsToSteps(STILL_FOR_S) && step > one.step) return { ...one, stillInTime: true };
      return step >= one.step + secondsToSteps(STILL_WITHIN_S) ? { ...one, stillInTime: false } : one;
    });
  }

  private speak(step: number, breaks: readonly Break[]): string[] {
    const wordsOf = (surface: string): string => this.room.surfaces.words(surface);
    const again = secondsToSteps(AGAIN_S);
    const open = this.reports.find(({ answered, step: first }) => answered === null && step < first + 2 * again);
    if (open) {
      if (open.said.length > 1 || step < open.step + again) return [];
      const words = reasonOf(breaks[open.break - 1]!, wordsOf);
      this.reports = this.reports.map((one) => (one === open ? { ...one, said: [...one.said, { step, words }] } : one));
      return [words];
    }
    const next = this.seen[0];
    if (!next || next.dueStep > step) return [];
    this.seen = this.seen.slice(1);
    const broken = breaks[next.number - 1]!;
    // Who has said it, or is done with it, need not be told.
    if (broken.noticedStep !== null || broken.remediedStep !== null) return [];
    const words = questionOf(broken, wordsOf);
    this.reports = [...this.reports, { step, break: next.number, said: [{ step, words }], answered: null, stillInTime: null }];
    return [words];
  }
}
