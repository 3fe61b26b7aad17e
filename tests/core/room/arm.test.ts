import { describe, expect, it } from 'vitest';
import { SIDES, signOf } from '../../../src/core/base/side.ts';
import { solveArm } from '../../../src/core/room/arm.ts';
import { HAND } from '../../../src/core/room/handShape.ts';
import { shippedScenario } from '../../support/runOperator.ts';

const scenario = shippedScenario('quiet-room');
const { upperArmM, forearmM, foreshortening, shoulderM, shoulderHalfWidthM } = scenario.operator;
const upper = upperArmM * foreshortening;
const fore = forearmM * foreshortening;

/** Palm of a hand with level fingers, its wrist `out` metres outward of the shoulder and `up` above it. */
const armTo = (side: 'left' | 'right', out: number, up: number) => {
  const sign = signOf(side);
  return solveArm(scenario, side, 0, sign * (shoulderHalfWidthM + out) + sign * HAND.wristU, shoulderM + up, -sign, 0);
};
const far = (ax: number, ay: number, bx: number, by: number): number => Math.hypot(bx - ax, by - ay);

describe('The arm', () => {
  it.each([[0.4, 0.1], [0.35, 0.22], [-0.1, 0.36], [0.2, 0.35]])('stretched to (%d, %d): both links keep their length, the angles obey the law of cosines', (out, up) => {
    for (const side of SIDES) {
      const arm = armTo(side, out, up);
      const d = far(arm.shoulderX, arm.shoulderY, arm.wristX, arm.wristY);
      expect(far(arm.shoulderX, arm.shoulderY, arm.elbowX, arm.elbowY)).toBeCloseTo(upper, 9);
      expect(far(arm.elbowX, arm.elbowY, arm.wristX, arm.wristY)).toBeCloseTo(fore, 9);
      const cosAtShoulder = ((arm.elbowX - arm.shoulderX) * (arm.wristX - arm.shoulderX) + (arm.elbowY - arm.shoulderY) * (arm.wristY - arm.shoulderY)) / (upper * d);
      expect(cosAtShoulder).toBeCloseTo((upper * upper + d * d - fore * fore) / (2 * upper * d), 9);
    }
  });

  it('out of reach it is straight', () => {
    const arm = armTo('left', 0.5, 0.2);
    const cross = (arm.elbowX - arm.shoulderX) * (arm.wristY - arm.shoulderY) - (arm.elbowY - arm.shoulderY) * (arm.wristX - arm.shoulderX);
    expect(cross).toBeCloseTo(0, 9);
  });

  it('is the mirror image on the other side', () => {
    for (const [out, up] of [[0.3, 0.2], [0, -0.2], [-0.2, -0.1]] as const) {
      const [right, left] = [armTo('right', out, up), armTo('left', out, up)];
      expect([-right.elbowX, right.elbowY]).toEqual([left.elbowX, left.elbowY]);
    }
  });

  it('hangs its elbow below the shoulder and outward of it while the hand works near the body', () => {
    for (let out = -0.05; out <= 0.3; out += 0.05) {
      const arm = armTo('left', out, -0.2);
      expect(arm.elbowY).toBeLessThan(shoulderM - 0.1);
      expect(arm.elbowX).toBeGreaterThan(shoulderHalfWidthM);
    }
  });

  it('does not jump where hands work, below the shoulders: a millimetre of the hand is at most 12 of the elbow', () => {
    let most = 0;
    for (let out = -0.3; out < 0.38; out += 0.01) {
      for (let up = -0.38; up < -0.05; up += 0.001) {
        if (far(0, 0, out, up) > (upper + fore) * 0.99) continue;
        const [a, b] = [armTo('left', out, up), armTo('left', out, up + 0.001)];
        most = Math.max(most, far(a.elbowX, a.elbowY, b.elbowX, b.elbowY));
      }
    }
    expect(most).toBeLessThan(0.012);
  });
});
