import { describe, expect, it } from 'vitest';
import type { RequestId } from '../../../../src/core/commands/command.ts';
import { SIDES } from '../../../../src/core/base/side.ts';
import { HAND_LIMIT_MPS } from '../../../../src/core/room/assistant/assistantBody.ts';
import { Run } from '../../../../src/core/run/run.ts';
import type { Operator } from '../../../support/operator.ts';
import { runOperator, shippedScenario } from '../../../support/runOperator.ts';

/** A busy machine may need long for a room that settles and is then played (ms). */
const PATIENCE_MS = 300_000;
const ROOMS = ['quiet-room', 'high-rails-short-sheath', 'restless-patient-head-down', 'harmless-or-not'] as const;
const ask = (op: Operator, request: RequestId, seconds: number): Operator => op.send({ type: 'ask', request }).wait(seconds);
const said = (op: Operator): string[] => op.run.cues.filter(({ kind }) => kind === 'assistantSpeaks').map(({ words }) => words);

/** Node of the cord that a hand of the assistant holds, or −1. */
function heldNode({ run: { room } }: Operator): number {
  const { world, cord, assistantHands } = room.scene;
  const start = world.strandStart(cord);
  for (let node = start; node < start + world.strandSize(cord); node++) if (SIDES.some((side) => world.holderOf(node) === assistantHands[side])) return node;
  return -1;
}

/** Drops the gel beyond the edge of the bed, where it falls to the floor. */
function dropGel(op: Operator): void {
  op.turn('right', -40).take('right', 'gel').palmTo('right', -0.3, 1.45).palmTo('right', -0.68, 1.4).release('right').wait(1.5);
  expect(op.run.room.touches.offField()[1]).toBe(true);
}

describe('A skilled assistant', () => {
  it.each(ROOMS)('in %s holds the cord, gives slack and lets go without a break, and never jumps', (room) => {
    const { op, result } = runOperator((op) => {
      const { state } = op.run.room.assistant;
      let before = structuredClone(state.limbs);
      let elbows = op.run.room.assistant.look().hands;
      let [fastest, fastestElbow] = [0, 0];
      op.watchLeast(() => {
        const { hands } = op.run.room.assistant.look();
        for (const side of SIDES) {
          fastest = Math.max(fastest, Math.hypot(state.limbs[side].x - before[side].x, state.limbs[side].y - before[side].y) * 120);
          fastestElbow = Math.max(fastestElbow, Math.hypot(hands[side].elbowX - elbows[side].elbowX, hands[side].elbowY - elbows[side].elbowY) * 120);
        }
        before = structuredClone(state.limbs);
        elbows = hands;
        return 0;
      });
      ask(op, 'takeCord', 6);
      const node = heldNode(op);
      expect(node).toBeGreaterThanOrEqual(0);
      const { world } = op.run.room.scene;
      const high = world.y[node]!;
      ask(op, 'giveSlack', 2);
      expect(Math.abs(world.x[node]!)).toBeLessThan(0.71);
      ask(op, 'letGo', 4); // lets it down before the fingers open
      expect(heldNode(op)).toBe(-1);
      expect(world.y[node]!).toBeLessThan(high - 0.05);
      op.wait(3);
      expect(op.run.room.assistant.look().waits).toBe(true);
      expect(fastest).toBeLessThanOrEqual(HAND_LIMIT_MPS + 1e-6);
      expect(fastest).toBeGreaterThan(0.5);
      expect(fastestElbow).toBeLessThan(3 * HAND_LIMIT_MPS);
    }, room);
    expect(said(op)).toEqual([]);
    expect(result.breaks).toEqual([]);
  }, PATIENCE_MS);

  it('carries away what fell, and nothing of it counts as put into the bin', () => {
    const { op, run, result } = runOperator((op) => {
      dropGel(op);
      op.palmTo('right', -0.27, 1.3);
      ask(op, 'takeAway', 9);
    });
    expect(run.room.gone[1]).toBe(true);
    expect(result.breaks).toEqual([]);
    expect(result.handling.dropped).toEqual([]);
    expect(said(op)).toEqual([]);
  });

  it('freezes at “stop” and goes on when asked again', () => {
    runOperator((op) => {
      ask(op, 'takeCord', 1.6);
      ask(op, 'stop', 0.7);
      const { state } = op.run.room.assistant;
      const at = { ...state.limbs.right, torsoX: state.torsoX };
      op.wait(2);
      expect({ ...state.limbs.right, torsoX: state.torsoX }).toEqual(at);
      ask(op, 'takeCord', 5);
      expect(heldNode(op)).toBeGreaterThanOrEqual(0);
    });
  });

  it('says so when there is nothing to do', () => {
    const { op } = runOperator((op) => {
      ask(op, 'letGo', 1);
      ask(op, 'giveSlack', 1);
      ask(op, 'takeAway', 1);
      ask(op, 'takeCord', 5);
      ask(op, 'wipeFace', 1);
    });
    expect(said(op)).toEqual(['“I am not holding the cord.”', '“I am not holding the cord.”', '“I see nothing that I could take away.”', '“I have the cord in my hand. Say “let go” first.”']);
  });

  it('follows the cord while it is moved', () => {
    const moved = shippedScenario('quiet-room', (source) => {
      source['cues'] = [{ atS: 1.5, kind: 'cordPulled', amount: 1 }];
    });
    runOperator((op) => {
      ask(op, 'takeCord', 6);
      expect(heldNode(op)).toBeGreaterThanOrEqual(0);
    }, moved);
  });
});

describe('A run with an assistant at work', () => {
  it.each([1.2, 2.6, 5])('goes on bit for bit from a snapshot after %f s', (seconds) => {
    const { run } = runOperator((op) => void ask(op, 'takeCord', seconds));
    const saved = structuredClone(run.snapshot());
    const goOn = (one: Run): string[] => Array.from({ length: 6 }, (_, k) => {
      for (let n = 0; n < 60; n++) one.step(k === 2 && n === 0 ? [{ type: 'ask', request: 'letGo' }] : []);
      return one.hash();
    });
    const hashes = goOn(run);
    const fresh = new Run(run.scenario);
    fresh.restore(saved);
    expect(goOn(fresh)).toEqual(hashes);
  });
});
