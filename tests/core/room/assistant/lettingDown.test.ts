import { describe, expect, it } from 'vitest';
import { SIDES } from '../../../../src/core/base/side.ts';
import { STEPS_PER_SECOND } from '../../../../src/core/base/time.ts';
import { loweredShare, opens } from '../../../../src/core/room/assistant/cordLetDown.ts';
import { Run } from '../../../../src/core/run/run.ts';
import { Loading } from '../../../support/loading.ts';
import type { Operator } from '../../../support/operator.ts';
import { runOperator, shippedScenario } from '../../../support/runOperator.ts';

const G = 9.81;
/** A busy machine may need long for a room that settles and is then played (ms). */
const PATIENCE_MS = 300_000;
/** Speeds are means over this many steps, 0.1 s: the solver's single steps are noisy. */
const OVER = STEPS_PER_SECOND / 10;
/** How long the cord is watched after it was let go (s). */
const WATCHED_S = 4;
/** Peak speed of an unhurried reach, 15/8 of its mean of 0.38 m/s (Flash and Hogan 1985): nothing of a cord that was let down comes at a glove any faster. */
const CALM_MPS = (15 / 8) * 0.38;

const withSkill = (skill: number): ReturnType<typeof shippedScenario> =>
  shippedScenario('sheath-short', (source) => {
    source['assistant'] = { skill };
  });

const held = ({ run: { room } }: Operator): readonly number[] => {
  const { world, cord, assistantHands } = room.scene;
  const start = world.strandStart(cord);
  return Array.from({ length: world.strandSize(cord) }, (_, k) => start + k).filter((node) => SIDES.some((side) => world.holderOf(node) === assistantHands[side]));
};

interface LetGo {
  /** Fastest part of the cord after it was let go, and how far the part that was held went then (m/s, m). */
  fastest: number;
  went: number;
  /** How far it went down in all (m). */
  down: number;
}

/** The film is drawn, the assistant is told to let go of the cord. */
function letGo(op: Operator): LetGo {
  const { world, cord } = op.run.room.scene;
  const start = world.strandStart(cord);
  const places = (): (readonly [number, number])[] => Array.from({ length: world.strandSize(cord) }, (_, k) => [world.x[start + k]!, world.y[start + k]!]);
  const node = held(op)[0]! - start;
  const from = places()[node]!;
  op.send({ type: 'ask', request: 'letGo' });
  for (let k = 0; k < 8 * STEPS_PER_SECOND && held(op).length > 0; k++) op.wait(1 / STEPS_PER_SECOND);
  expect(held(op)).toEqual([]);
  const opened = places()[node]!;
  let fastest = 0;
  for (let s = 0, before = places(); s < WATCHED_S; s += 0.1) {
    op.wait(OVER / STEPS_PER_SECOND);
    const now = places();
    now.forEach(([x, y], k) => (fastest = Math.max(fastest, Math.hypot(x - before[k]![0], y - before[k]![1]) / (OVER / STEPS_PER_SECOND))));
    before = now;
  }
  const rest = places()[node]!;
  return { fastest, went: Math.hypot(rest[0] - opened[0], rest[1] - opened[1]), down: from[1] - rest[1] };
}

const drawn = (op: Operator): Loading => new Loading(op).toProbe().letGo().drawUp().tail();

