import { SIDES, type Side } from '../../base/side.ts';
import { HAND_PARTS, type HandPart } from '../handShape.ts';
import type { Scene } from '../scene.ts';
import type { Slot, Surfaces } from '../surfaces.ts';
import { isGloved, isOut, type Dress } from './dress.ts';
import { GOWN_LINKS, HAND_ALONG_M, INSIDE_LINKS, SLEEVE_LINKS, sleeveLeftM } from './gownFacts.ts';

/** Links of a hanging side that are one surface. */
const LINKS_TOGETHER = 4;
/** Of a sleeve the part at the armhole that is not kept sterile, half of the upper arm (m). */
const OUTER_M = 0.16;

/** Surfaces of the newest gown, by id. */
interface GownIds {
  readonly inside: string;
  readonly front: string;
  readonly hem: string;
  readonly edge: Readonly<Record<Side, readonly string[]>>;
  readonly knit: Readonly<Record<Side, string>>;
  readonly lower: Readonly<Record<Side, string>>;
  readonly upper: Readonly<Record<Side, string>>;
  readonly outer: Readonly<Record<Side, string>>;
}

interface Ids {
  gown: GownIds;
  wrapper: string;
  readonly gloves: Record<Side, Readonly<Record<HandPart | 'turnedBack', string>>>;
  /** Knit cuffs of this gown that a hand has passed since, each as it was before. */
  passed: readonly string[];
  readonly skin: Readonly<Record<Side, { readonly hand: string; readonly arm: string }>>;
  card: { readonly own: string; readonly far: string };
  readonly clothes: string;
}

/** Which surfaces hands and arms show while gown and gloves are put on: skin, cloth or glove. */
export class GownSurfaces {
  ids: Ids;

  constructor(
    private readonly scene: Scene,
    private readonly surfaces: Surfaces,
  ) {
    const skinOf = (side: Side) => ({
      hand: surfaces.add(`skin.${side}`, 'hand', 'ownSkin', 'none', 'unsterile', 'none', `bare ${side} hand`),
      arm: surfaces.add(`skin.${side}`, 'arm', 'ownSkin', 'none', 'unsterile', 'none', `bare ${side} arm`),
    });
    const skin = { right: skinOf('right'), left: skinOf('left') };
    const gloves = { right: this.gloveIds('right'), left: this.gloveIds('left') };
    const clothes = surfaces.add('clothes', '', 'ownClothes', 'none', 'unsterile', 'none', 'operator’s own clothes');
    this.ids = { gown: this.gownIds(), wrapper: this.wrapperId(), gloves, passed: [], skin, card: this.cardIds(), clothes };
    const { table, tableSide, person } = surfaces.slots.gown!;
    surfaces.wear(tableSide, surfaces.add('gownTable', '', 'tableEdge', 'none', 'unsterile', 'none', 'side of the gown table'));
    surfaces.wear(person, surfaces.add('person', '', 'person', 'none', 'unsterile', 'none', 'somebody who passes by'));
    surfaces.wear(table, this.ids.wrapper);
    this.layOut();
    for (const [slot, id] of this.wanted(scene.dress!)) surfaces.wear(slot, id);
  }

  /** Puts the right surface on every slot of hands and arms. Calls back for each that changed. */
  show(dress: Dress, changed: (slot: Slot) => void): void {
    for (const [slot, id] of this.wanted(dress)) {
      if (this.surfaces.upper[slot] === id) continue;
      this.surfaces.wear(slot, id);
      changed(slot);
    }
  }

  /** A new gown on a new wrapper; returns the names of the old ones. */
  freshGown(): string[] {
    const { surfaces, ids } = this;
    const old = [surfaces.thingName('gown'), surfaces.thingName('wrapper'), surfaces.thingName('tieCard')];
    const { edge, ...parts } = ids.gown;
    const all = [...Object.values(edge).flat(), ...Object.values(parts).flatMap((part) => (typeof part === 'string' ? [part] : Object.values(part))), ids.wrapper, ids.card.own, ids.card.far, ...ids.passed];
    for (const id of new Set(all)) surfaces.discard(id);
    ids.gown = this.gownIds();
    ids.passed = [];
    ids.wrapper = this.wrapperId();
    ids.card = this.cardIds();
    surfaces.wear(surfaces.slots.gown!.table, ids.wrapper);
    this.layOut();
    return old;
  }

