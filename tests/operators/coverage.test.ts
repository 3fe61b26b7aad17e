import { describe, expect, it } from 'vitest';
import { RULE_BOOK } from '../../src/core/ledger/rules/ruleBook.ts';
import type { BreakRun } from '../support/breakRun.ts';
import { ASSISTANT_RUNS } from './runs/assistant.ts';
import { BODY_RUNS } from './runs/body.ts';
import { CORD_RUNS } from './runs/cord.ts';
import { DRAPE_RUNS } from './runs/drape.ts';
import { FIXED_THING_RUNS } from './runs/fixedThings.ts';
import { GLOVE_CHANGE_RUNS } from './runs/gloveChange.ts';
import { GOWN_RUNS } from './runs/gown.ts';
import { PLACE_RUNS } from './runs/places.ts';
import { SHEATH_RUNS } from './runs/sheath.ts';

const RUNS: readonly BreakRun[] = [...ASSISTANT_RUNS, ...FIXED_THING_RUNS, ...BODY_RUNS, ...CORD_RUNS, ...DRAPE_RUNS, ...PLACE_RUNS, ...SHEATH_RUNS, ...GOWN_RUNS, ...GLOVE_CHANGE_RUNS];

/** Nothing else was broken, and every rule was in force. */
const isPure = ({ breaks, room }: BreakRun): boolean => breaks.length === 1 && (typeof room !== 'object' || room.rulesOff.length === 0);

/** What operators get wrong, with the rules that say so and a scripted run for each of them. */
const COVERED: Readonly<Record<string, readonly string[]>> = {
  'against a rail': ['glove-on-rail', 'sleeve-on-rail', 'item-on-rail', 'sheath-on-rail'],
  'against the pole': ['glove-on-pole', 'sleeve-on-pole', 'item-on-pole', 'sheath-on-pole'],
  'against the machine': ['glove-on-machine', 'sleeve-on-machine', 'item-on-machine'],
  'against table or bed': ['glove-on-table-edge', 'glove-on-bed'],
  'against bare cord or the tail of the sheath': ['glove-on-bare-cord', 'sleeve-on-bare-cord', 'glove-on-sheath-tail'],
  'against unprepared skin': ['glove-on-skin'],
  'the bare hand of an assistant who comes too close': ['sheath-on-bare-hand', 'glove-on-bare-hand', 'sleeve-on-bare-hand'],
  'loading: the bare probe against what is sterile': ['glove-on-bare-probe', 'sleeve-on-bare-probe', 'sheath-on-bare-probe', 'bare-probe-on-field'],
  'loading: bare cord against the outside of the sheath': ['sheath-on-bare-cord'],
  'loading: the sheath held too low, or torn': ['sheath-below-field', 'sheath-torn'],
  'loading: gel that is not sterile': ['glove-on-unsterile-item', 'unsterile-item-on-field', 'unsterile-gel'],
  'against mask or face': ['hand-on-face', 'item-on-face', 'sheath-on-face'],
  'a hand too low, or out of sight': ['hand-below-field', 'hand-out-of-sight'],
  'elbow and upper sleeve': ['sleeve-on-machine', 'body-on-field'],
  'the margin of the drape': ['glove-on-margin', 'item-on-margin', 'sheath-on-margin'],
  'an item fell off and was taken back': ['fallen-item-taken-back'],
  'cord that hung below the field drawn back': ['cord-hung-below-returned'],
  'bare cord or the tail on the field': ['cord-on-field', 'tail-on-field'],
  'the drape drifted': ['drape-slid-away', 'drape-slid-toward-site'],
  'an unsterile arm over the field': ['reach-over'],
  'the gown on floor, table edge, own clothes or a passer-by': ['sleeve-on-floor', 'sleeve-on-table-edge', 'sleeve-on-own-clothes', 'sleeve-on-person'],
  'bare skin where it must not be': ['gown-on-own-skin', 'glove-on-own-skin', 'own-skin-on-field', 'finger-past-cuff'],
  'gloving that leaves no barrier': ['cuff-shows', 'glove-torn', 'sleeved-hand-low'],
  'open gloving': ['glove-inside-out', 'glove-on-own-skin', 'passed-cuff-met'],
  'ties and card': ['sleeve-on-bare-hand', 'glove-on-card-end'],
  'waiting in gown and gloves': ['hand-in-armpit'],
  'something contaminated used at the site': ['unsterile-used-at-site'],
};

const OUT_OF_REACH = 'arms end above the floor, and the rim of the bin is below the waist: the glove is lost before it gets there';
const LEFT_BEFORE = 'what falls has left the field before it gets there, and counts as unsterile from then on';
const IN_DEPTH = 'the two pass each other in depth: the section does not follow such touches';
const COVERED_FIRST = 'the sleeve meets rail, drape or table edge before it';
const OTHERS_FIRST = 'possible, but no script got there without breaking another rule first; the ledger tries it by itself';
const NEVER_WAS = 'every glove, sheath and item of the shipped rooms is sterile at the start';

