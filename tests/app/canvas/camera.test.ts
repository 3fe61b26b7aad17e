import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Camera } from '../../../src/app/canvas/camera.ts';

const sized = (width = 1280, height = 720): Camera => {
  const camera = new Camera(true);
  camera.resize(width, height);
  return camera;
};
const point = fc.double({ min: -2, max: 2, noNaN: true });

describe('the camera', () => {
  it('takes a point of the room to the screen and back, wherever it looks', () => {
    fc.assert(fc.property(point, point, fc.double({ min: 0.3, max: 3, noNaN: true }), fc.integer({ min: -400, max: 400 }), (x, y, factor, dx) => {
      const camera = sized();
      camera.zoom(factor, 300, 200);
      camera.pan(dx, -dx);
      const screen = camera.roomToScreen(x, y);
      const back = camera.screenToRoom(screen.x, screen.y);
      expect(back.x).toBeCloseTo(x, 9);
      expect(back.y).toBeCloseTo(y, 9);
    }));
  });

  it('keeps what lies under the pointer there while it zooms', () => {
    const camera = sized();
    const before = camera.screenToRoom(300, 200);
    camera.zoom(1.7, 300, 200);
    const after = camera.roomToScreen(before.x, before.y);
    expect(after.x).toBeCloseTo(300, 9);
    expect(after.y).toBeCloseTo(200, 9);
  });

  it('frames the field: both rails and the site are on the screen', () => {
    const camera = sized(904, 612);
    camera.fit('field');
    for (const [x, y] of [[-0.55, 0.95], [0.55, 1.25], [-0.05, 1.1]] as const) {
      const { x: px, y: py } = camera.roomToScreen(x, y);
      expect(px).toBeGreaterThan(0);
      expect(px).toBeLessThan(904);
      expect(py).toBeGreaterThan(0);
      expect(py).toBeLessThan(612);
    }
  });

  it('shows a given part of the room whole, and keeps it when the size changes', () => {
    const camera = sized(904, 400);
    const part = { left: 0.2, right: 0.7, bottom: 0.9, top: 1.9 };
    camera.fit(part);
    for (const [width, height] of [[904, 400], [500, 700]] as const) {
      camera.resize(width, height);
      const a = camera.roomToScreen(part.left, part.top);
      const b = camera.roomToScreen(part.right, part.bottom);
      expect(Math.min(a.x, a.y)).toBeGreaterThanOrEqual(-1e-9);
      expect(b.x).toBeLessThanOrEqual(width + 1e-9);
      expect(b.y).toBeLessThanOrEqual(height + 1e-9);
    }
  });

  it('does not move under a held object, but later', () => {
    const camera = sized();
    camera.advance(true, 0);
    const before = camera.toScreen;
    camera.fit('room');
    camera.advance(true, 1000);
    camera.resize(900, 720);
    expect(camera.pxPerM).toBe(before[0]);
    camera.advance(false, 1100);
    expect(camera.pxPerM).toBeLessThan(before[0]);
  });
});
