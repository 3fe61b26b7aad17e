import { describe, expect, it } from 'vitest';
import type { Side } from '../../../src/core/base/side.ts';
import { isHidden } from '../../../src/core/room/sight.ts';
import { freshRun } from '../../support/runOperator.ts';

const { scene } = freshRun('quiet-room').room;
const { world, layout, scenario } = scene;

/** Puts the hand there, fingers along (c, s), and says whether it is hidden. */
function hiddenAt(x: number, y: number, c = -1, s = 0, side: Side = 'left'): boolean {
  world.teleportBody(scene.hands[side], x, y, c, s);
  return isHidden(scene, side);
}

/** Middle of the sheet between patient and rail on the left: where it hangs lowest. */
function sag(): { x: number; y: number } {
  const start = world.strandStart(scene.drapes.left);
  let lowest = start;
  for (let i = start; i < start + world.strandSize(scene.drapes.left); i++) if (world.x[i]! < layout.crest.left.x && world.y[i]! < world.y[lowest]!) lowest = i;
  return { x: world.x[lowest]!, y: world.y[lowest]! };
}

/** How near to a limit is tried, on either side of it (m). */
const NEAR = 0.007;

describe('A hand out of sight', () => {
  it('is one over the head, not one beside it', () => {
    const limit = scenario.operator.faceM + 0.16;
    expect([hiddenAt(0.3, limit + NEAR), hiddenAt(0.3, limit - NEAR)]).toEqual([true, false]);
  });

  it('is one under the kit table, not one over it or beside it', () => {
    const { left, right, top } = layout.kitTable;
    const middle = (left + right) / 2;
    expect([hiddenAt(middle, top - 0.03 - NEAR), hiddenAt(right - NEAR, top - 0.1), hiddenAt(left + NEAR, top - 0.1)]).toEqual([true, true, true]);
    expect([hiddenAt(middle, top + NEAR), hiddenAt(right + NEAR, top - 0.1), hiddenAt(left - NEAR, top - 0.1)]).toEqual([false, false, false]);
  });

  it('is one under the mattress or in the bin', () => {
    const { mattress, bin } = layout;
    expect([hiddenAt(0, mattress.bottom - NEAR), hiddenAt(mattress.halfWidth + NEAR, mattress.bottom - NEAR)]).toEqual([true, false]);
    expect([hiddenAt((bin.left + bin.right) / 2, bin.rim - NEAR), hiddenAt((bin.left + bin.right) / 2, bin.rim + NEAR)]).toEqual([true, false]);
  });

  it('is one with a sheet over all of it, not one that has its fingers under the edge, or lies on the sheet', () => {
    const { x, y } = sag();
    expect([hiddenAt(x, y - NEAR), hiddenAt(x, y + NEAR)]).toEqual([true, false]);
    const edge = world.x[world.strandStart(scene.drapes.left)]!;
    expect(hiddenAt(edge - 0.03, 1.05, 1, 0)).toBe(false);
    // Outside the rail, behind the side of the sheet that hangs down, and before it.
    const hem = world.x[world.strandStart(scene.drapes.left) + world.strandSize(scene.drapes.left) - 1]!;
    expect(hiddenAt(hem + 0.03, 1.1, 0, -1)).toBe(false);
  });

  it('comes into sight again only a little beside what hides it, so that nothing flickers', () => {
    const { right, top } = layout.kitTable;
    hiddenAt(right + NEAR, top - 0.1);
    expect([isHidden(scene, 'left', 0.01), isHidden(scene, 'left', 0.005)]).toEqual([true, false]);
  });
});
