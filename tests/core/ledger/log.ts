import type { RemedyId } from '../../../src/core/commands/command.ts';
import type { Fact, Zone } from '../../../src/core/ledger/fact.ts';
import { Ledger } from '../../../src/core/ledger/Ledger.ts';
import type { Rule } from '../../../src/core/ledger/rules/rule.ts';
import type { Reach, Surface, SurfaceKind, SurfaceRole, SurfaceState } from '../../../src/core/ledger/surface.ts';

const KEPT_KINDS: readonly SurfaceKind[] = ['glove', 'sleeve', 'gownFront', 'sheath', 'probeSheath', 'item', 'needle', 'drapeTop', 'cover', 'kitTable', 'knitCuff', 'wrapper'];
const PREPARED_KINDS: readonly SurfaceKind[] = ['preparedSkin', 'site'];
const REACH: Partial<Record<SurfaceKind, Reach>> = { site: 'site', needle: 'device', probeSheath: 'device', drapeTop: 'field', cover: 'field', kitTable: 'field', item: 'field' };

/** A surface with the role, state and reach that its kind has in the room. `id` is thing:part. */
export function surface(id: string, kind: SurfaceKind, change: Partial<Surface> = {}): Surface {
  const [thing, part] = id.split(':') as [string, string];
  const role: SurfaceRole = KEPT_KINDS.includes(kind) ? 'sterile' : PREPARED_KINDS.includes(kind) ? 'prepared' : 'none';
  const initial: SurfaceState = role === 'none' ? 'unsterile' : role;
  return { id, thing, part, kind, role, initial, reach: REACH[kind] ?? 'none', words: id, ...change };
}

/** The things of the room by short id; ids without a colon get the part "all". */
const ROOM: readonly (readonly [string, SurfaceKind])[] = [
  ...['fingers', 'palm', 'back', 'cuff'].flatMap((part) => [[`gloveL#1:${part}`, 'glove'], [`gloveR#1:${part}`, 'glove']] as const),
  ['gown#1:lowerL', 'sleeve'], ['gown#1:lowerR', 'sleeve'], ['gown#1:front', 'gownFront'], ['gown#1:knitL', 'knitCuff'], ['gown#1:inside', 'gownInside'], ['gown#1:passedL', 'passedCuff'], ['gloveL#1:turnedBack', 'gloveInside'], ['skin:hand', 'ownSkin'], ['clothes:all', 'ownClothes'], ['card#1:far', 'cardEnd'], ['person:all', 'person'], ['wrapper#1:all', 'wrapper'], ['arm:outerL', 'outerSleeve'], ['arm:outerR', 'outerSleeve'],
  ['face:all', 'face'], ['assistant:hand', 'bareHand'], ['railL:all', 'rail'], ['railR:all', 'rail'], ['pole:all', 'pole'], ['machine:all', 'machine'], ['bed:all', 'bed'],
  ['floor:all', 'floor'], ['tableEdge:all', 'tableEdge'], ['bin:all', 'bin'], ['table:all', 'kitTable'],
  ['patient:skin', 'patientSkin'], ['patient:prep', 'preparedSkin'], ['site#1:all', 'site'],
  ...[0, 1, 2, 3].map((k) => [`drape#1:${k}`, 'drapeTop'] as const), ['drape#1:under', 'drapeUnder'],
  ...[0, 1, 2, 3].map((k) => [`cord#1:${k}`, 'sheath'] as const), ['cord#1:tail', 'sheathTail'], ['bare:all', 'bareCord'], ['probe#1:head', 'probeSheath'],
  ['bareProbe:all', 'bareProbe'], ['cord#1:inside', 'sheathInside'], ['bottle#1:all', 'unsterileItem'],
  ['gel#1:all', 'item'], ['gauze#1:all', 'item'], ['syringe#1:barrel', 'item'], ['syringe#1:needle', 'needle'], ['cover#1:all', 'cover'],
];

/** A touch log written as sentences; time goes on by `wait`. */
export class Log {
  readonly facts: Fact[] = [];
  step = 0;
  private touches = 0;
  private readonly open = new Map<string, number>();

