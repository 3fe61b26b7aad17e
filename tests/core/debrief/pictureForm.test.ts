import { describe, expect, it } from 'vitest';
import { formOf, hasForm, Numbers, numbersOf, pictureOf } from '../../../src/core/debrief/pictureForm.ts';
import type { RoomPicture } from '../../../src/core/room/picture.ts';
import { FakeRun } from '../../app/support/FakeRun.ts';
import { LOADING } from '../../app/support/scenario.ts';

const plain = new FakeRun(LOADING).picture();
const probe = { id: 'probe', kind: 'probe', surfaces: [], heldBy: null, gone: false, used: 0, x: 0.1, y: 1.2, c: 1, s: 0 } as const;
const dressed = (parts: Partial<NonNullable<RoomPicture['items'][number]['dress']>> = {}): RoomPicture => ({
  ...plain,
  items: [{ ...probe, dress: { bands: [0.03, 0.11], bubbles: [{ at: 0.01, lengthM: 0.004 }], torn: false, ...parts } }],
});

/** The picture as it comes out of the numbers that are kept of it. */
function kept(picture: RoomPicture): RoomPicture {
  const row = Int16Array.from(numbersOf(picture));
  return pictureOf(formOf(picture), new Numbers(row, row, 0, 0), { scenario: picture.scenario, step: picture.step, marks: picture.marks }, null);
}

describe('What is kept of a picture', () => {
  it('holds gel by the hundredth of a millilitre, up to far more than a sheath takes', () => {
    for (const gelInSheathMl of [0, 0.01, 5, 7.43, 60]) expect(kept({ ...plain, gelInSheathMl }).gelInSheathMl).toBeCloseTo(gelInSheathMl, 6);
  });

  it('holds what covers the probe, and the length of covered cord and of folded film', () => {
    const picture = { ...dressed(), coveredM: 0.8123, foldedM: 2.44 };
    const [{ dress } = { dress: null }] = kept(picture).items;
    expect(dress!.bands.map((at) => Math.round(at * 1e4))).toEqual([300, 1100]);
    expect(dress!.bubbles[0]!.lengthM).toBeCloseTo(0.004, 6);
    expect(kept(picture).coveredM).toBeCloseTo(0.8123, 6);
    expect(kept(picture).foldedM).toBeCloseTo(2.44, 6);
  });

  it('has another form once there is another bubble, band or tear, and the same while these only move', () => {
    const form = formOf(dressed());
    expect(hasForm(dressed({ bands: [0.02, 0.12], bubbles: [{ at: 0.02, lengthM: 0.001 }] }), form)).toBe(true);
    for (const other of [dressed({ bands: [0.03] }), dressed({ bubbles: [] }), dressed({ torn: true }), { ...plain, items: [{ ...probe, dress: null }] }]) expect(hasForm(other, form)).toBe(false);
    expect(hasForm(dressed(), formOf({ ...plain, items: [{ ...probe, dress: null }] }))).toBe(false);
    expect(hasForm({ ...plain, fingersInFold: ['left'] }, formOf(plain))).toBe(false);
  });
});