  freshGlove(side: Side): string {
    const { surfaces, ids } = this;
    const old = surfaces.thingName(`glove.${side}`);
    for (const id of Object.values(ids.gloves[side])) surfaces.discard(id);
    ids.gloves[side] = this.gloveIds(side);
    this.layOut();
    return old;
  }

  /** The hand of that side has gone through its knit cuff, which is damp and unsterile from now on. */
  passCuff(side: Side): void {
    const { surfaces, ids } = this;
    const before = ids.gown.knit[side];
    if (surfaces.known.get(before)!.kind === 'passedCuff') return;
    ids.passed = [...ids.passed, before];
    const after = surfaces.add(surfaces.thingName('gown'), `${side}.passedCuff`, 'passedCuff', 'none', 'unsterile', 'none', `${side} knit cuff, through which the hand has gone`);
    ids.gown = { ...ids.gown, knit: { ...ids.gown.knit, [side]: after } };
  }

  save(): unknown {
    return { ...this.ids, gloves: { ...this.ids.gloves } };
  }

  restore(saved: unknown): void {
    const ids = saved as Ids;
    this.ids = { ...ids, gloves: { ...ids.gloves } };
  }

  /** What lies on the table, and what hangs. */
  private layOut(): void {
    const { surfaces, scene, ids } = this;
    const { packet, gloves, card } = scene.gown!;
    const { edges, hem } = surfaces.slots.gown!;
    surfaces.wear(surfaces.slots.thing[packet]!.solid, ids.gown.front);
    for (const side of SIDES) {
      surfaces.wear(surfaces.slots.thing[gloves[side]]!.solid, ids.gloves[side].palm);
      for (let k = 0; k < GOWN_LINKS; k++) surfaces.wear(edges[side] + k, k < INSIDE_LINKS ? ids.gown.inside : ids.gown.edge[side][Math.floor(k / LINKS_TOGETHER)]!);
    }
    surfaces.wear(surfaces.slots.thing[card]!.solid, ids.card.own);
    surfaces.wear(hem, ids.gown.hem);
  }

  /** The surface that belongs on each slot of hands and arms. */
  private wanted(dress: Dress): (readonly [Slot, string])[] {
    return SIDES.flatMap((side) => [...this.onHand(side, dress), ...this.onArm(side, dress), ...this.onSleeve(side)]);
  }

  private onHand(side: Side, dress: Dress): (readonly [Slot, string])[] {
    const { ids, scene } = this;
    const arm = dress.arms[side];
    const slots = this.surfaces.slots.hand[side];
    const { knitM, sleeveM } = scene.scenario.gown;
    const all = (id: string): (readonly [Slot, string])[] => HAND_PARTS.map((part) => [slots[part], id] as const);
    if (isGloved(arm)) {
      const bare = arm.glove === 'on' && overlapM(arm, scene.scenario.gown.gloveLengthM) < knitM;
      return HAND_PARTS.map((part) => [slots[part], part === 'cuff' && bare ? ids.gown.knit[side] : ids.gloves[side][part]] as const);
    }
    const past = arm.inM - sleeveM;
    if (arm.inM <= 0 || past > HAND_ALONG_M) return all(ids.skin[side].hand);
    const covered = all(ids.gown.lower[side]);
    if (past > -knitM) covered[0] = [slots.fingers, past > 0 ? ids.skin[side].hand : ids.gown.knit[side]];
    if (!isOut(arm, sleeveM)) return covered;
    return HAND_PARTS.map((part) => [slots[part], part === 'cuff' ? ids.gown.knit[side] : ids.skin[side].hand] as const);
  }

  /** The empty part of a sleeve, by how far each link of it is from its end. */
  private onSleeve(side: Side): (readonly [Slot, string])[] {
    const { ids, scene } = this;
    const { knitM, sleeveM } = scene.scenario.gown;
    const link = (sleeveLeftM(scene, side) || sleeveM) / SLEEVE_LINKS;
    const { knit, lower, upper, outer } = ids.gown;
    const partAt = (fromEndM: number): string => (fromEndM < knitM ? knit : fromEndM < scene.scenario.operator.forearmM ? lower : fromEndM < sleeveM - OUTER_M ? upper : outer)[side];
    return Array.from({ length: SLEEVE_LINKS }, (_, k) => [this.surfaces.slots.gown!.sleeves[side] + k, partAt((SLEEVE_LINKS - k - 0.5) * link)] as const);
  }

