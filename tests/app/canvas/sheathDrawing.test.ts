import { describe, expect, it } from 'vitest';
import { ultrasoundView } from '../../../src/app/canvas/art/ultrasoundView.ts';
import { Camera } from '../../../src/app/canvas/camera.ts';
import { blendPictures } from '../../../src/app/canvas/blendPictures.ts';
import { newsOf, withNews } from '../../../src/app/canvas/beside/news.ts';
import { makeFixture } from '../../../src/app/canvas/dev/fixture.ts';
import { makeSheathFixture } from '../../../src/app/canvas/dev/sheathFixture.ts';
import type { Frame } from '../../../src/app/canvas/frame.ts';
import { itemLookKey } from '../../../src/app/canvas/items/itemLook.ts';
import { filmHalf, gapPoint, heightOf } from '../../../src/app/canvas/items/probeOutline.ts';
import { arrange } from '../../../src/app/canvas/labels/arrange.ts';
import { labelPlaces } from '../../../src/app/canvas/labels/places.ts';
import { looksSame } from '../../../src/app/canvas/looksSame.ts';
import { cordFilmKey } from '../../../src/app/canvas/strands/cord.ts';
import { pocketKey } from '../../../src/app/canvas/strands/pocket.ts';
import type { ItemPicture, ProbeDress, RoomPicture } from '../../../src/core/room/picture.ts';

const drawing = makeSheathFixture('drawing');
const open = makeSheathFixture('overMouth');
const probeOf = ({ items }: RoomPicture): ItemPicture => items.find(({ kind }) => kind === 'probe')!;
const dressed = (picture: RoomPicture, dress: ProbeDress | null): RoomPicture => ({ ...picture, items: picture.items.map((item) => (item.kind === 'probe' ? { ...item, dress } : item)) });
const dress = probeOf(drawing).dress!;
/** One thing about the film differs in each. */
const OTHERS: readonly (ProbeDress | null)[] = [
  null,
  { ...dress, torn: true },
  { ...dress, bands: [0.024] },
  { ...dress, bubbles: dress.bubbles.slice(1) },
  { ...dress, bubbles: dress.bubbles.map(({ at, lengthM }) => ({ at: at + 0.001, lengthM })) },
  { ...dress, bubbles: dress.bubbles.map(({ at, lengthM }) => ({ at, lengthM: lengthM + 0.001 })) },
];

describe('a change of the film on the probe', () => {
  it('is drawn anew, and nothing else is', () => {
    expect(looksSame(drawing, dressed(drawing, structuredClone(dress)))).toBe(true);
    const mark = (): 'sterile' => 'sterile';
    const key = itemLookKey(probeOf(drawing), mark);
    expect(itemLookKey({ ...probeOf(drawing), dress: structuredClone(dress) }, mark)).toBe(key);
    for (const other of OTHERS) {
      expect(looksSame(drawing, dressed(drawing, other))).toBe(false);
      expect(itemLookKey({ ...probeOf(drawing), dress: other }, mark)).not.toBe(key);
    }
  });

  it('crosses to the painting worker', () => {
    let sent: RoomPicture = drawing;
    let received: unknown = structuredClone(sent);
    for (const other of [...OTHERS, dress]) {
      const next = dressed(drawing, other);
      received = withNews(received, structuredClone(newsOf(next, sent)));
      sent = next;
      expect(received).toEqual(next);
    }
  });
});

describe('the film of the sheath', () => {
  it('is drawn anew when it is paid out, unfolded or filled, and when fingers come under its fold', () => {
    for (const change of [{ coveredM: 0.29 }, { foldedM: 0.7 }, { gelInSheathMl: 1 }, { fingersInFold: ['left' as const] }]) expect(looksSame(drawing, { ...drawing, ...change })).toBe(false);
    expect(cordFilmKey({ ...drawing, coveredM: drawing.coveredM + 0.001 })).not.toBe(cordFilmKey(drawing));
    expect(cordFilmKey({ ...drawing, foldedM: 0.7 })).not.toBe(cordFilmKey(drawing));
    expect(cordFilmKey(dressed(drawing, { ...dress, bands: [0.18] }))).not.toBe(cordFilmKey(drawing));
    expect(pocketKey({ ...open, gelInSheathMl: 5 })).not.toBe(pocketKey(open));
    expect(pocketKey({ ...open, foldedM: 0.5 })).not.toBe(pocketKey(open));
  });

  it('is not laid over the cord while the sheath is a pocket', () => {
    expect(cordFilmKey({ ...open, coveredM: 0.3 })).toBe(cordFilmKey({ ...open, coveredM: 0.1 }));
  });

  it('comes and goes without its strand being mixed with another', () => {
    const gone = { ...open, strands: open.strands.slice(0, 3) };
    expect(blendPictures(gone, open, 0.5).strands[3]).toBe(open.strands[3]);
    const swapped = { ...open, strands: [...open.strands].reverse() };
    expect(blendPictures(swapped, open, 0.5).strands[2]).toBe(open.strands[2]);
    expect(looksSame(open, gone)).toBe(false);
    expect(looksSame(gone, open)).toBe(false);
  });

  it('is paid out evenly between two pictures', () => {
    const half = blendPictures({ ...drawing, coveredM: 0.2, foldedM: 0.9 }, { ...drawing, coveredM: 0.3, foldedM: 0.8 }, 0.5);
    expect(half.coveredM).toBeCloseTo(0.25);
    expect(half.foldedM).toBeCloseTo(0.85);
  });
});

