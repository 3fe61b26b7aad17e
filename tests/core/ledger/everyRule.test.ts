import { describe, expect, it } from 'vitest';
import { RULE_BOOK, rulesInForce } from '../../../src/core/ledger/rules/ruleBook.ts';
import { scenarioSchema } from '../../../src/core/scenario/schema.ts';
import type { Log } from './log.ts';
import { log, spoiled } from './log.ts';

type Play = (room: Log) => Log;
const tap = (a: string, b: string): Play => (room) => room.tap(a, b);

/** For each rule, what breaks it and what comes near it and does not. */
const CASES: readonly (readonly [string, Play, Play])[] = [
  ...(
    [
      ['glove', 'gloveR#1:palm'],
      ['sleeve', 'gown#1:lowerR'],
      ['sheath', 'cord#1:1'],
      ['item', 'syringe#1:needle'],
    ] as const
  ).flatMap(([subject, id]): (readonly [string, Play, Play])[] => [
    // The near neighbour of a fixed thing is the drape that covers it.
    [`${subject}-on-rail`, tap(id, 'railR:all'), tap(id, 'drape#1:1')],
    [`${subject}-on-person`, tap(id, 'person:all'), tap('person:all', 'arm:outerL')],
    [`${subject}-on-pole`, tap(id, 'pole:all'), tap(id, 'drape#1:2')],
    [`${subject}-on-machine`, tap(id, 'machine:all'), tap(id, 'cover#1:all')],
    [`${subject}-on-bed`, tap('bed:all', id), tap('drape#1:3', id)],
    [`${subject}-on-table-edge`, tap(id, 'tableEdge:all'), tap(id, 'table:all')],
    [`${subject}-on-skin`, tap(id, 'patient:skin'), tap(id, 'patient:prep')],
    [subject === 'glove' ? 'hand-on-face' : `${subject}-on-face`, tap(id, 'face:all'), tap(id, 'gown#1:front')],
    [`${subject}-on-own-clothes`, tap(id, 'clothes:all'), tap('clothes:all', 'gown#1:inside')],
    [`${subject}-on-upper-sleeve`, tap(id, 'arm:outerL'), tap(id, 'gown#1:lowerL')],
    [`${subject}-on-bare-hand`, tap(id, 'assistant:hand'), tap('assistant:hand', 'arm:outerL')],
    [`${subject}-on-bare-cord`, tap(id, 'bare:all'), tap(id, 'cord#1:2')],
    [`${subject}-on-sheath-tail`, tap(subject === 'sheath' ? 'probe#1:head' : id, 'cord#1:tail'), tap(id, 'cord#1:3')],
    [`${subject}-on-underside`, tap(id, 'drape#1:under'), tap(id, 'drape#1:0')],
  ]),
  ['glove-on-floor', tap('gloveL#1:back', 'floor:all'), tap('drape#1:under', 'floor:all')],
  ['sleeve-on-floor', tap('gown#1:front', 'floor:all'), tap('arm:outerL', 'floor:all')],
  ['sheath-on-floor', tap('cord#1:0', 'floor:all'), (room) => room.enter('cord#1:0', 'offField').tap('cord#1:0', 'floor:all')],
  ['glove-on-bin', tap('gloveL#1:back', 'bin:all'), tap('gauze#1:all', 'bin:all')],
  ['sleeve-on-bin', tap('gown#1:lowerL', 'bin:all'), tap('arm:outerL', 'bin:all')],
  ['sheath-on-bin', tap('cord#1:0', 'bin:all'), tap('bare:all', 'bin:all')],
  ['field-on-fixed-thing', tap('drape#1:2', 'pole:all'), (room) => room.enter('drape#1:3', 'margin').tap('drape#1:3', 'pole:all')],
  ['bare-hand-on-field', tap('assistant:hand', 'drape#1:2'), (room) => room.enter('drape#1:3', 'margin').tap('assistant:hand', 'drape#1:3')],
  ['body-on-field', tap('arm:outerR', 'drape#1:0'), tap('gown#1:lowerR', 'drape#1:0')],
  ['prepared-skin-touched', tap('arm:outerR', 'site#1:all'), tap('gloveR#1:fingers', 'site#1:all')],
  ['cord-on-field', tap('bare:all', 'drape#1:1'), tap('cord#1:0', 'drape#1:1')],
  ['tail-on-field', tap('cord#1:tail', 'drape#1:1'), tap('cord#1:tail', 'cord#1:3')],
  [
    'cord-hung-below-returned',
    (room) => room.touch('cord#1:2', 'drape#1:1').enter('cord#1:2', 'offField').wait(600).leave('cord#1:2', 'offField'),
    (room) => room.touch('cord#1:2', 'drape#1:1').enter('cord#1:2', 'offField').wait(600).tap('cord#1:2', 'drape#1:2').tap('cord#1:2', 'bed:all'),
  ],
  ['glove-on-margin', (room) => room.enter('drape#1:3', 'margin').tap('gloveR#1:palm', 'drape#1:3'), (room) => room.enter('drape#1:3', 'margin').tap('gown#1:front', 'drape#1:3').tap('gloveR#1:palm', 'drape#1:2')],
  ['item-on-margin', (room) => room.enter('drape#1:3', 'margin').tap('gauze#1:all', 'drape#1:3'), (room) => room.enter('drape#1:3', 'margin').tap('gauze#1:all', 'drape#1:2')],
  ['sheath-on-margin', (room) => room.enter('drape#1:3', 'margin').tap('probe#1:head', 'drape#1:3'), (room) => room.enter('drape#1:3', 'margin').tap('cord#1:1', 'drape#1:3')],
  ['drape-slid-toward-site', (room) => room.drift('toward'), (room) => room.touch('drape#1:under', 'site#1:all')],
  ['drape-slid-away', (room) => room.drift('away'), (room) => room.touch('drape#1:1', 'patient:skin')],
  ['hand-below-field', (room) => room.enter('gloveR#1:palm', 'belowField'), (room) => room.enter('gown#1:lowerR', 'belowField')],
  ['hand-out-of-sight', (room) => room.enter('gloveR#1:palm', 'outOfSight'), (room) => room.enter('arm:outerR', 'outOfSight')],
  ['glove-on-own-skin', tap('gloveR#1:fingers', 'skin:hand'), tap('gloveR#1:fingers', 'gown#1:knitL')],
  ['gown-on-own-skin', tap('gown#1:front', 'skin:hand'), tap('gown#1:inside', 'skin:hand')],
  ['finger-past-cuff', tap('skin:hand', 'gown#1:knitL'), tap('gown#1:lowerL', 'gown#1:knitL')],
  ['own-skin-on-field', tap('skin:hand', 'wrapper#1:all'), tap('gown#1:knitL', 'wrapper#1:all')],
  ['gown-inside-out', tap('drape#1:2', 'gown#1:inside'), tap('arm:outerL', 'gown#1:inside')],
  ['glove-inside-out', tap('gloveR#1:palm', 'gloveL#1:turnedBack'), tap('skin:hand', 'gloveL#1:turnedBack')],
  ['passed-cuff-met', tap('drape#1:2', 'gown#1:passedL'), tap('skin:hand', 'gown#1:passedL')],
  ['cuff-shows', (room) => room.enter('gown#1:knitL', 'uncovered'), (room) => room.enter('gloveL#1:cuff', 'uncovered')],
  ['sleeved-hand-low', (room) => room.enter('gown#1:knitL', 'belowField'), (room) => room.enter('gown#1:lowerL', 'belowField')],
  ['hand-in-armpit', (room) => room.enter('gloveL#1:fingers', 'armpit'), (room) => room.enter('gown#1:lowerL', 'armpit')],
  ['glove-on-card-end', tap('gloveL#1:fingers', 'card#1:far'), tap('assistant:hand', 'card#1:far')],
  ['glove-torn', (room) => room.tearGlove('gloveL#1:palm'), (room) => room.tap('gloveL#1:palm', 'gloveR#1:palm')],
  ['reach-over', (room) => room.enter('arm:outerR', 'overField'), (room) => room.enter('gown#1:lowerR', 'overField')],
  [
    'fallen-item-taken-back',
    (room) => room.enter('gel#1:all', 'offField').wait(200).tap('gel#1:all', 'gloveL#1:fingers'),
    (room) => room.enter('gel#1:all', 'offField').wait(200).tap('gel#1:all', 'drape#1:3').tap('gel#1:all', 'floor:all').tap('gel#1:all', 'bed:all'),
  ],
  [
    'unsterile-thing-touched',
    (room) => room.add({ ...SPOILED_BEFORE }).tap('gloveL#1:palm', 'old#1:all'),
    (room) => room.add({ ...SPOILED_BEFORE, initial: 'sterile' }).tap('gloveL#1:palm', 'old#1:all'),
  ],
  ['glove-on-bare-probe', tap('gloveR#1:palm', 'bareProbe:all'), tap('gloveR#1:palm', 'probe#1:head')],
  ['sleeve-on-bare-probe', tap('gown#1:lowerR', 'bareProbe:all'), tap('gown#1:lowerR', 'probe#1:head')],
  // It goes into the mouth along the inside, which is not sterile either.
  ['sheath-on-bare-probe', tap('cord#1:1', 'bareProbe:all'), tap('cord#1:inside', 'bareProbe:all')],
  ['item-on-bare-probe', tap('gauze#1:all', 'bareProbe:all'), tap('gauze#1:all', 'probe#1:head')],
  ['bare-probe-on-field', tap('bareProbe:all', 'drape#1:2'), (room) => room.enter('drape#1:3', 'margin').tap('bareProbe:all', 'drape#1:3')],
  ['glove-on-unsterile-item', tap('gloveL#1:fingers', 'bottle#1:all'), tap('gloveL#1:fingers', 'gel#1:all')],
  ['sleeve-on-unsterile-item', tap('gown#1:lowerL', 'bottle#1:all'), tap('gown#1:lowerL', 'gel#1:all')],
  ['sheath-on-unsterile-item', tap('probe#1:head', 'bottle#1:all'), tap('probe#1:head', 'gel#1:all')],
  ['item-on-unsterile-item', tap('gauze#1:all', 'bottle#1:all'), tap('gauze#1:all', 'gel#1:all')],
  ['unsterile-item-on-field', tap('bottle#1:all', 'table:all'), (room) => room.enter('drape#1:3', 'margin').tap('bottle#1:all', 'drape#1:3')],
  // Cord that hangs off the field is judged when it comes back.
  ['sheath-below-field', (room) => room.enter('cord#1:1', 'belowField'), (room) => room.enter('cord#1:1', 'offField')],
  // Nothing can be lost at the tail: it counts as unsterile.
  ['sheath-torn', (room) => room.tear('probe#1:head'), (room) => room.tear('cord#1:tail')],
  ['unsterile-gel', (room) => room.gel('bottle#1:all', 'probe#1:head'), (room) => room.gel('bottle#1:all', 'cord#1:tail')],
  ['unsterile-used-at-site', (room) => room.enter('gel#1:all', 'offField').wait().use('gel#1:all'), (room) => room.use('gel#1:all')],
];

