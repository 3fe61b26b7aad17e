import { describe, expect, it } from 'vitest';
import { replayLedger } from '../../../src/core/ledger/replayLedger.ts';
import { RULE_BOOK } from '../../../src/core/ledger/rules/ruleBook.ts';
import { log, spoiled, surface, told } from './log.ts';

describe('the margin of the field', () => {
  it('counts as unsterile without a break, and stays so when it is drawn in', () => {
    const room = log().enter('drape#1:3', 'margin').wait(10).leave('drape#1:3', 'margin').wait(10);
    expect(room.ledger().breaks).toEqual([]);
    expect(room.ledger().markOf('drape#1:3')).toBe('unsterile');
    expect(told(room.tap('gloveR#1:palm', 'drape#1:3').ledger())).toEqual(['glove-on-margin major none: gloveR#1:palm 0']);
  });

  it('coming under a hand that rests there is no break; the next touch is', () => {
    const room = log().touch('gloveR#1:palm', 'drape#1:3').wait(5).enter('drape#1:3', 'margin').wait(5);
    expect(room.ledger().breaks).toEqual([]);
    expect(room.part('gloveR#1:palm', 'drape#1:3').wait().tap('gloveR#1:palm', 'drape#1:3').ledger().breaks.length).toBe(1);
  });

  it('keeps what an earlier break had made of it', () => {
    const ledger = log().tap('bare:all', 'drape#1:3').enter('drape#1:3', 'margin').wait().tap('gown#1:lowerL', 'drape#1:3').ledger();
    expect(told(ledger)).toEqual(['cord-on-field major field: drape#1:3 0, gown#1:lowerL 1']);
  });
});

describe('cord that hangs', () => {
  it('may touch what it likes there, and a hand that takes it is spoiled', () => {
    const room = log().enter('cord#1:2', 'offField').wait().touch('cord#1:2', 'bed:all').touch('cord#1:2', 'railR:all').touch('cord#1:2', 'drape#1:3').wait();
    expect(room.ledger().breaks).toEqual([]);
    expect(room.ledger().markOf('cord#1:2')).toBe('unsterile');
    expect(told(room.tap('gloveL#1:palm', 'cord#1:2').ledger())).toEqual(['cord-hung-below-returned major none: gloveL#1:palm 0']);
  });

  it('spoils what it is drawn over, as one break', () => {
    const ledger = log().enter('cord#1:2', 'offField').wait(50).leave('cord#1:2', 'offField').touch('cord#1:2', 'drape#1:2').wait(300).touch('cord#1:2', 'drape#1:1').ledger();
    expect(told(ledger)).toEqual(['cord-hung-below-returned major field: drape#1:2 0, cord#1:2 0, drape#1:1 1']);
  });

  it('pulled up by a hand is one break with all that it comes to lie on', () => {
    const room = log().enter('cord#1:2', 'offField').enter('cord#1:3', 'offField').touch('cord#1:2', 'drape#1:3').wait(9).touch('gloveL#1:palm', 'cord#1:2').wait(500);
    room.leave('cord#1:2', 'offField').wait(30).leave('cord#1:3', 'offField').touch('cord#1:3', 'drape#1:1');
    expect(told(room.ledger())).toEqual(['cord-hung-below-returned major field: gloveL#1:palm 0, drape#1:3 0, cord#1:2 0, drape#1:1 0, cord#1:3 0']);
    expect(told(room.wait(900).tap('gloveR#1:palm', 'cord#1:3').ledger()).length).toBe(1);
  });

  it('is answered by a new sheath and a cover on the drape together', () => {
    const room = log().enter('cord#1:2', 'offField').wait(50).leave('cord#1:2', 'offField').tap('cord#1:2', 'drape#1:2').remedy('newSheath', 'cord#1');
    expect(room.ledger().breaks[0]).toMatchObject({ remediedStep: null, remedies: ['newSheath'] });
    expect(room.wait(9).remedy('coverDrape', 'drape#1').ledger().breaks[0]).toMatchObject({ remediedStep: 60, remedies: ['newSheath', 'coverDrape'] });
  });

  it('that was spoiled on the field goes on spoiling when it hangs and comes back', () => {
    const ledger = log().tap('cord#1:2', 'bare:all').enter('cord#1:2', 'offField').wait().leave('cord#1:2', 'offField').tap('cord#1:2', 'drape#1:1').ledger();
    expect(told(ledger)).toEqual(['sheath-on-bare-cord major field: cord#1:2 0, drape#1:1 1']);
  });
});

