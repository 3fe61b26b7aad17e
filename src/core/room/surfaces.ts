import { assert } from '../base/assert.ts';
import { SIDES, type Side } from '../base/side.ts';
import type { Reach, Surface, SurfaceKind, SurfaceRole, SurfaceState } from '../ledger/surface.ts';
import { GownSurfaces } from './gown/gownSurfaces.ts';
import { HAND_PARTS } from './handShape.ts';
import { THING_SHAPES, type ThingKind } from './itemShapes.ts';
import { filmLinks } from './sheath/loading.ts';
import type { Scene } from './scene.ts';
import { skinKind } from './skin.ts';

/** A place in the room that carries a surface; when the surface is replaced the slot stays and gets a new one. */
export type Slot = number;

export const SLEEVE_PARTS = ['lowerSleeve', 'upperSleeve', 'outerSleeve'] as const;
export type SleevePart = (typeof SLEEVE_PARTS)[number];

/** Slots of everything that can be touched, in the order in which the tracker sees them. */
export interface Slots {
  readonly count: number;
  readonly hand: Readonly<Record<Side, Readonly<Record<(typeof HAND_PARTS)[number], Slot>>>>;
  readonly sleeve: Readonly<Record<Side, Readonly<Record<SleevePart, Slot>>>>;
  readonly face: Slot;
  readonly rail: Readonly<Record<Side, Slot>>;
  readonly pole: Slot;
  readonly machine: Slot;
  readonly bed: Slot;
  readonly floor: Slot;
  readonly kitTable: Slot;
  readonly tableEdge: Slot;
  readonly bin: Slot;
  /** First of the skin stretches, of the links of each drape, of the links of the cord. */
  readonly skin: Slot;
  readonly drape: Readonly<Record<Side, Slot>>;
  readonly cord: Slot;
  /** Bare hands and forearms of the assistant. */
  readonly assistant: Readonly<Record<Side, { readonly hand: Slot; readonly forearm: Slot }>>;
  /** Solid part and needle of each thing; the needle's slot is −1 where there is none. */
  readonly thing: readonly { readonly solid: Slot; readonly needle: Slot }[];
  /** First of the links of the opened sheath, and its open end on the cord; not there where no sheath is loaded. */
  readonly pocket: Slot;
  readonly end: Slot;
  /** Links of the sides of the hanging gown and of its empty sleeves, its hem, the table that it lay on, somebody who passes by; null where no gown is put on. */
  readonly gown: { readonly edges: Readonly<Record<Side, Slot>>; readonly sleeves: Readonly<Record<Side, Slot>>; readonly hem: Slot; readonly table: Slot; readonly tableSide: Slot; readonly person: Slot } | null;
}

/** Surfaces of the film of the newest sheath: its outside over the probe, over each link of the cord and at its open end, and its inside. */
export interface FilmSurfaces {
  readonly probe: string;
  readonly links: readonly string[];
  readonly end: string;
  readonly inside: string;
}

export function countSlots(scene: Scene): Slots {
  let next = 0;
  const one = (): Slot => next++;
  const many = (n: number): Slot => {
    next += n;
    return next - n;
  };
  const handSlots = () => ({ fingers: one(), palm: one(), back: one(), cuff: one() });
  const sleeveSlots = () => ({ lowerSleeve: one(), upperSleeve: one(), outerSleeve: one() });
  const links = (strand: number): number => scene.world.strandSize(strand) - 1;
  return {
    hand: { right: handSlots(), left: handSlots() },
    sleeve: { right: sleeveSlots(), left: sleeveSlots() },
    face: one(),
    rail: { right: one(), left: one() },
    pole: one(), machine: one(), bed: one(), floor: one(), kitTable: one(), tableEdge: one(), bin: one(),
    skin: many(scene.layout.skin.length - 1),
    drape: { right: many(links(scene.drapes.right)), left: many(links(scene.drapes.left)) },
    cord: many(links(scene.cord)),
    thing: scene.things.map(({ kind }) => ({ solid: one(), needle: THING_SHAPES[kind].needleLength > 0 ? one() : -1 })),
    assistant: { right: { hand: one(), forearm: one() }, left: { hand: one(), forearm: one() } },
    pocket: scene.sheath ? many(links(scene.sheath.pocket)) : -1,
    end: scene.sheath ? one() : -1,
    gown: scene.gown ? { edges: { right: many(links(scene.gown.edges.right)), left: many(links(scene.gown.edges.left)) }, sleeves: { right: many(links(scene.gown.sleeves.right)), left: many(links(scene.gown.sleeves.left)) }, hem: one(), table: one(), tableSide: one(), person: one() } : null,
    get count() {
      return next;
    },
  };
}