describe('The rest of the cord, once the film is drawn', () => {
  it('is let down by a skilled assistant, and nothing of it moves faster than a calm hand once the fingers open', () => {
    let seen: LetGo | null = null;
    const { result } = runOperator((op) => {
      drawn(op);
      seen = letGo(op);
    }, withSkill(0.95));
    expect(seen!.down).toBeGreaterThan(0.8);
    expect(seen!.fastest).toBeLessThan(CALM_MPS);
    expect(result.breaks).toEqual([]);
  }, PATIENCE_MS);

  // Torricelli: what falls by h from rest has √(2 g h).
  it('is dropped by a clumsy one, and falls nearly as fast as anything that is let fall so far', () => {
    let seen: LetGo | null = null;
    runOperator((op) => {
      drawn(op);
      seen = letGo(op);
    }, withSkill(0.2));
    const fall = Math.sqrt(2 * G * seen!.down);
    expect(seen!.down).toBeGreaterThan(0.8);
    expect(seen!.fastest / fall).toBeGreaterThan(0.8);
    expect(seen!.fastest / fall).toBeLessThan(1.1);
  }, PATIENCE_MS);

  it('goes out of the field first where it is held over it, and is then where it stays', () => {
    let seen: LetGo | null = null;
    const { result } = runOperator((op) => {
      new Loading(op).toProbe().letGo();
      seen = letGo(op);
    }, withSkill(0.95));
    expect(seen!.went).toBeLessThan(0.04);
    expect(result.breaks.filter(({ rule }) => rule.startsWith('bare-hand') || rule === 'reach-over')).toEqual([]);
  }, PATIENCE_MS);

  it.each(['quiet-room', 'high-rails-short-sheath'] as const)('is let down as calmly where the assistant only held it outside the bed, in %s', (room) => {
    let seen: LetGo | null = null;
    const { result } = runOperator((op) => {
      op.send({ type: 'ask', request: 'takeCord' }).wait(6);
      seen = letGo(op);
    }, room);
    expect(seen!.down).toBeGreaterThan(0.1);
    expect(seen!.fastest).toBeLessThan(CALM_MPS);
    expect(result.breaks).toEqual([]);
  }, PATIENCE_MS);

  it('stays where it is at “stop”, goes on from there when asked again, and without a jump', () => {
    runOperator((op) => {
      drawn(op).ask('letGo', 2).ask('stop', 0.7);
      const { limbs } = op.run.room.assistant.state;
      const at = { ...limbs.right };
      op.wait(3);
      expect(limbs.right).toEqual(at);
      expect(held(op)).toHaveLength(1);
      let fastest = 0;
      let before = { ...limbs.right };
      op.watchLeast(() => {
        if (held(op).length > 0) fastest = Math.max(fastest, Math.hypot(limbs.right.x - before.x, limbs.right.y - before.y) * STEPS_PER_SECOND);
        before = { ...limbs.right };
        return 0;
      });
      op.send({ type: 'ask', request: 'letGo' }).wait(4);
      expect(held(op)).toEqual([]);
      expect(fastest).toBeLessThan(1);
    }, withSkill(0.95));
  }, PATIENCE_MS);

  it('is taken up again on its way down when the tail is to be pulled after all', () => {
    runOperator((op) => {
      const loading = new Loading(op).toProbe().letGo().drawUp().ask('letGo', 2.5);
      expect(op.run.room.assistant.look().doing).toBe('lettingCordDown');
      loading.tail();
      expect(loading.done('covered')).toBe(true);
    }, withSkill(0.95));
  }, PATIENCE_MS);

  it.each([0.8, 2.4])('goes on bit for bit from a snapshot %f s after “let go”', (seconds) => {
    const { run } = runOperator((op) => void new Loading(op).toProbe().letGo().ask('letGo', seconds), withSkill(0.95));
    const saved = structuredClone(run.snapshot());
    const go = (one: Run): string => {
      for (let k = 0; k < 4 * STEPS_PER_SECOND; k++) one.step([]);
      return one.hash();
    };
    const fresh = new Run(run.scenario);
    fresh.restore(saved);
    expect(go(fresh)).toBe(go(run));
  }, PATIENCE_MS);
});

describe('A hand that lets the cord down', () => {
  const path = { startX: 0, startY: 0, startStep: 0, steps: 100, bendM: 0 };

  it('opens the later the more skilled it is', () => {
    expect([0, 0.25, 0.5, 0.75, 1].map(loweredShare)).toEqual([0, 0, 0.5, 1, 1]);
    expect([49, 50].map((step) => opens(path, 0.5, step))).toEqual([false, true]);
    // A careful one waits besides until the cord hangs still.
    expect([100, 200].map((step) => opens(path, 0.9, step))).toEqual([false, true]);
  });
});