  constructor() {
    for (const [id, kind] of ROOM) this.add(surface(id, kind));
  }

  add(...added: Surface[]): this {
    for (const one of added) this.facts.push({ kind: 'surface.added', step: this.step, surface: one });
    return this;
  }

  wait(steps = 1): this {
    this.step += steps;
    return this;
  }

  /** The two begin to touch and go on touching. */
  touch(a: string, b: string): this {
    const touch = ++this.touches;
    this.open.set(`${a} ${b}`, touch);
    this.facts.push({ kind: 'touch.began', step: this.step, touch, a, b, x: 0.1, y: 1.2 });
    return this;
  }

  part(a: string, b: string): this {
    this.facts.push({ kind: 'touch.ended', step: this.step, touch: this.open.get(`${a} ${b}`)! });
    return this;
  }

  /** Touch and go. */
  tap(a: string, b: string): this {
    return this.touch(a, b).part(a, b).wait();
  }

  enter(id: string, zone: Zone): this {
    this.facts.push({ kind: 'zone.entered', step: this.step, surface: id, zone, x: 0, y: 1 });
    return this;
  }

  leave(id: string, zone: Zone): this {
    this.facts.push({ kind: 'zone.left', step: this.step, surface: id, zone });
    return this;
  }

  drift(direction: 'toward' | 'away'): this {
    this.facts.push({ kind: 'drape.drifted', step: this.step, drape: 'drape#1', direction, site: 'site#1:all', metres: 0.02, x: 0, y: 1.1 });
    return this;
  }

  use(id: string): this {
    this.facts.push({ kind: 'used', step: this.step, surface: id, site: 'site#1:all', x: 0, y: 1.1 });
    return this;
  }

  tear(id: string): this {
    this.facts.push({ kind: 'torn', step: this.step, surface: id, x: 0, y: 1.1 });
    return this;
  }

  /** Gel that is not sterile goes into the sheath. */
  gel(from: string, id: string): this {
    this.facts.push({ kind: 'gelled', step: this.step, gel: from, surface: id, x: 0, y: 1.1 });
    return this;
  }

  tearGlove(id: string): this {
    this.facts.push({ kind: 'glove.torn', step: this.step, surface: id, x: 0, y: 1.1 });
    return this;
  }

  notice(): this {
    this.facts.push({ kind: 'noticed', step: this.step });
    return this;
  }

  /** A thing is replaced by its next generation. */
  remedy(remedy: RemedyId, ...things: string[]): this {
    for (const thing of things) {
      const parts = this.partsOf(thing);
      const [name, generation] = thing.split('#') as [string, string];
      for (const { id } of parts) this.facts.push({ kind: 'surface.retired', step: this.step, surface: id });
      for (const old of parts) this.add(surface(`${name}#${Number(generation) + 1}:${old.part}`, old.kind));
    }
    this.facts.push({ kind: 'remedied', step: this.step, remedy, things });
    return this;
  }

  ledger(rules?: readonly Rule[]): Ledger {
    const ledger = new Ledger(rules);
    for (const fact of this.facts) ledger.apply(fact);
    return ledger;
  }

  private partsOf(thing: string): Surface[] {
    return this.facts.flatMap((fact) => (fact.kind === 'surface.added' && fact.surface.thing === thing ? [fact.surface] : []));
  }
}

export const log = (): Log => new Log();

/** A break in one line: rule, severity, reach and what it spread to with depth. */
export const told = (ledger: Pick<Ledger, 'breaks'>): string[] =>
  ledger.breaks.map((known) => `${known.rule} ${known.severity} ${known.reach}: ${known.spread.map(({ surface: id, depth }) => `${id} ${depth}`).join(', ')}`);

/** Every surface that a break of the log spoiled. */
export const spoiled = (ledger: Pick<Ledger, 'surfaces' | 'isSpoiled'>): string[] =>
  ledger.surfaces.map(({ id }) => id).filter((id) => ledger.isSpoiled(id)).sort();