describe('an item that fell', () => {
  it('into the bin or on to the floor needs no zone to be known as lost', () => {
    const ledger = log().tap('gel#1:all', 'floor:all').tap('gel#1:all', 'gloveR#1:fingers').tap('gel#1:all', 'drape#1:0').ledger();
    expect(told(ledger)).toEqual(['fallen-item-taken-back major field: gloveR#1:fingers 0, gel#1:all 0, drape#1:0 1']);
  });

  it('while the hand still held it is a break only when it is taken anew', () => {
    const room = log().touch('gloveR#1:palm', 'gel#1:all').enter('gel#1:all', 'offField').wait(10).part('gloveR#1:palm', 'gel#1:all').wait();
    expect(room.ledger().breaks).toEqual([]);
    expect(room.tap('gloveR#1:palm', 'gel#1:all').ledger().breaks.length).toBe(1);
  });

  it('and is used at the site takes its break to the site, not a second one', () => {
    const ledger = log().enter('gel#1:all', 'offField').wait(9).touch('gloveR#1:fingers', 'gel#1:all').wait(9).use('gel#1:all').ledger();
    expect(told(ledger)).toEqual(['fallen-item-taken-back critical site: gloveR#1:fingers 0, gel#1:all 0, site#1:all 1']);
    expect(ledger.breaks[0]!.escalatedBy).toEqual(['unsterile-used-at-site']);
  });
});

describe('use at the site', () => {
  it('of what an earlier break had spoiled is that break come to the site', () => {
    const room = log().tap('gloveR#1:palm', 'railR:all').tap('gloveR#1:palm', 'syringe#1:barrel').wait(400).use('syringe#1:barrel').wait().use('syringe#1:barrel');
    const ledger = room.ledger();
    expect(told(ledger)).toEqual(['glove-on-rail critical site: gloveR#1:palm 0, syringe#1:barrel 1, site#1:all 2']);
    expect(ledger.breaks[0]!.spread[2]).toEqual({ surface: 'site#1:all', depth: 2, step: 402, touch: null, from: 'syringe#1:barrel' });
    expect(ledger.breaks[0]!.escalatedBy).toEqual(['unsterile-used-at-site']);
  });

  it('where the skin was never prepared leaves that skin what it was', () => {
    const bare = surface('bare#1:site', 'site', { initial: 'unsterile' });
    const { facts } = log().add(bare).tap('gauze#1:all', 'pole:all');
    const ledger = replayLedger([...facts, { kind: 'used', step: 9, surface: 'gauze#1:all', site: bare.id, x: 0, y: 0 }], RULE_BOOK);
    expect(told(ledger)).toEqual(['item-on-pole critical site: gauze#1:all 0']);
    expect(ledger.markOf(bare.id)).toBe('unsterile');
  });

  it('of what was never sterile is a break of its own', () => {
    const ledger = log().use('bare:all').ledger();
    expect(told(ledger)).toEqual(['unsterile-used-at-site critical site: site#1:all 0']);
    expect(ledger.breaks[0]).toMatchObject({ surface: 'site#1:all', against: 'bare:all' });
    expect('escalatedBy' in ledger.breaks[0]!).toBe(false);
  });
});

