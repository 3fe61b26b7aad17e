import { describe, expect, it } from 'vitest';
import { SIDES } from '../../../src/core/base/side.ts';
import { STEPS_PER_SECOND } from '../../../src/core/base/time.ts';
import type { RequestId } from '../../../src/core/commands/command.ts';
import { CREEP_MPS } from '../../../src/core/procedure/field/limits.ts';
import { levelAt } from '../../../src/core/room/level.ts';
import { Room } from '../../../src/core/room/room.ts';
import { Run } from '../../../src/core/run/run.ts';
import type { Scenario } from '../../../src/core/scenario/schema.ts';
import type { Operator } from '../../support/operator.ts';
import { runOperator, shippedScenario } from '../../support/runOperator.ts';

/** A busy machine may need long for a room that settles and is then played (ms). */
const PATIENCE_MS = 300_000;
/** From the request until the assistant is back at rest: comes, reaches, 5 cm at 2 cm/s, goes back (s). */
const ALL_OF_IT_S = 10;
const ask = (op: Operator, request: RequestId, seconds = ALL_OF_IT_S): Operator => op.send({ type: 'ask', request }).wait(seconds);
const said = (op: Operator): string[] => op.run.cues.filter(({ kind }) => kind === 'assistantSpeaks').map(({ words }) => words);
const handsAside = (op: Operator): Operator => op.palmsTo([['right', -0.27, 1.45], ['left', 0.27, 1.45]]);
const upM = (op: Operator): number => op.run.room.scene.layout.bedUpM;
const adjustable = (scenario: Scenario): Scenario => ({ ...scenario, room: { ...scenario.room, bed: { ...scenario.room.bed, adjustable: true } } });

/** Nodes of both sheets as they lie on the bed, [x, height above where the mattress's top is] in metres. */
function sheets({ run: { room } }: Operator): [number, number][] {
  const { world, drapes, layout } = room.scene;
  return SIDES.flatMap((side) =>
    Array.from({ length: world.strandSize(drapes[side]) }, (_, k): [number, number] => {
      const node = world.strandStart(drapes[side]) + k;
      return [world.x[node]!, world.y[node]! - layout.mattress.top];
    }),
  );
}