const SPOILED_BEFORE = { id: 'old#1:all', thing: 'old#1', part: 'all', kind: 'item', role: 'sterile', initial: 'unsterile', reach: 'field', words: 'old packet' } as const;

describe('every rule of the book', () => {
  it('has a case here', () => {
    expect(CASES.map(([id]) => id).sort()).toEqual(RULE_BOOK.map(({ id }) => id).sort());
  });

  it.each(CASES)('%s is broken by what it speaks of, and not by its near neighbour', (id, breaks, near) => {
    expect(breaks(log()).ledger().breaks.map(({ rule }) => rule)).toEqual([id]);
    const harmless = near(log()).ledger();
    expect(harmless.breaks).toEqual([]);
    expect(spoiled(harmless)).toEqual([]);
  });

  it.each(CASES)('%s neither judges nor spoils when it is switched off', (id, breaks) => {
    const rules = rulesInForce({ rulesOff: [id], policy: scenarioSchema.shape.policy.parse({}) });
    const ledger = breaks(log()).ledger(rules);
    expect(ledger.breaks).toEqual([]);
    expect(spoiled(ledger)).toEqual([]);
  });

  it('about reaching over is off where local policy asks for a touch', () => {
    const policy = scenarioSchema.shape.policy.parse({ reachOver: 'touchOnly' });
    expect(rulesInForce({ rulesOff: [], policy }).map(({ id }) => id)).not.toContain('reach-over');
    expect(rulesInForce({ rulesOff: [], policy }).length).toBe(RULE_BOOK.length - 1);
  });
});