describe('an arm over the field', () => {
  it('is over when it is withdrawn, and can still be said afterwards', () => {
    const ledger = log().enter('arm:outerR', 'overField').wait(100).leave('arm:outerR', 'overField').wait(500).notice().ledger();
    expect(told(ledger)).toEqual(['reach-over minor none: ']);
    expect(ledger.breaks[0]).toMatchObject({ surface: 'arm:outerR', against: null, remediedStep: 100, noticedStep: 600 });
  });

  it('that comes and goes within two seconds is one; later it is another', () => {
    const room = log().enter('arm:outerR', 'overField').wait(400).leave('arm:outerR', 'overField').wait(200).enter('arm:outerR', 'overField').wait(5);
    expect(room.ledger().breaks.map(({ remediedStep }) => remediedStep)).toEqual([null]);
    room.leave('arm:outerR', 'overField').wait(241).enter('arm:outerR', 'overField');
    expect(room.ledger().breaks.length).toBe(2);
  });

  it('is another when it is the other arm', () => {
    const ledger = log().enter('arm:outerR', 'overField').wait(10).enter('arm:outerL', 'overField').wait(50).leave('arm:outerR', 'overField').ledger();
    expect(ledger.breaks.map(({ surface, remediedStep }) => `${surface} ${remediedStep}`)).toEqual(['arm:outerR 60', 'arm:outerL null']);
  });

  it('is no new break when a break had spoiled it before', () => {
    const ledger = log().tap('gloveR#1:palm', 'railR:all').enter('gloveR#1:palm', 'overField').ledger();
    expect(ledger.breaks.map(({ rule }) => rule)).toEqual(['glove-on-rail']);
  });
});

describe('a hand below the field or out of sight', () => {
  it('loses only what was still sterile of its glove', () => {
    const ledger = log().tap('gloveR#1:palm', 'railR:all').enter('gloveR#1:palm', 'outOfSight').ledger();
    expect(told(ledger)).toEqual(['glove-on-rail major none: gloveR#1:palm 0', 'hand-out-of-sight minor none: gloveR#1:fingers 0, gloveR#1:back 0, gloveR#1:cuff 0']);
    expect(ledger.breaks[1]!.surface).toBe('gloveR#1:fingers');
  });

  it('is one break when it goes there again, and takes along what it holds', () => {
    const ledger = log().touch('gloveR#1:palm', 'gel#1:all').enter('gloveR#1:palm', 'belowField').wait().leave('gloveR#1:palm', 'belowField').wait(900).enter('gloveR#1:palm', 'belowField').ledger();
    expect(told(ledger)).toEqual(['hand-below-field major field: gloveR#1:palm 0, gloveR#1:fingers 0, gloveR#1:back 0, gloveR#1:cuff 0, gel#1:all 1']);
  });
});

describe('a drape that slides', () => {
  it('toward the site spoils it until it is prepared anew', () => {
    const room = log().drift('toward').wait(60).drift('toward').notice();
    expect(told(room.ledger())).toEqual(['drape-slid-toward-site critical site: site#1:all 0']);
    const ledger = room.wait(100).remedy('prepAndDrape', 'site#1', 'drape#1').ledger();
    expect(ledger.breaks[0]).toMatchObject({ noticedStep: 60, remediedStep: 160, remedies: ['prepAndDrape'] });
    expect(ledger.markOf('site#2:all')).toBe('prepared');
  });

  it('away is a break for each drape', () => {
    const { facts } = log().drift('away').wait(10);
    const left = facts.map((fact) => (fact.kind === 'drape.drifted' ? { ...fact, drape: 'other#1:0' } : fact)).filter(({ kind }) => kind === 'drape.drifted');
    expect(replayLedger([...facts, ...left], RULE_BOOK).breaks.length).toBe(2);
  });

  it('away is one break until the bare skin is covered', () => {
    const room = log().drift('away').wait(900).drift('away');
    expect(told(room.ledger())).toEqual(['drape-slid-away major none: ']);
    room.wait(9).remedy('coverDrape', 'drape#1');
    expect(room.ledger().breaks[0]).toMatchObject({ remediedStep: 909, remedies: ['coverDrape'] });
    expect(spoiled(room.ledger())).toEqual([]);
    expect(room.wait(900).drift('away').ledger().breaks.length).toBe(2);
  });
});
