import { describe, expect, it } from 'vitest';
import { makeFixture } from '../../../src/app/canvas/dev/fixture.ts';
import { blendPictures } from '../../../src/app/canvas/blendPictures.ts';
import { looksSame } from '../../../src/app/canvas/looksSame.ts';
import { ultrasoundView } from '../../../src/app/canvas/art/ultrasoundView.ts';
import type { RoomPicture } from '../../../src/core/room/picture.ts';

const field = makeFixture('field');
const moved: RoomPicture = { ...field, torsoX: 0.1, hands: { ...field.hands, right: { ...field.hands.right, x: field.hands.right.x + 0.02, c: 0, s: 1 } } };

describe('an instant between two pictures', () => {
  it('lies between them, and directions stay unit vectors', () => {
    const half = blendPictures(field, moved, 0.5);
    expect(half.torsoX).toBeCloseTo(0.05);
    expect(half.hands.right.x).toBeCloseTo(field.hands.right.x + 0.01);
    expect(Math.hypot(half.hands.right.c, half.hands.right.s)).toBeCloseTo(1);
    expect(half.strands[2]).toBe(field.strands[2]);
    expect(blendPictures(field, { ...field, bedUpM: 0.01 }, 0.25).bedUpM).toBeCloseTo(0.0025);
  });

  it('is the current one at its end', () => expect(blendPictures(field, moved, 1)).toBe(moved));
});

describe('pictures that look the same', () => {
  it('are found so though they are other objects', () => {
    expect(looksSame(field, makeFixture('field'))).toBe(false);
    expect(looksSame(field, { ...field, strands: field.strands.map((strand) => ({ ...strand, x: strand.x.slice() })), marks: new Map(field.marks) })).toBe(true);
  });

  it('differ by one node, one mark, one hand or the height of the bed', () => {
    const strands = field.strands.map((strand, i) => (i === 2 ? { ...strand, x: strand.x.map((x, k) => (k === 7 ? x + 1e-6 : x)) } : strand));
    expect(looksSame(field, { ...field, strands })).toBe(false);
    expect(looksSame(field, { ...field, marks: new Map(field.marks).set('left:cuff', 'became') })).toBe(false);
    expect(looksSame(field, moved)).toBe(false);
    expect(looksSame(field, { ...field, bedUpM: 0.001 })).toBe(false);
  });
});

describe('the ultrasound picture', () => {
  it('shows vein and artery side by side when the probe stands on the site', () => {
    const view = ultrasoundView(field);
    expect(view.contact).toBeGreaterThan(0.5);
    expect(Math.abs(view.veinAcross)).toBeLessThan(0.6);
    expect(view.arteryAcross).toBeLessThan(view.veinAcross);
  });

  it('is empty when the probe lies on the sheet', () => expect(ultrasoundView(makeFixture('open')).contact).toBe(0));
});