  private onArm(side: Side, dress: Dress): (readonly [Slot, string])[] {
    const { ids, scene } = this;
    const { inM } = dress.arms[side];
    const { forearmM } = scene.scenario.operator;
    const slots = this.surfaces.slots.sleeve[side];
    const elbow = HAND_ALONG_M + forearmM;
    const { arm } = ids.skin[side];
    return [
      [slots.lowerSleeve, inM > HAND_ALONG_M ? ids.gown.lower[side] : arm],
      [slots.upperSleeve, inM > elbow ? ids.gown.upper[side] : arm],
      [slots.outerSleeve, inM > elbow + scene.scenario.operator.upperArmM / 2 ? ids.gown.outer[side] : arm],
    ];
  }

  private gownIds(): GownIds {
    const { surfaces } = this;
    const thing = surfaces.next('gown');
    const sterile = (part: string, kind: 'sleeve' | 'gownFront' | 'knitCuff', words: string): string => surfaces.add(thing, part, kind, 'sterile', 'sterile', 'none', words);
    const each = (make: (side: Side) => string): Record<Side, string> => ({ right: make('right'), left: make('left') });
    const edge = (side: Side): string[] =>
      Array.from({ length: Math.ceil(GOWN_LINKS / LINKS_TOGETHER) }, (_, k) => sterile(`${side}.edge${k}`, 'gownFront', `${side} side of the gown, ${Math.round(((k + 0.5) * LINKS_TOGETHER * this.scene.scenario.gown.lengthM * 100) / GOWN_LINKS)} cm from the shoulder`));
    return {
      inside: surfaces.add(thing, 'inside', 'gownInside', 'none', 'unsterile', 'none', 'inside of the gown'),
      front: sterile('front', 'gownFront', 'front of the gown'),
      hem: sterile('hem', 'gownFront', 'hem of the gown'),
      edge: { right: edge('right'), left: edge('left') },
      knit: each((side) => sterile(`${side}.knitCuff`, 'knitCuff', `${side} knit cuff`)),
      lower: each((side) => sterile(`${side}.lowerSleeve`, 'sleeve', `${side} lower sleeve`)),
      upper: each((side) => sterile(`${side}.upperSleeve`, 'sleeve', `${side} sleeve at the elbow`)),
      outer: each((side) => surfaces.add(thing, `${side}.outerSleeve`, 'outerSleeve', 'none', 'unsterile', 'none', `${side} upper arm`)),
    };
  }

  private gloveIds(side: Side): Readonly<Record<HandPart | 'turnedBack', string>> {
    const thing = this.surfaces.next(`glove.${side}`);
    const part = (name: HandPart, words: string): string => this.surfaces.add(thing, name, 'glove', 'sterile', 'sterile', 'none', `${side} glove, ${words}`);
    const turnedBack = this.surfaces.add(thing, 'turnedBack', 'gloveInside', 'none', 'unsterile', 'none', `turned-back cuff of the ${side} glove`);
    return { turnedBack, fingers: part('fingers', 'fingers'), palm: part('palm', 'palm'), back: part('back', 'back of the hand'), cuff: part('cuff', 'cuff') };
  }

  private wrapperId(): string {
    return this.surfaces.add(this.surfaces.next('wrapper'), '', 'wrapper', 'sterile', 'sterile', 'field', 'opened wrapper of gown and gloves');
  }

  private cardIds(): { own: string; far: string } {
    const thing = this.surfaces.next('tieCard');
    return {
      own: this.surfaces.add(thing, 'own', 'item', 'sterile', 'sterile', 'none', 'tie card'),
      far: this.surfaces.add(thing, 'far', 'cardEnd', 'none', 'unsterile', 'none', 'assistant’s part of the tie card'),
    };
  }
}

/** Length of sleeve under a glove that long (m): as far as it was drawn, less what the hand pulled it forward. */
export const overlapM = ({ drawnM, advanceM }: { readonly drawnM: number; readonly advanceM: number }, gloveLengthM: number): number => Math.max(0, Math.min(drawnM, gloveLengthM - advanceM));
