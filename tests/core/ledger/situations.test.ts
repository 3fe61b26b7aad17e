import { describe, expect, it } from 'vitest';
import { log, spoiled, told } from './log.ts';

/** Situations whose graph of causes can be drawn by hand. */
describe('the root of a break', () => {
  it('is a sterile surface that meets an unsterile thing', () => {
    const ledger = log().tap('gloveR#1:fingers', 'railR:all').ledger();
    expect(told(ledger)).toEqual(['glove-on-rail major none: gloveR#1:fingers 0']);
    expect(ledger.breaks[0]).toMatchObject({ number: 1, surface: 'gloveR#1:fingers', against: 'railR:all', step: 0, x: 0.1, y: 1.2, noticedStep: null, remediedStep: null });
    expect(ledger.markOf('gloveR#1:fingers')).toBe('became');
    expect(ledger.markOf('gloveR#1:palm')).toBe('sterile');
    expect(ledger.markOf('railR:all')).toBe('unsterile');
    expect(ledger.markOf('site#1:all')).toBe('prepared');
  });

  it('is told the same whichever of the two is named first', () => {
    expect(told(log().tap('railR:all', 'gloveR#1:fingers').ledger())).toEqual(told(log().tap('gloveR#1:fingers', 'railR:all').ledger()));
  });

  it('is one mishap when more of the same glove meets the same rail within two seconds', () => {
    const two = log().tap('gloveR#1:fingers', 'railR:all').wait(239).tap('gloveR#1:palm', 'railR:all').ledger();
    expect(told(two)).toEqual(['glove-on-rail major none: gloveR#1:fingers 0, gloveR#1:palm 0']);
    expect(two.breaks[0]!.spread[1]).toMatchObject({ from: null, touch: 2, step: 240 });
  });

  it('is another break when it happens later than two seconds', () => {
    const later = log().tap('gloveR#1:fingers', 'railR:all').wait(240).tap('gloveR#1:palm', 'railR:all').ledger();
    expect(told(later)).toEqual(['glove-on-rail major none: gloveR#1:fingers 0', 'glove-on-rail major none: gloveR#1:palm 0']);
  });

  it('is still the one mishap while the glove never let go of the rail', () => {
    const resting = log().touch('gloveR#1:fingers', 'railR:all').wait(1000).tap('gloveR#1:palm', 'railR:all').ledger();
    expect(resting.breaks.length).toBe(1);
  });

  it('is a break of its own on another rail, with the other glove or on the sleeve', () => {
    const ledger = log().tap('gloveR#1:fingers', 'railR:all').tap('gloveR#1:palm', 'railL:all').tap('gloveL#1:palm', 'railR:all').tap('gown#1:lowerR', 'railR:all').ledger();
    expect(ledger.breaks.map(({ rule }) => rule)).toEqual(['glove-on-rail', 'glove-on-rail', 'glove-on-rail', 'sleeve-on-rail']);
  });

  it('is nothing new when nothing sterile is lost any more', () => {
    const ledger = log().tap('gloveR#1:fingers', 'railR:all').wait(5000).tap('gloveR#1:fingers', 'railR:all').tap('gloveR#1:fingers', 'pole:all').ledger();
    expect(ledger.breaks.length).toBe(1);
    expect(ledger.causes.filter(({ surface, rule }) => surface === 'gloveR#1:fingers' && rule !== null).map(({ from, break: number }) => [from, number])).toEqual([
      ['railR:all', 1],
      ['railR:all', null],
      ['pole:all', null],
    ]);
  });
});