const THING_NAMES: Readonly<Record<ThingKind, string>> = {
  probe: 'probe', sheathRoll: 'folded sheath', gelPacket: 'gel packet', syringe: 'anaesthetic syringe', needleSyringe: 'needle syringe', gauze: 'gauze', band: 'band', gelBottle: 'gel bottle', gownPacket: 'folded gown', glove: 'glove', tieCard: 'tie card',
};

/** Which surface each slot carries now, and the words for all that ever were. Plain data in `save`. */
export class Surfaces {
  readonly slots: Slots;
  /** Surface of each slot; of a drape's link the upper side. */
  readonly upper: string[];
  /** Underside of a drape's link; the same as `upper` elsewhere. */
  readonly under: string[];
  readonly known = new Map<string, Surface>();
  /** Null where no sheath is loaded; and what probe and cord are without one. */
  film: FilmSurfaces | null = null;
  bare: { readonly probe: string; readonly cord: readonly string[] } | null = null;
  /** What hands and arms show while gown and gloves are put on; null where they are on from the start. */
  readonly worn: GownSurfaces | null;
  private readonly generation = new Map<string, number>();

  constructor(
    private readonly scene: Scene,
    private readonly announce: (surface: Surface) => void,
    private readonly retire: (id: string) => void,
  ) {
    this.slots = countSlots(scene);
    this.upper = Array.from({ length: this.slots.count }, () => '');
    this.under = Array.from({ length: this.slots.count }, () => '');
    this.layFixed();
    if (!scene.gown) {
      for (const side of SIDES) this.newGlove(side);
      this.newGown();
    }
    this.newSkin();
    for (const side of SIDES) this.newDrape(side);
    if (scene.sheath) this.layBare();
    else this.newSheath();
    scene.things.forEach((_, k) => {
      if (k > 0 && k !== scene.sheath?.roll && (!scene.gown || k < scene.gown.packet)) this.newItem(k);
    });
    if (scene.sheath) this.newFilm();
    this.worn = scene.gown && new GownSurfaces(scene, this);
    assert(!this.upper.includes(''), 'every slot carries a surface');
  }

  /** Name of the newest generation of a thing: `glove.left#2`. */
  thingName(base: string): string {
    return `${base}#${this.generation.get(base) ?? 0}`;
  }

  words(id: string): string {
    return this.known.get(id)?.words ?? id;
  }

  newGlove(side: Side): void {
    const thing = this.next(`glove.${side}`);
    for (const part of HAND_PARTS) {
      const name = { fingers: 'fingers', palm: 'palm', back: 'back of the hand', cuff: 'cuff' }[part];
      this.put(this.slots.hand[side][part], thing, part, 'glove', 'sterile', 'sterile', 'none', `${side} glove, ${name}`);
    }
  }

  newGown(): void {
    const thing = this.next('gown');
    for (const side of SIDES) {
      this.put(this.slots.sleeve[side].lowerSleeve, thing, `${side}.lowerSleeve`, 'sleeve', 'sterile', 'sterile', 'none', `${side} lower sleeve`);
      this.put(this.slots.sleeve[side].upperSleeve, thing, `${side}.upperSleeve`, 'sleeve', 'sterile', 'sterile', 'none', `${side} sleeve at the elbow`);
      this.put(this.slots.sleeve[side].outerSleeve, thing, `${side}.outerSleeve`, 'outerSleeve', 'none', 'unsterile', 'none', `${side} upper arm`);
    }
  }

  /** Skin on the hump: prepared round the site, the rest as it is. A new one stands for skin prepared again. */
  newSkin(): void {
    const site = this.next('site');
    const { skin } = this.scene.layout;
    for (let k = 0; k + 1 < skin.length; k++) {
      const kind = skinKind(this.scene.scenario, (skin[k]![0] + skin[k + 1]![0]) / 2);
      if (kind === 'patientSkin') {
        if (!this.upper[this.slots.skin + k]) this.put(this.slots.skin + k, 'patient', String(k), kind, 'none', 'unsterile', 'none', "patient's skin");
      } else this.put(this.slots.skin + k, site, String(k), kind, 'prepared', 'prepared', 'site', kind === 'site' ? 'site' : 'prepared skin');
    }
  }

