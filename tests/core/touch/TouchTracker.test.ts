import { describe, expect, it } from 'vitest';
import { StateHash } from '../../../src/core/base/hash.ts';
import { Rng } from '../../../src/core/base/rng.ts';
import { TouchTracker } from '../../../src/core/touch/TouchTracker.ts';
import type { TrackedCapsule } from '../../../src/core/touch/trackedCapsule.ts';

/** A circle of radius 1 cm that goes from (x, y) to (toX, toY). */
const ball = (surface: number, group: number, x: number, y: number, toX = x, toY = y): TrackedCapsule => ({
  surface, group, ax: x, ay: y, bx: x, by: y, Ax: toX, Ay: toY, Bx: toX, By: toY, r: 0.01,
});
const all = (): TouchTracker => new TouchTracker({ groups: 4, mayTouch: (a, b) => a !== b });
const words = (events: ReturnType<TouchTracker['step']>): string[] => events.map(({ kind, touch, a, b }) => `${kind} ${touch}: ${a}-${b}`);

describe('episodes of touch', () => {
  it('begin at half a millimetre and last until the gap is above three', () => {
    const tracker = all();
    const at = (gap: number): string[] => words(tracker.step([ball(0, 0, 0, 0), ball(1, 1, 0.02 + gap, 0)]));
    expect(at(0.0006)).toEqual([]);
    expect(at(0.0004)).toEqual(['began 1: 0-1']);
    expect(at(0.0029)).toEqual([]);
    expect(at(0.0004)).toEqual([]);
    expect(at(0.0031)).toEqual(['ended 1: 0-1']);
    expect(at(0.0029)).toEqual([]);
    expect(at(-0.005)).toEqual(['began 2: 0-1']);
  });

  it('begin and end in one step when something fast only brushes past', () => {
    const tracker = all();
    const events = tracker.step([ball(0, 0, -0.3, 0.005, 0.3, 0.005), ball(1, 1, 0, -0.005)]);
    expect(words(events)).toEqual(['began 1: 0-1', 'ended 1: 0-1']);
    expect(events[0]!.x).toBeCloseTo(-0.5 * Math.sqrt(0.0205 ** 2 - 0.01 ** 2), 6);
    expect(tracker.count).toBe(0);
  });

  it('begin where the first of several capsules was met', () => {
    for (const order of [[0.1, 0.2], [0.2, 0.1]]) {
      const [began] = all().step([ball(0, 0, 0, 0, 0.3, 0), ...order.map((x) => ball(1, 1, x, 0.015))]);
      expect(began!.x).toBeGreaterThan(0.08);
      expect(began!.x).toBeLessThan(0.1);
    }
  });

  it('are one per pair of surfaces, however many capsules these have', () => {
    const tracker = all();
    const hand = [ball(5, 0, 0, 0), ball(5, 0, 0.015, 0), ball(5, 0, 0.03, 0)];
    expect(words(tracker.step([...hand, ball(2, 1, 0.015, 0.015), ball(2, 1, 0.03, 0.015)]))).toEqual(['began 1: 2-5']);
    expect(words(tracker.step([...hand, ball(2, 1, 0.2, 0.015), ball(2, 1, 0.03, 0.015)]))).toEqual([]);
  });

  it('are reported sorted by pair, beginnings before ends, whatever the order of the capsules', () => {
    const capsules = [ball(9, 0, 0, 0), ball(3, 1, 0.015, 0), ball(7, 2, 0, 0.015), ball(1, 3, 0.2, 0)];
    const [forward, backward] = [all(), all()];
    const expected = ['began 1: 3-7', 'began 2: 3-9', 'began 3: 7-9'];
    expect(words(forward.step(capsules))).toEqual(expected.filter((line) => !line.includes('3-7')).map((line, k) => line.replace(/\d+:/, `${k + 1}:`)));
    expect(forward.step(capsules)).toEqual([]);
    expect(words(backward.step([...capsules].reverse()))).toEqual(['began 1: 3-9', 'began 2: 7-9']);
  });

  it('happen only between groups that may touch', () => {
    const tracker = new TouchTracker({ groups: 3, mayTouch: (a, b) => a === 0 && b === 2 });
    expect(words(tracker.step([ball(0, 0, 0, 0), ball(1, 1, 0, 0), ball(2, 2, 0, 0), ball(3, 2, 0, 0)]))).toEqual(['began 1: 0-2', 'began 2: 0-3']);
  });

  it('end when one of the surfaces is no longer there', () => {
    const tracker = all();
    tracker.step([ball(0, 0, 0, 0), ball(1, 1, 0, 0)]);
    expect(words(tracker.step([ball(0, 0, 0, 0), ball(4, 1, 0, 0)]))).toEqual(['began 2: 0-4', 'ended 1: 0-1']);
  });

  it('go on the same after being stored and taken up elsewhere', () => {
    const rng = new Rng(5);
    const frames = Array.from({ length: 60 }, () => Array.from({ length: 12 }, (_, k) => ball(k, k % 4, rng.between(0, 0.15), rng.between(0, 0.15))));
    const straight = all();
    const before = frames.slice(0, 30).map((frame) => straight.step(frame));
    const other = all();
    other.restore(JSON.parse(JSON.stringify(straight.snapshot())));
    expect(frames.slice(30).map((frame) => other.step(frame))).toEqual(frames.slice(30).map((frame) => straight.step(frame)));
    expect(before.flat().length).toBeGreaterThan(50);
    const [p, q] = [new StateHash(), new StateHash()];
    straight.hashInto(p);
    other.hashInto(q);
    expect(p.digest()).toBe(q.digest());
  });

  it('are the same whether or not the tracker remembers what stood still', () => {
    const rng = new Rng(11);
    const [remembers, forgets] = [all(), all()];
    // Some stand for a while, some come and go; some lie within the gaps of others from the beginning.
    const balls = Array.from({ length: 30 }, (_, k) => ball(k, k % 4, rng.between(0, 0.3), rng.between(0, 0.3)));
    let events = 0;
    for (let step = 0; step < 800; step++) {
      for (const c of balls) {
        c.ax = c.bx = c.Ax;
        c.ay = c.by = c.Ay;
        if ((step >> 4) % 3 === c.surface % 3) continue;
        c.Ax = c.Bx = c.ax + rng.between(-0.002, 0.002);
        c.Ay = c.By = c.ay + rng.between(-0.002, 0.002);
      }
      const present = balls.filter(({ surface }) => surface % 10 !== 9 || (step >> 5) % 2 === 0);
      const seen = remembers.step(present);
      forgets.restore(forgets.snapshot());
      expect(seen).toEqual(forgets.step(present));
      events += seen.length;
    }
    expect(events).toBeGreaterThan(100);
    expect(remembers.snapshot()).toEqual(forgets.snapshot());
  });

  it('are those of testing every pair of surfaces, without boxes', () => {
    const rng = new Rng(31);
    const tracker = all();
    const open = new Set<string>();
    let began = 0;
    let was = Array.from({ length: 24 }, () => [rng.between(0, 0.4), rng.between(0, 0.4)] as const);
    for (let step = 0; step < 500; step++) {
      const now = was.map(([x, y]) => [x + rng.between(-0.015, 0.015), y + rng.between(-0.015, 0.015)] as const);
      const events = tracker.step(was.map(([x, y], k) => ball(k, k % 4, x, y, ...now[k]!)));
      for (let a = 0; a < was.length; a++)
        for (let b = a + 1; b < was.length; b++) {
          if (a % 4 === b % 4) continue;
          const key = `${a}-${b}`;
          if (!open.has(key) && closest(was[a]!, now[a]!, was[b]!, now[b]!) <= 0.0205) {
            open.add(key);
            began++;
            expect(events.some((event) => event.kind === 'began' && event.a === a && event.b === b), `step ${step}: ${key}`).toBe(true);
          }
          const apart = Math.sqrt((now[a]![0] - now[b]![0]) ** 2 + (now[a]![1] - now[b]![1]) ** 2);
          if (apart > 0.023) open.delete(key);
        }
      expect(tracker.count).toBe(open.size);
      was = now;
    }
    expect(began).toBeGreaterThan(100);
  });
});

/** Nearest distance of two points that move in straight lines in the same time. */
function closest(a: readonly [number, number], A: readonly [number, number], b: readonly [number, number], B: readonly [number, number]): number {
  const [x, y] = [b[0] - a[0], b[1] - a[1]];
  const [vx, vy] = [B[0] - A[0] - x, B[1] - A[1] - y];
  const time = Math.max(0, Math.min(1, -(x * vx + y * vy) / (vx * vx + vy * vy || 1)));
  return Math.sqrt((x + time * vx) ** 2 + (y + time * vy) ** 2);
}
