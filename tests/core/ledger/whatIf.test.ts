import { describe, expect, it } from 'vitest';
import { replayLedger } from '../../../src/core/ledger/replayLedger.ts';
import { RULE_BOOK } from '../../../src/core/ledger/rules/ruleBook.ts';
import { insertRemedy, removeFacts, removeTouch } from './plainWhatIf.ts';
import type { Log } from './log.ts';
import { log, spoiled, told } from './log.ts';

const replay = (facts: Log['facts']): ReturnType<typeof replayLedger> => replayLedger(facts, RULE_BOOK);

/** A glove on the rail takes a packet, the packet spoils the drape, and later the glove takes the syringe to the site. */
const story = (): Log =>
  log().tap('gloveR#1:palm', 'railR:all').wait(99).tap('gloveR#1:palm', 'gel#1:all').wait(99).tap('gel#1:all', 'drape#1:1').wait(99).tap('gloveR#1:palm', 'syringe#1:barrel').tap('syringe#1:barrel', 'site#1:all');

describe('what if', () => {
  it('that touch had not happened: only what came by it is spared', () => {
    expect(spoiled(replay(story().facts))).toEqual(['drape#1:1', 'gel#1:all', 'gloveR#1:palm', 'site#1:all', 'syringe#1:barrel']);
    expect(spoiled(replay(removeTouch(story().facts, 2)))).toEqual(['gloveR#1:palm', 'site#1:all', 'syringe#1:barrel']);
    expect(spoiled(replay(removeTouch(story().facts, 4)))).toEqual(['drape#1:1', 'gel#1:all', 'gloveR#1:palm']);
  });

  it('the mishap had not happened, with all the touches that were part of it', () => {
    const { facts } = log().tap('gloveR#1:palm', 'railR:all').tap('gloveR#1:fingers', 'railR:all').tap('gloveR#1:palm', 'railR:all').tap('gloveR#1:fingers', 'gel#1:all');
    const ledger = replay(facts);
    expect(ledger.breaks.length).toBe(1);
    expect(spoiled(replay(removeFacts(facts, ledger.rootFacts(1))))).toEqual([]);
    const later = log().tap('gloveR#1:palm', 'railR:all').wait(500).tap('gloveR#1:palm', 'railR:all');
    expect(told(replay(removeFacts(later.facts, later.ledger().rootFacts(1))))).toEqual(['glove-on-rail major none: gloveR#1:palm 0']);
  });

  it('leaves no end of a touch that is no longer there', () => {
    const { facts } = log().tap('gloveR#1:palm', 'railR:all').tap('gloveL#1:palm', 'gel#1:all');
    for (const without of [removeTouch(facts, 1), removeFacts(facts, replay(facts).rootFacts(1))])
      expect(without.filter(({ kind }) => kind.startsWith('touch')).map((fact) => ('touch' in fact ? `${fact.kind} ${fact.touch}` : ''))).toEqual(['touch.began 2', 'touch.ended 2']);
  });

  it('a hand had not gone below the field', () => {
    const { facts } = log().enter('gloveL#1:palm', 'belowField').wait(9).leave('gloveL#1:palm', 'belowField').tap('gloveL#1:palm', 'drape#1:1');
    expect(replay(removeFacts(facts, replay(facts).rootFacts(1))).breaks).toEqual([]);
  });

  it('the glove had been changed in time: nothing later is spoiled, and what was spoiled before stays so', () => {
    const after = (step: number): string[] => spoiled(replay(insertRemedy(story().facts, { step, remedy: 'changeGlove', things: ['gloveR#1'] })));
    expect(after(50)).toEqual(['gloveR#1:palm']);
    expect(after(150)).toEqual(['drape#1:1', 'gel#1:all', 'gloveR#1:palm']);
    expect(replay(insertRemedy(story().facts, { step: 50, remedy: 'changeGlove', things: ['gloveR#1'] })).breaks[0]).toMatchObject({ remediedStep: 50, remedies: ['changeGlove'] });
  });

  it('the glove had been changed while it still lay on the rail: the new one is spoiled there too', () => {
    const { facts } = log().touch('gloveR#1:palm', 'railR:all').wait(300).part('gloveR#1:palm', 'railR:all').wait().tap('gloveR#1:palm', 'gel#1:all');
    expect(told(replay(insertRemedy(facts, { step: 10, remedy: 'changeGlove', things: ['gloveR#1'] })))).toEqual([
      'glove-on-rail major none: gloveR#1:palm 0',
      'glove-on-rail major field: gloveR#1~:palm 0, gel#1:all 1',
    ]);
  });

  it('a fresh drape keeps its margin where the old one had it', () => {
    const { facts } = log().enter('drape#1:3', 'margin').tap('bare:all', 'drape#1:1').wait(20).tap('gloveR#1:palm', 'drape#1:3').tap('gloveL#1:palm', 'drape#1:1');
    const ledger = replay(insertRemedy(facts, { step: 10, remedy: 'coverDrape', things: ['drape#1'] }));
    expect(told(ledger)).toEqual(['cord-on-field major field: drape#1:1 0', 'glove-on-margin major none: gloveR#1:palm 0']);
  });

  it('a remedy that the run did take later goes on meaning the same glove', () => {
    const { facts } = log().tap('gloveR#1:palm', 'railR:all').wait(300).tap('gloveR#1:palm', 'pole:all').remedy('changeGlove', 'gloveR#1').wait().tap('gloveR#2:palm', 'drape#1:1');
    const ledger = replay(insertRemedy(facts, { step: 100, remedy: 'changeGlove', things: ['gloveR#1'] }));
    expect(ledger.breaks.map(({ rule, remediedStep }) => `${rule} ${remediedStep}`)).toEqual(['glove-on-rail 100', 'glove-on-pole 302']);
    expect(ledger.isSpoiled('drape#1:1')).toBe(false);
  });
});