describe('The bed goes up and down on request', () => {
  it('with all that lies on it, and without a break of its own', () => {
    const { op, run, result } = runOperator((op) => {
      handsAside(op);
      const { room } = op.run;
      const { layout } = room.scene;
      const skin = room.site().y;
      const lay = sheets(op);
      const off = room.touches.offField();
      const things = room.scene.things.map(({ id }) => op.thing(id));
      let inPlane = false;
      op.watchLeast(() => ((inPlane ||= SIDES.some((side) => room.assistant.look().hands[side].inPlane)), 0));
      const looksAsLaid = (): void => {
        // A sheet bends where it must, but no edge and no margin of it moves by more than 5 mm.
        sheets(op).forEach(([x, y], k) => expect(Math.hypot(x - lay[k]![0], y - lay[k]![1])).toBeLessThan(0.005));
        things.forEach(({ x, y }, k) => {
          const now = op.thing(room.scene.things[k]!.id);
          const carried = Math.abs(x) < layout.crest.left.x ? layout.bedUpM : 0;
          expect(Math.abs(now.x - x), room.scene.things[k]!.id).toBeLessThan(0.02);
          expect(Math.abs(now.y - y - carried), room.scene.things[k]!.id).toBeLessThan(0.005);
        });
        expect(room.touches.offField()).toEqual(off);
        expect(room.site().y - skin).toBeCloseTo(layout.bedUpM, 9);
      };
      ask(op, 'bedUp');
      expect(upM(op)).toBeCloseTo(0.05, 9);
      looksAsLaid();
      ask(op, 'bedDown');
      ask(op, 'bedDown');
      expect(upM(op)).toBeCloseTo(-0.05, 9);
      looksAsLaid();
      expect(inPlane).toBe(false);
    }, 'sheath-short');
    expect(result.breaks).toEqual([]);
    expect(said(op)).toEqual([]);
    // No drift: the edges of the opening lie on the very skin that they were glued to.
    expect(run.room.drift.farthest.left).toBeLessThan(1e-6);
    expect(run.room.drift.farthest.right).toBeLessThan(1e-6);
  }, PATIENCE_MS);

  it('at 2 cm/s, only while a hand is on its control', () => {
    runOperator((op) => {
      handsAside(op);
      let before = upM(op);
      let doing = '';
      let moved = 0;
      op.watchLeast(() => {
        const way = upM(op) - before;
        const wasDoing = doing;
        before = upM(op);
        ({ doing } = op.run.room.assistant.look());
        if (way === 0) return 0;
        moved++;
        expect(wasDoing).toBe('movingBed');
        expect(way).toBeLessThanOrEqual(0.02 / STEPS_PER_SECOND + 1e-12);
        return 0;
      });
      ask(op, 'bedUp');
      // 0.05 m at 0.02 m/s.
      expect(moved / STEPS_PER_SECOND).toBeCloseTo(2.5, 1);
      expect(op.run.room.assistant.look().waits).toBe(true);
    }, 'sheath-short');
  }, PATIENCE_MS);

  it('farther with each further word while the hand is there, from 0.7 to 1.1 m and not beyond', () => {
    const { op } = runOperator((op) => {
      handsAside(op);
      ask(op, 'bedUp', 4);
      for (let k = 0; k < 3; k++) ask(op, 'bedUp', 0.7);
      op.wait(ALL_OF_IT_S);
      const { mattress } = op.run.room.scene.layout;
      expect(op.run.room.scene.layout.mattress.top).toBeCloseTo(1.1, 9);
      expect(mattress.top).toBeGreaterThan(1);
      ask(op, 'bedUp', 3);
      expect(said(op)).toEqual(['“The bed goes no farther.”']);
      ask(op, 'bedDown', 4);
      for (let k = 0; k < 8; k++) ask(op, 'bedDown', 0.7);
      op.wait(20);
      expect(op.run.room.scene.layout.mattress.top).toBeCloseTo(0.7, 9);
    }, 'sheath-short');
    expect(op.run.result().breaks).toEqual([]);
  }, PATIENCE_MS);

  it('stops at “stop”, and does not go on by itself', () => {
    runOperator((op) => {
      handsAside(op);
      ask(op, 'bedUp', 4);
      ask(op, 'stop', 1);
      const stopped = upM(op);
      expect(stopped).toBeGreaterThan(0.002);
      expect(stopped).toBeLessThan(0.045);
      op.wait(2);
      expect(upM(op)).toBe(stopped);
      ask(op, 'wipeFace', 6);
      expect(upM(op)).toBe(stopped);
      ask(op, 'bedDown');
      expect(upM(op)).toBeCloseTo(stopped - 0.05, 9);
    }, 'sheath-short');
  }, PATIENCE_MS);

  it('where the scenario lets it, and nowhere else', () => {
    const { op } = runOperator((op) => void ask(op, 'bedUp', 4));
    expect(upM(op)).toBe(0);
    expect(said(op)).toEqual(['“The bed goes no farther.”']);
  }, PATIENCE_MS);
});