  newDrape(side: Side): void {
    const thing = this.next(`drape.${side}`);
    const links = this.scene.world.strandSize(this.scene.drapes[side]) - 1;
    for (let k = 0; k < links; k++) {
      const slot = this.slots.drape[side] + k;
      const cm = Math.round((k + 0.5) * this.scene.scenario.drape.linkM * 100);
      this.put(slot, thing, String(k), 'drapeTop', 'sterile', 'sterile', 'field', `drape, ${side} side, ${cm} cm from the opening`);
      if (!this.under[slot]!.endsWith('u')) {
        this.under[slot] = this.add(thing, `${k}u`, 'drapeUnder', 'none', 'unsterile', 'none', `underside of the drape, ${side} side`);
      }
    }
  }

  /** A new sheath over the probe and its cord; the bare cord stays what it is. */
  newSheath(): void {
    const { cord, policy } = this.scene.scenario;
    const thing = this.next('sheath');
    this.put(this.slots.thing[0]!.solid, thing, 'probe', 'probeSheath', 'sterile', 'sterile', 'device', 'probe in its sheath');
    const links = this.scene.world.strandSize(this.scene.cord) - 1;
    for (let k = 0; k < links; k++) {
      const slot = this.slots.cord + k;
      const at = (k + 0.5) * cord.linkM;
      const cm = Math.round(at * 100);
      if (at > cord.coveredM) {
        if (!this.upper[slot]) this.put(slot, 'cord', String(k), 'bareCord', 'none', 'unsterile', 'none', `bare cord, ${cm} cm from the probe`);
      } else if (at > cord.coveredM - policy.sheathTailM) this.put(slot, thing, String(k), 'sheathTail', 'none', 'unsterile', 'none', `open end of the sheath, ${cm} cm from the probe`);
      else this.put(slot, thing, String(k), 'sheath', 'sterile', 'sterile', 'field', `sheathed cord, ${cm} cm from the probe`);
    }
  }

  /** The film of a new sheath, folded: every stretch of it is known, and none lies anywhere but at the fold. */
  newFilm(): void {
    const { scene, slots } = this;
    if (this.film) for (const id of new Set([this.film.probe, this.film.end, ...this.film.links])) this.retire(id);
    const thing = this.next('sheath');
    const { linkM } = scene.scenario.cord;
    const inside = this.add(thing, 'inside', 'sheathInside', 'none', 'unsterile', 'none', 'inside of the sheath');
    const probe = this.add(thing, 'probe', 'probeSheath', 'sterile', 'sterile', 'device', 'sheath over the probe');
    const links = Array.from({ length: filmLinks(scene.scenario) }, (_, k) => this.add(thing, String(k), 'sheath', 'sterile', 'sterile', 'field', `sheath over the cord, ${Math.round((k + 0.5) * linkM * 100)} cm from the probe`));
    const end = this.add(thing, 'end', 'sheath', 'sterile', 'sterile', 'field', 'folds at the open end of the sheath');
    this.film = { probe, links, end, inside };
    this.wear(slots.thing[scene.sheath!.roll]!.solid, end);
    this.wear(slots.end, end);
    for (let k = 0, count = scene.world.strandSize(scene.sheath!.pocket) - 1; k < count; k++) this.wear(slots.pocket + k, probe);
  }

  /** The open end of the film, and the links of the cord from `from` on, have been given into the assistant's hand. */
  openEnd(from: number): void {
    const { probe, links, end, inside } = this.film!;
    const thing = this.known.get(end)!.thing;
    const { linkM } = this.scene.scenario.cord;
    const tail = (k: number): string => {
      this.retire(links[k]!);
      return this.add(thing, `${k}end`, 'sheathTail', 'none', 'unsterile', 'none', `open end of the sheath, ${Math.round((k + 0.5) * linkM * 100)} cm from the probe`);
    };
    this.retire(end);
    const openEnd = this.add(thing, 'openEnd', 'sheathTail', 'none', 'unsterile', 'none', 'open end of the sheath');
    this.film = { probe, links: links.map((id, k) => (k >= from ? tail(k) : id)), end: openEnd, inside };
    this.wear(this.slots.end, openEnd);
  }

  /** Probe and cord lie bare again. */
  bareProbe(): void {
    const { probe, cord } = this.bare!;
    this.wear(this.slots.thing[0]!.solid, probe);
    cord.forEach((id, k) => this.wear(this.slots.cord + k, id));
  }