/** Rules without a scripted run, and why: the geometry of the room does not let an operator break them, or not before others. */
const NOT_PLAYED: Readonly<Record<string, string>> = {
  'glove-on-floor': OUT_OF_REACH, 'glove-on-bin': OUT_OF_REACH, 'sleeve-on-bin': OUT_OF_REACH,
  'sheath-on-floor': LEFT_BEFORE, 'sheath-on-bin': LEFT_BEFORE,
  'sleeve-on-bed': COVERED_FIRST, 'field-on-fixed-thing': 'only the underside of a laid drape lies on bed and rail, and no scripted pull turned it over',
  'item-on-bed': OTHERS_FIRST, 'sheath-on-bed': OTHERS_FIRST, 'item-on-table-edge': OTHERS_FIRST, 'sheath-on-table-edge': OTHERS_FIRST, 'sheath-on-machine': OTHERS_FIRST,
  'item-on-skin': OTHERS_FIRST, 'sheath-on-skin': OTHERS_FIRST, 'sleeve-on-skin': IN_DEPTH, 'sleeve-on-face': IN_DEPTH,
  'glove-on-person': OTHERS_FIRST, 'sheath-on-person': IN_DEPTH, 'item-on-person': IN_DEPTH, 'gown-inside-out': IN_DEPTH, 'bare-hand-on-field': OTHERS_FIRST,
  'item-on-bare-hand': 'the assistant takes only what has fallen, which counts as unsterile since then',
  'glove-on-own-clothes': IN_DEPTH, 'sheath-on-own-clothes': IN_DEPTH, 'item-on-own-clothes': IN_DEPTH,
  'glove-on-upper-sleeve': IN_DEPTH, 'sleeve-on-upper-sleeve': IN_DEPTH, 'sheath-on-upper-sleeve': IN_DEPTH, 'item-on-upper-sleeve': IN_DEPTH,
  'item-on-bare-cord': IN_DEPTH, 'sleeve-on-sheath-tail': IN_DEPTH, 'sheath-on-sheath-tail': IN_DEPTH, 'item-on-sheath-tail': IN_DEPTH,
  'prepared-skin-touched': 'what is spoiled carries its own break on to the skin, and bare cord drawn so far meets the drape first',
  'glove-on-underside': OTHERS_FIRST, 'sleeve-on-underside': IN_DEPTH, 'sheath-on-underside': OTHERS_FIRST, 'item-on-underside': OTHERS_FIRST,
  'unsterile-thing-touched': NEVER_WAS,
  'item-on-bare-probe': IN_DEPTH, 'sleeve-on-unsterile-item': IN_DEPTH, 'sheath-on-unsterile-item': IN_DEPTH, 'item-on-unsterile-item': IN_DEPTH,
};

/** Rules that a run breaks, or that made a break of it worse at the site. */
const rulesOf = (runs: readonly BreakRun[]): Set<string> => new Set(runs.flatMap(({ breaks }) => breaks.flatMap(({ rule, escalatedBy = [] }) => [rule, ...escalatedBy])));

describe('Scripted breaks', () => {
  it('are thirty runs and more that break exactly one rule, with every rule in force', () => {
    expect(RUNS.filter(isPure).length).toBeGreaterThanOrEqual(30);
  });

  it.each(Object.entries(COVERED))('%s', (_, rules) => {
    const played = rulesOf(RUNS);
    for (const rule of rules) expect(played, rule).toContain(rule);
  });

  it('all but a few rules that are played are played alone', () => {
    const pure = rulesOf(RUNS.filter(isPure));
    // Laying down bare cord brings sheathed cord that hung below along; unprepared skin must first be bared. A bottle
    // is taken before it gets on to the field or its gel into a sheath; and the cord of a bare probe that falls meets more than one thing on its way.
    expect([...rulesOf(RUNS)].filter((rule) => !pure.has(rule))).toEqual(['glove-on-skin', 'cord-on-field', 'unsterile-item-on-field', 'unsterile-gel', 'sheath-on-bare-cord']);
  });

  it('of each rule of the book there is a run, or a reason why not', () => {
    const played = rulesOf(RUNS);
    const named = new Set([...played, ...Object.keys(NOT_PLAYED)]);
    expect(RULE_BOOK.map(({ id }) => id).filter((id) => !named.has(id))).toEqual([]);
    expect(Object.keys(NOT_PLAYED).filter((id) => played.has(id) || !RULE_BOOK.some((rule) => rule.id === id))).toEqual([]);
    expect([...played].filter((id) => !Object.values(COVERED).flat().includes(id))).toEqual([]);
  });
});