describe('A bed that is raised', () => {
  it('brings the field up to a hand 3 cm over it', () => {
    runOperator((op) => {
      handsAside(op);
      const gap = (): number => op.near.gap('glove.left', 'drape.left');
      op.approach('left', 0, -1, gap, 0.03);
      expect(gap()).toBeGreaterThan(0.02);
      const high = op.near.overLevel('left');
      ask(op, 'bedUp', 3);
      expect(gap()).toBeGreaterThan(0.02);
      op.wait(ALL_OF_IT_S - 3);
      expect(gap()).toBeLessThan(0.001);
      expect(op.near.overLevel('left')).toBeLessThan(high - 0.02);
    }, 'sheath-short');
  }, PATIENCE_MS);

  it('brings it too near to an upper arm that was high enough', () => {
    // A short operator, whose arms come low over the field.
    const short = shippedScenario('sheath-short', (source) => void (source['operator'] = { shoulderM: 1.26, faceM: 1.48, waistM: 1 }));
    const { result } = runOperator((op) => {
      op.palmTo('left', 0.08, 1.3).approach('left', -1, 0, () => op.near.upperArmOver('left') - 0.08, 0.045);
      op.wait(1);
      expect(op.run.result().breaks).toEqual([]);
      ask(op, 'bedUp');
    }, short);
    expect(result.breaks.map(({ rule }) => rule)).toEqual(['reach-over']);
  }, PATIENCE_MS);

  it('raises the level that hands keep above over it, and none beside it', () => {
    runOperator((op) => {
      handsAside(op);
      const { scene } = op.run.room;
      const over = [-0.3, 0, 0.3];
      const beside = [scene.layout.crest.left.x + 0.05, scene.layout.kitTable.left + 0.1];
      const levels = (xs: readonly number[]): number[] => xs.map((x) => levelAt(scene, 0, x));
      const [overBefore, besideBefore] = [levels(over), levels(beside)];
      ask(op, 'bedUp');
      levels(over).forEach((level, k) => expect(level - overBefore[k]!).toBeCloseTo(0.05, 2));
      expect(levels(beside)).toEqual(besideBefore);
      expect(op.run.picture().bedUpM).toBe(scene.layout.bedUpM);
    }, 'sheath-short');
  }, PATIENCE_MS);

  it('does not make a probe that lies on it one that slides', () => {
    const room = new Room(adjustable(shippedScenario('quiet-room')), 1);
    let moved = false;
    for (let step = 0; step < 7 * STEPS_PER_SECOND; step++) {
      const { observation } = room.step(step, step === 60 ? [{ type: 'ask', request: 'bedUp' }] : []);
      moved ||= room.scene.layout.bedUpM > 0.02;
      if (step > 60) expect(observation.field.probe.speed).toBeLessThan(CREEP_MPS);
    }
    expect(moved).toBe(true);
  }, PATIENCE_MS);
});

describe('What is replaced or laid anew', () => {
  const quick = shippedScenario('sheath-short', (source) => {
    source['policy'] = { remedySeconds: 0.1 };
  });

  it('lies on the bed where it is now', () => {
    runOperator((op) => {
      handsAside(op);
      const { y } = op.thing('gel');
      ask(op, 'bedUp');
      op.send({ type: 'remedy.start', remedy: 'replaceItem', thing: 'gel' }).wait(3);
      expect(op.thing('gel').y - y).toBeCloseTo(0.05, 2);
    }, quick);
  }, PATIENCE_MS);

  it('with skin and drapes prepared again, the bed is where it was at first', () => {
    const { result } = runOperator((op) => {
      handsAside(op);
      ask(op, 'bedDown');
      op.send({ type: 'remedy.start', remedy: 'prepAndDrape' }).wait(13);
      expect(upM(op)).toBe(0);
      expect(op.run.room.scene.world.bodyY[op.run.room.scene.bed[0]!]).toBe(0);
      expect(op.run.room.happenings.humpY).toBe(op.run.room.scene.layout.mattress.top);
    }, quick);
    expect(result.breaks).toEqual([]);
    expect(result.remedies.map(({ remedy }) => remedy)).toEqual(['prepAndDrape']);
  }, PATIENCE_MS);
});

describe('A run with a moving bed', () => {
  const goOn = (run: Run): string[] => Array.from({ length: 6 }, (_, k) => {
    for (let n = 0; n < 60; n++) run.step(k === 1 && n === 0 ? [{ type: 'ask', request: 'bedDown' }] : []);
    return run.hash();
  });

  it.each([3, 4.5, 7])('goes on bit for bit from a snapshot after %f s', (seconds) => {
    const { run } = runOperator((op) => void ask(op, 'bedUp', seconds), 'sheath-short');
    const saved = structuredClone(run.snapshot());
    const hashes = goOn(run);
    const fresh = new Run(run.scenario);
    fresh.restore(saved);
    expect(goOn(fresh)).toEqual(hashes);
    // And from there back to the height that the snapshot had.
    fresh.restore(saved);
    expect(goOn(fresh)).toEqual(hashes);
  }, PATIENCE_MS);

  it('comes to the same bits twice, and to others without the request', () => {
    const hashOf = (request: RequestId): string => runOperator((op) => void ask(op, request, 5), 'sheath-short').run.hash();
    expect(hashOf('bedUp')).toBe(hashOf('bedUp'));
    expect(hashOf('bedUp')).not.toBe(hashOf('bedDown'));
  }, PATIENCE_MS);
});