it('a step of the assistant is drawn though all else is at rest', () => {
  const { assistant } = drawing;
  expect(looksSame(drawing, { ...drawing, assistant: { ...assistant, torsoX: assistant.torsoX + 0.01 } })).toBe(false);
  expect(looksSame(drawing, { ...drawing, assistant: { ...assistant, hands: { ...assistant.hands, left: { ...assistant.hands.left, x: 0 } } } })).toBe(false);
  expect(looksSame(drawing, { ...drawing, assistant: structuredClone(assistant) })).toBe(true);
});

describe('places on the drawn probe', () => {
  it('lie on the axis at the middle of the face, and as far up the one flank as up the other', () => {
    expect(gapPoint(0)[0]).toBeCloseTo(0);
    for (const at of [0.01, 0.03, 0.06, 0.11]) {
      expect(gapPoint(-at)[0]).toBeCloseTo(-gapPoint(at)[0]);
      expect(gapPoint(-at)[1]).toBeCloseTo(gapPoint(at)[1]);
      expect(gapPoint(at + 0.005)[1]).toBeLessThan(gapPoint(at)[1]);
    }
  });

  it('are inside the film all along', () => {
    for (let at = 0.02; at < 0.16; at += 0.005) {
      const [x, y] = gapPoint(at);
      expect(Math.abs(x)).toBeLessThan(filmHalf(y));
    }
    expect(heightOf(0.024)).toBeGreaterThan(heightOf(0.124));
  });
});

describe('names', () => {
  const words = (picture: RoomPicture): string[] => labelPlaces(picture).map((place) => place.words);

  it('are given to what the sheath is loaded with, each once', () => {
    const lying = words(makeSheathFixture('lying'));
    for (const name of ['sheath', 'band', 'gel bottle', 'probe']) expect(lying.filter((word) => word === name)).toHaveLength(1);
    expect(words(open).filter((word) => word === 'sheath')).toHaveLength(1);
    expect(words(drawing)).toContain('probe in its sheath');
    expect(words(drawing)).not.toContain('sheath');
  });

  it('follow how much of the cord is covered', () => {
    expect(words(open)).not.toContain('sheathed cord');
    expect(words(drawing)).toContain('sheathed cord');
  });
});

describe('air under the face', () => {
  const field = makeFixture('field');
  const shadows = (at: number, lengthM: number) => ultrasoundView(dressed(field, { ...dress, bubbles: [{ at, lengthM }] })).shadows;

  it('keeps sound from as much of the picture as it covers of the face', () => {
    // A face of 38 mm, a common footprint of linear probes.
    const [[from, to]] = shadows(0, 0.019) as [readonly [number, number]];
    expect(to - from).toBeCloseTo(2 * (0.019 / 0.038));
    expect(from).toBeCloseTo(-to);
  });

  it('spoils nothing from the flank, and at an edge only what lies under the face', () => {
    expect(shadows(0.05, 0.02)).toEqual([]);
    const [[from, to]] = shadows(-0.019, 0.01) as [readonly [number, number]];
    expect(to).toBe(1);
    expect(to - from).toBeCloseTo(0.005 / 0.019);
  });

  it('lies on the side of the picture that it lies on for the vessels', () => {
    // Vein and bubble both lie at larger x than the middle of a face that points down.
    const aside = { ...field, items: field.items.map((item) => (item.kind === 'probe' ? { ...item, x: field.scenario.room.patient.siteXM - 0.01, c: 0, s: -1, dress: { ...dress, bubbles: [{ at: 0.01, lengthM: 0.004 }] } } : item)) };
    const { veinAcross, shadows: [shadow] } = ultrasoundView(aside);
    expect(Math.sign(shadow![0])).toBe(Math.sign(veinAcross));
  });
});

describe('words', () => {
  const camera = new Camera(true);
  camera.resize(1280, 720);
  camera.fit('field');
  /** How far from the point that they name words are put, across and down: on it, below it or beside it. */
  const takes = (picture: RoomPicture, x: number, y: number): readonly number[] | undefined => {
    const place = { words: 'here', x, y, offsets: [[0, 0, 'left'], [0, 200, 'left'], [-160, 0, 'left']] as const };
    const around = { frame: { camera, picture } as unknown as Frame, measure: () => ({ wide: 40, high: 24 }), taken: [] };
    const [label] = arrange([place], [], around);
    return label && [label.offset[0], label.offset[1]];
  };

  it('lie neither on the opened sheath nor on the probe over it', () => {
    const { x, y } = probeOf(open);
    const bare = { ...open, strands: [], items: [] };
    for (const [px, py, free] of [[0, 1.1, [0, 200]], [x, y, [-160, 0]]] as const) {
      expect(takes(open, px, py)).toEqual(free);
      expect(takes(bare, px, py)).toEqual([0, 0]);
    }
  });
});