describe('what a break spreads to', () => {
  it('goes from touch to touch with its depth', () => {
    const ledger = log().tap('gloveR#1:fingers', 'railR:all').tap('gloveR#1:fingers', 'gel#1:all').tap('gel#1:all', 'gloveL#1:palm').tap('gloveL#1:palm', 'drape#1:2').ledger();
    expect(told(ledger)).toEqual(['glove-on-rail major field: gloveR#1:fingers 0, gel#1:all 1, gloveL#1:palm 2, drape#1:2 3']);
    expect(ledger.breaks[0]!.spread[3]).toEqual({ surface: 'drape#1:2', depth: 3, step: 3, touch: 4, from: 'gloveL#1:palm' });
  });

  it('follows at once through touches that persist', () => {
    const ledger = log().touch('gloveR#1:palm', 'syringe#1:barrel').wait(100).touch('syringe#1:barrel', 'drape#1:1').wait(50).tap('gloveR#1:palm', 'railR:all').ledger();
    expect(told(ledger)).toEqual(['glove-on-rail major field: gloveR#1:palm 0, syringe#1:barrel 1, drape#1:1 2']);
    expect(ledger.breaks[0]!.spread.map(({ step }) => step)).toEqual([150, 150, 150]);
  });

  it('takes the shortest way when there are two', () => {
    const ledger = log().touch('gloveR#1:palm', 'gel#1:all').touch('gel#1:all', 'gloveL#1:palm').touch('gloveR#1:palm', 'gloveL#1:palm').wait().tap('gloveR#1:palm', 'pole:all').ledger();
    expect(told(ledger)).toEqual(['glove-on-pole major field: gloveR#1:palm 0, gel#1:all 1, gloveL#1:palm 1']);
  });

  it('does not go through touches that were over before', () => {
    const ledger = log().tap('gloveR#1:palm', 'gel#1:all').tap('gloveR#1:palm', 'railR:all').ledger();
    expect(spoiled(ledger)).toEqual(['gloveR#1:palm']);
  });

  it('is spread of the earlier break, not a new one, when something it had spoiled is met', () => {
    const ledger = log().tap('drape#1:1', 'bare:all').wait(3000).tap('gloveL#1:fingers', 'drape#1:1').ledger();
    expect(told(ledger)).toEqual(['cord-on-field major field: drape#1:1 0, gloveL#1:fingers 1']);
  });

  it('belongs to the break that came first, and the other is kept as a further cause', () => {
    const ledger = log().tap('gloveR#1:palm', 'railR:all').tap('gloveL#1:palm', 'pole:all').tap('gel#1:all', 'gloveR#1:palm').tap('gel#1:all', 'gloveL#1:palm').ledger();
    expect(told(ledger)).toEqual(['glove-on-rail major field: gloveR#1:palm 0, gel#1:all 1', 'glove-on-pole major field: gloveL#1:palm 0']);
    expect(ledger.spoiledBy('gel#1:all')).toBe(1);
    expect(ledger.causes.filter(({ surface }) => surface === 'gel#1:all').map(({ from, break: number }) => [from, number])).toEqual([
      ['gloveR#1:palm', 1],
      ['gloveL#1:palm', 2],
    ]);
    expect([1, 2, 3, 4].map((touch) => ledger.carried(touch))).toEqual([true, true, true, true]);
  });

  it('counts a touch that ends in the very step of the break: nobody could say which was first', () => {
    const before = log().touch('gloveR#1:palm', 'gel#1:all').wait(9).part('gloveR#1:palm', 'gel#1:all').touch('gloveR#1:palm', 'railR:all');
    expect(spoiled(before.ledger())).toEqual(['gel#1:all', 'gloveR#1:palm']);
    const apart = log().touch('gloveR#1:palm', 'gel#1:all').wait(9).part('gloveR#1:palm', 'gel#1:all').wait().touch('gloveR#1:palm', 'railR:all');
    expect(spoiled(apart.ledger())).toEqual(['gloveR#1:palm']);
  });
});

describe('how severe a break is', () => {
  it('is major while it stays away from device and site, and critical from then on', () => {
    const room = log().tap('gloveR#1:fingers', 'railR:all').tap('gloveR#1:fingers', 'gel#1:all');
    expect(told(room.ledger())[0]).toMatch(/^glove-on-rail major field/);
    room.tap('gloveR#1:fingers', 'site#1:all');
    expect(told(room.ledger())[0]).toMatch(/^glove-on-rail critical site/);
  });

  it('is critical when the device is reached', () => {
    expect(told(log().tap('gloveR#1:fingers', 'railR:all').tap('gloveR#1:fingers', 'syringe#1:needle').ledger())[0]).toMatch(/critical device/);
  });

  it('rises for both when two breaks meet at the site', () => {
    const ledger = log().tap('gloveR#1:palm', 'railR:all').tap('gloveL#1:palm', 'pole:all').tap('gloveR#1:palm', 'site#1:all').tap('gloveL#1:palm', 'site#1:all').ledger();
    expect(ledger.breaks.map(({ severity, reach }) => `${severity} ${reach}`)).toEqual(['critical site', 'critical site']);
    expect(ledger.breaks[1]!.spread.length).toBe(1);
  });

  it('stays minor for a hand below the field until its glove touches something else', () => {
    const room = log().enter('gloveL#1:palm', 'belowField').wait().leave('gloveL#1:palm', 'belowField');
    expect(told(room.ledger())).toEqual(['hand-below-field minor none: gloveL#1:palm 0, gloveL#1:fingers 0, gloveL#1:back 0, gloveL#1:cuff 0']);
    room.wait().tap('gloveL#1:fingers', 'drape#1:0');
    expect(told(room.ledger())[0]).toMatch(/^hand-below-field major field/);
  });
});

