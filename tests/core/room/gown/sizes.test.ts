import { describe, expect, it } from 'vitest';
import { gloveStrain, HAND_IN_GLOVE_M, onShoulderM, tearingMps } from '../../../../src/core/room/gown/gownFacts.ts';
import { overlapM } from '../../../../src/core/room/gown/gownSurfaces.ts';
import { STATURE_TABLE } from '../../../../src/core/scenario/statures.ts';
import { CRAMPED, ROOMY, TALL } from '../../../support/gownRooms.ts';

describe('The table of statures', () => {
  // ANSUR II (US Army 2012), means: shoulder less upper arm is the elbow, 1024 mm (women) and 1105 mm (men); chest less waist is 191 and 235 mm.
  it.each([['woman', 1.024, 0.191], ['man', 1.105, 0.235]] as const)('has the elbow of the mean %s under the upper arm, and the sterile front between chest and waist', (who, elbowM, frontM) => {
    const { shoulderM, upperArmM, chestM, waistM, elbowM: own } = STATURE_TABLE[who];
    expect(shoulderM - upperArmM).toBeCloseTo(elbowM, 2);
    expect(own).toBeCloseTo(elbowM, 3);
    expect(Math.abs(chestM - waistM - frontM)).toBeLessThan(0.002);
  });

  it.each(['shortWoman', 'tallMan'] as const)('is about right for the %s, whose lengths are percentiles each by itself', (who) => {
    const { shoulderM, upperArmM, elbowM } = STATURE_TABLE[who];
    expect(Math.abs(shoulderM - upperArmM - elbowM)).toBeLessThan(0.02);
  });

  it('makes the operators of the shipped rooms', () => {
    expect(CRAMPED.operator).toMatchObject({ shoulderM: 1.335, waistM: 0.98, handM: 0.181 });
    expect(TALL.operator).toMatchObject({ shoulderM: 1.546, waistM: 1.145, forearmM: 0.293 });
  });
});

describe('A gown on its wearer', () => {
  it.each([['roomy', ROOMY], ['cramped', CRAMPED], ['tall', TALL]] as const)('covers from the shoulder to below the sterile front, clear of the floor (%s)', (_, { gown, operator }) => {
    const hem = operator.shoulderM - gown.lengthM;
    expect(hem).toBeGreaterThan(0.2);
    expect(hem).toBeLessThan(operator.waistM - 0.3);
  });

  it('has sleeves that are long enough in two rooms, and too short for the tall operator', () => {
    expect(onShoulderM(ROOMY)).toBeLessThan(ROOMY.gown.sleeveM);
    expect(onShoulderM(CRAMPED)).toBeLessThan(CRAMPED.gown.sleeveM);
    expect(onShoulderM(TALL)).toBeGreaterThan(TALL.gown.sleeveM);
  });
});

describe('A glove over its cuff', () => {
  // Surgical gloves are 265 mm long at least (ASTM D3577, from memory), and lie over the cuff by 5 cm and more (common practice).
  it.each([0.265, 0.28])('of %d m overlaps by what the hand leaves of it, 5 cm and more', (lengthM) => {
    expect(overlapM({ drawnM: 0.2, advanceM: HAND_IN_GLOVE_M }, lengthM)).toBeCloseTo(lengthM - HAND_IN_GLOVE_M, 9);
    expect(lengthM - HAND_IN_GLOVE_M).toBeGreaterThanOrEqual(0.05);
  });

  it('overlaps by no more than it was drawn', () => expect(overlapM({ drawnM: 0.03, advanceM: HAND_IN_GLOVE_M }, 0.28)).toBe(0.03));

  // A size is the girth of the palm in inches (common practice): 187 mm is 7.4, 212 mm is 8.3.
  it('fits who measures as many inches', () => {
    expect(Math.abs(gloveStrain(7.5, 0.187))).toBeLessThan(0.02);
    expect(Math.abs(gloveStrain(8.5, 0.212))).toBeLessThan(0.02);
    expect(gloveStrain(6.5, 0.19)).toBeGreaterThan(0.1);
  });

  it('tears the sooner the more it is stretched, and never when it fits', () => {
    expect(tearingMps(0)).toBe(Infinity);
    expect(tearingMps(0.1)).toBeLessThan(tearingMps(0.05));
    expect(tearingMps(0.25)).toBe(0);
  });
});