  newItem(k: number): void {
    const { id, kind } = this.scene.things[k]!;
    const thing = this.next(id);
    const slots = this.slots.thing[k]!;
    const name = THING_NAMES[kind];
    if (kind === 'gelBottle') this.put(slots.solid, thing, 'body', 'unsterileItem', 'none', 'unsterile', 'none', name);
    else this.put(slots.solid, thing, 'body', 'item', 'sterile', 'sterile', 'field', name);
    if (slots.needle >= 0) this.put(slots.needle, thing, 'needle', 'needle', 'sterile', 'sterile', 'device', `needle of the ${name}`);
  }

  /** A surface is taken away. */
  discard(id: string): void {
    this.retire(id);
  }

  save(): { upper: string[]; under: string[]; known: Surface[]; generation: [string, number][]; film: FilmSurfaces | null } {
    return { film: this.film, upper: [...this.upper], under: [...this.under], known: [...this.known.values()], generation: [...this.generation] };
  }

  restore(saved: ReturnType<Surfaces['save']>): void {
    saved.upper.forEach((id, k) => (this.upper[k] = id));
    saved.under.forEach((id, k) => (this.under[k] = id));
    this.film = saved.film;
    this.known.clear();
    for (const surface of saved.known) this.known.set(surface.id, surface);
    this.generation.clear();
    for (const [base, n] of saved.generation) this.generation.set(base, n);
  }

  private layFixed(): void {
    const { slots } = this;
    const fixed = (slot: Slot, thing: string, kind: SurfaceKind, words: string, part = ''): void => this.put(slot, thing, part, kind, 'none', 'unsterile', 'none', words);
    fixed(slots.face, 'face', 'face', 'mask and face');
    for (const side of SIDES) fixed(slots.rail[side], `rail.${side}`, 'rail', `${side} bed rail`);
    fixed(slots.pole, 'pole', 'pole', 'pole');
    fixed(slots.machine, 'machine', 'machine', 'ultrasound machine');
    fixed(slots.bed, 'bed', 'bed', 'bed');
    fixed(slots.floor, 'floor', 'floor', 'floor');
    fixed(slots.tableEdge, 'tableEdge', 'tableEdge', 'side of the kit table');
    fixed(slots.bin, 'bin', 'bin', 'bin');
    for (const side of SIDES) {
      fixed(slots.assistant[side].hand, `assistant.${side}`, 'bareHand', `assistant's ${side} hand`, 'hand');
      fixed(slots.assistant[side].forearm, `assistant.${side}`, 'bareHand', `assistant's ${side} forearm`, 'forearm');
    }
    this.put(slots.kitTable, 'kitTable', '', 'kitTable', 'sterile', 'sterile', 'field', 'kit table');
  }

  /** Probe and cord without a sheath. */
  private layBare(): void {
    const { cord } = this.scene.scenario;
    this.put(this.slots.thing[0]!.solid, 'bareProbe', '', 'bareProbe', 'none', 'unsterile', 'none', 'bare probe');
    const links = this.scene.world.strandSize(this.scene.cord) - 1;
    for (let k = 0; k < links; k++) this.put(this.slots.cord + k, 'cord', String(k), 'bareCord', 'none', 'unsterile', 'none', `bare cord, ${Math.round((k + 0.5) * cord.linkM * 100)} cm from the probe`);
    this.bare = { probe: this.upper[this.slots.thing[0]!.solid]!, cord: this.upper.slice(this.slots.cord, this.slots.cord + links) };
  }

  /** What lies in a slot from now on, without anything being taken away. */
  wear(slot: Slot, id: string): void {
    this.upper[slot] = this.under[slot] = id;
  }

  /** Name of the next generation of a thing. */
  next(base: string): string {
    this.generation.set(base, (this.generation.get(base) ?? 0) + 1);
    return this.thingName(base);
  }

  private put(slot: Slot, thing: string, part: string, kind: SurfaceKind, role: SurfaceRole, initial: SurfaceState, reach: Reach, words: string): void {
    if (this.upper[slot]) this.retire(this.upper[slot]!);
    const id = this.add(thing, part, kind, role, initial, reach, words);
    this.upper[slot] = id;
    if (!this.under[slot]!.endsWith('u')) this.under[slot] = id;
  }

  /** A new surface, which lies nowhere yet. Returns its id. */
  add(thing: string, part: string, kind: SurfaceKind, role: SurfaceRole, initial: SurfaceState, reach: Reach, words: string): string {
    const id = part ? `${thing}:${part}` : thing;
    const surface: Surface = { id, thing, part, kind, role, initial, reach, words };
    this.known.set(id, surface);
    this.announce(surface);
    return id;
  }
}