describe('notice and remedy', () => {
  it('a notice answers every break begun and not yet said, and nothing later', () => {
    const room = log().tap('gloveR#1:palm', 'railR:all').tap('gloveL#1:palm', 'pole:all').wait(50).notice().wait(500).tap('gown#1:lowerL', 'railL:all');
    const ledger = room.ledger();
    expect(ledger.breaks.map(({ noticedStep }) => noticedStep)).toEqual([52, 52, null]);
    expect(ledger.notices).toEqual([{ step: 52, breaks: [1, 2] }]);
  });

  it('a notice with nothing to answer is a false report', () => {
    const ledger = log().notice().tap('gloveR#1:palm', 'railR:all').notice().wait().notice().ledger();
    expect(ledger.notices.map(({ breaks }) => breaks)).toEqual([[], [1], []]);
  });

  it('a new glove answers the break when nothing else was spoiled', () => {
    const ledger = log().tap('gloveR#1:palm', 'railR:all').notice().wait(100).remedy('changeGlove', 'gloveR#1').ledger();
    expect(ledger.breaks[0]).toMatchObject({ remediedStep: 101, remedies: ['changeGlove'] });
    expect(ledger.markOf('gloveR#1:palm')).toBe('became');
    expect(ledger.markOf('gloveR#2:palm')).toBe('sterile');
  });

  it('a new glove does not answer what the old one had touched', () => {
    const room = log().tap('gloveR#1:palm', 'railR:all').tap('gloveR#1:palm', 'gel#1:all').remedy('changeGlove', 'gloveR#1');
    expect(room.ledger().breaks[0]).toMatchObject({ remediedStep: null, remedies: ['changeGlove'] });
    room.wait(10).remedy('replaceItem', 'gel#1');
    expect(room.ledger().breaks[0]).toMatchObject({ remediedStep: 12, remedies: ['changeGlove', 'replaceItem'] });
  });

  it('the wrong glove answers nothing', () => {
    expect(log().tap('gloveR#1:palm', 'railR:all').remedy('changeGlove', 'gloveL#1').ledger().breaks[0]).toMatchObject({ remediedStep: null, remedies: [] });
  });

  it('a new glove is spoiled again by what the old one left behind, as spread of the same break', () => {
    const ledger = log().tap('gloveR#1:palm', 'railR:all').tap('gloveR#1:palm', 'drape#1:1').remedy('changeGlove', 'gloveR#1').wait().tap('gloveR#2:fingers', 'drape#1:1').ledger();
    expect(told(ledger)).toEqual(['glove-on-rail major field: gloveR#1:palm 0, drape#1:1 1, gloveR#2:fingers 2']);
  });

  it('what was taken away spreads nothing further', () => {
    const ledger = log().touch('gloveR#1:palm', 'gel#1:all').wait().remedy('changeGlove', 'gloveR#1').wait().tap('gel#1:all', 'railR:all').ledger();
    expect(spoiled(ledger)).toEqual(['gel#1:all']);
  });

  it('an item thrown away and the glove changed after it answer the break together, also when the item is no longer below the field', () => {
    const room = log().tap('gloveR#1:palm', 'railR:all').tap('gloveR#1:palm', 'gel#1:all').enter('gel#1:all', 'offField').wait().leave('gel#1:all', 'offField').wait(100);
    expect(room.ledger().breaks[0]).toMatchObject({ remediedStep: null });
    expect(room.remedy('changeGlove', 'gloveR#1').ledger().breaks[0]).toMatchObject({ remediedStep: 103, remedies: ['changeGlove'] });
  });

  it('an item that fell and lies on the field again is not answered', () => {
    const room = log().tap('gloveR#1:palm', 'railR:all').tap('gloveR#1:palm', 'gel#1:all').enter('gel#1:all', 'offField').wait().leave('gel#1:all', 'offField').touch('gel#1:all', 'drape#1:1').wait(100);
    expect(room.remedy('changeGlove', 'gloveR#1').ledger().breaks[0]).toMatchObject({ remediedStep: null });
  });

  it('a spoiled item that is thrown away is answered, and open again when it is taken back', () => {
    const room = log().tap('gauze#1:all', 'pole:all').wait(20).tap('gauze#1:all', 'bin:all');
    expect(room.ledger().breaks[0]).toMatchObject({ remediedStep: 21, remedies: [] });
    room.wait(50).tap('gauze#1:all', 'gloveL#1:palm');
    expect(room.ledger().breaks[0]).toMatchObject({ remediedStep: null });
    expect(told(room.ledger())).toEqual(['item-on-pole major field: gauze#1:all 0, gloveL#1:palm 1']);
  });
});
