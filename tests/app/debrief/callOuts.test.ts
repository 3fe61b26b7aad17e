import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arrowPath } from '../../../src/app/debrief/room/arrowPath.ts';
import { boxAround, cross, overlap, passes } from '../../../src/app/debrief/room/boxes.ts';
import { placeCallOuts, type CallOut } from '../../../src/app/debrief/room/placeCallOuts.ts';
import { spreadMarkers } from '../../../src/app/debrief/room/spreadMarkers.ts';

const spot = fc.record({ x: fc.integer({ min: 0, max: 1100 }), y: fc.integer({ min: 0, max: 600 }) });

describe('Call-outs', () => {
  it('never cover each other, the markers, the hands or the edge', () => {
    fc.assert(
      fc.property(fc.array(spot, { minLength: 1, maxLength: 7 }), fc.array(spot, { maxLength: 3 }), (markers, hands) => {
        const wanted = spreadMarkers(markers, 30).map((marker, k): CallOut => ({ key: String(k), marker, wide: 150 + 20 * k, high: 46 }));
        const taken = hands.map((hand) => boxAround([hand], 60));
        const placed = placeCallOuts(wanted, [], { width: 1160, height: 612, taken, lines: [] });
        placed.forEach((box, k) => {
          expect(box.x0 >= 0 && box.y0 >= 0 && box.x1 <= 1160 && box.y1 <= 612).toBe(true);
          expect(taken.some((other) => overlap(box, other))).toBe(false);
          expect(wanted.some(({ marker }) => overlap(box, boxAround([marker], 14)))).toBe(false);
          expect(placed.some((other, j) => j !== k && overlap(box, other))).toBe(false);
        });
      }),
      { seed: 5, numRuns: 60 },
    );
  });

  it('finds room for all where there is plenty', () => {
    const wanted = [[300, 300], [340, 310], [380, 330], [700, 480]].map(([x, y], k): CallOut => ({ key: `${k}`, marker: { x: x!, y: y! }, wide: 200, high: 46 }));
    expect(placeCallOuts(wanted, [], { width: 1160, height: 612, taken: [], lines: [] })).toHaveLength(4);
  });

  it('stay where they are while that does', () => {
    const wanted: CallOut[] = [{ key: 'a', marker: { x: 500, y: 300 }, wide: 200, high: 46 }];
    const screen = { width: 1160, height: 612, taken: [], lines: [] };
    const first = placeCallOuts(wanted, [], screen);
    const [again] = placeCallOuts([{ ...wanted[0]!, marker: { x: 506, y: 296 } }], first, screen);
    expect([again!.x0, again!.y0]).toEqual([first[0]!.x0, first[0]!.y0]);
    const [away] = placeCallOuts(wanted, first, { ...screen, taken: [first[0]!] });
    expect(overlap(away!, first[0]!)).toBe(false);
  });

  it('are left out where there is no room', () => {
    expect(placeCallOuts([{ key: 'a', marker: { x: 50, y: 50 }, wide: 200, high: 46 }], [], { width: 150, height: 100, taken: [], lines: [] })).toEqual([]);
  });
});

describe('Markers', () => {
  it('move apart until all numbers can be read', () => {
    const spots = spreadMarkers([{ x: 100, y: 100 }, { x: 100, y: 100 }, { x: 108, y: 100 }, { x: 400, y: 100 }], 30);
    for (let i = 0; i < 4; i++) for (let j = 0; j < i; j++) expect(Math.hypot(spots[i]!.x - spots[j]!.x, spots[i]!.y - spots[j]!.y)).toBeGreaterThan(29);
    expect(spots[3]).toEqual({ x: 400, y: 100 });
  });

  it('have no arrow between them where they touch', () => {
    expect(arrowPath({ x: 0, y: 0 }, { x: 20, y: 0 }, 12)).toBeNull();
    expect(arrowPath({ x: 0, y: 0 }, { x: 200, y: 0 }, 12)!.shaft).toMatch(/^M[\d. -]+Q[\d. -]+$/);
  });
});

describe('Lines on the screen', () => {
  it('cross or do not', () => {
    const [a, b, c, d] = [{ x: 0, y: 0 }, { x: 10, y: 10 }, { x: 0, y: 10 }, { x: 10, y: 0 }];
    expect(cross(a, b, c, d)).toBe(true);
    expect(cross(a, c, d, b)).toBe(false);
  });

  it('pass through a box or beside it', () => {
    const box = { x0: 10, y0: 10, x1: 20, y1: 20 };
    expect(passes({ x: 0, y: 15 }, { x: 30, y: 15 }, box)).toBe(true);
    expect(passes({ x: 15, y: 15 }, { x: 30, y: 15 }, box)).toBe(true);
    expect(passes({ x: 0, y: 5 }, { x: 30, y: 5 }, box)).toBe(false);
  });
});
