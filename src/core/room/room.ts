import type { StateHash } from '../base/hash.ts';
import { PI } from '../base/portableMath.ts';
import { Rng } from '../base/rng.ts';
import { SIDES, type Side } from '../base/side.ts';
import type { Command, RemedyId } from '../commands/command.ts';
import type { Fact } from '../ledger/fact.ts';
import type { Observation } from '../procedure/observation.ts';
import type { CueKind, Scenario } from '../scenario/schema.ts';
import { Assistant } from './assistant/Assistant.ts';
import { moveBed, takeHeight } from './bedHeight.ts';
import { driveHands } from './driveHands.ts';
import type { Clearances } from './clearance.ts';
import { Clip } from './clip.ts';
import { DriftWatch } from './drift.ts';
import { fingertips } from './fingertips.ts';
import { Gown } from './gown/Gown.ts';
import type { GownFact } from './gown/host.ts';
import { letGo, settleHolds, takeHold } from './grip.ts';
import { HandlingWatch } from './handling.ts';
import { copyHand, restingHand, type HandState } from './handState.ts';
import { Happenings } from './patient.ts';
import { MadeTouches } from './MadeTouches.ts';
import type { RoomPicture, SurfaceMark } from './picture.ts';
import { takePicture } from './picturing.ts';
import { Remedies } from './remedies.ts';
import { applyRemedy } from './remedyEffects.ts';
import type { Scene } from './scene.ts';
import { rememberLaid, settle, settledScene, type Laid, type SettledState } from './settle.ts';
import type { SheathFact } from './sheath/host.ts';
import { Sheath } from './sheath/Sheath.ts';
import { Surfaces } from './surfaces.ts';
import { TouchWatch } from './touchWatch.ts';
import { holderOf, sitePoint, Work, type SitePoint } from './work.ts';

/** What one step of the room brought. */
export interface RoomStep {
  readonly facts: readonly Fact[];
  readonly cues: readonly { readonly kind: CueKind | 'assistantSpeaks'; readonly words: string }[];
  readonly observation: Observation;
}

/** The room in motion: hands, strands, things, patient, and the facts that follow from them. It judges nothing. */
export class Room {
  readonly scene: Scene;
  readonly surfaces: Surfaces;
  readonly hands: Record<Side, HandState>;
  readonly remedies: Remedies;
  readonly happenings: Happenings;
  readonly work: Work;
  readonly drift: DriftWatch;
  readonly assistant: Assistant;
  readonly clip: Clip;
  readonly touches: TouchWatch;
  readonly handling: HandlingWatch;
  readonly laid: Laid;
  readonly gone: boolean[];
  /** Things that the assistant took out of the room or has not brought yet, or that went on to the probe. */
  readonly carriedOff: boolean[];
  /** Things that are still in their packets, with the assistant. */
  readonly packed: boolean[];
  /** Null where no sheath is loaded. */
  readonly sheath: Sheath | null;
  /** Null where the operator is gowned from the start and no glove is changed by hand. */
  readonly gown: Gown | null;
  private readonly made = new MadeTouches();
  torsoX: number;
  /** Hand that was moved last: the operator steps where it needs to go. */
  private moving: Side = 'right';
  private facts: Fact[] = [];
  private now = 0;
  private lastPicture: RoomPicture | null = null;

  constructor(scenario: Scenario, seed: number, settled: SettledState = settle(scenario)) {
    this.scene = settledScene(scenario, settled);
    this.hands = { left: restingHand(scenario, 'left'), right: restingHand(scenario, 'right') };
    this.torsoX = this.scene.dress?.homeX ?? 0;
    this.laid = rememberLaid(this.scene);
    this.surfaces = new Surfaces(
      this.scene,
      (surface) => this.facts.push({ kind: 'surface.added', step: this.now, surface }),
      (id) => this.facts.push({ kind: 'surface.retired', step: this.now, surface: id }),
    );
    this.remedies = new Remedies(this.scene);
    this.happenings = new Happenings(this.scene, new Rng(seed));
    this.work = new Work(this.scene);
    this.drift = new DriftWatch(this.scene);
    this.clip = new Clip(this.scene);
    this.packed = this.scene.things.map((_, k) => scenario.items[k - 1]?.spare === true);
    this.gone = [...this.packed];
    this.carriedOff = [...this.packed];
    this.touches = new TouchWatch(this.scene, this.surfaces);
    const { hands, gone, carriedOff, touches, work } = this;
    const host = { hands, gone, carriedOff, used: work.used, replaced: (slot: number) => touches.replaced(slot), moved: (slot: number) => touches.moved(slot), torsoX: () => this.torsoX, say: (fact: SheathFact | GownFact) => void this.facts.push({ ...fact, step: this.now }) };
    this.sheath = this.scene.sheath && new Sheath(this.scene, this.scene.sheath, this.surfaces, host);
    this.gown = this.scene.gown && new Gown(this.scene, this.surfaces, host);
    this.assistant = new Assistant(this.scene, seed, this.sheath, this.gown);
    scenario.items.forEach(({ spare }, k) => {
      if (spare) this.scene.world.setBodyEnabled(this.scene.things[k + 1]!.body, false);
    });
    this.handling = new HandlingWatch(this.scene, this.surfaces.slots);
  }

  /** Facts of the room before the first step: every surface that is in it. */
  openingFacts(): readonly Fact[] {
    const facts = this.facts;
    this.facts = [];
    return facts;
  }

  /** One step of 1/120 s. */
  step(step: number, commands: readonly Command[]): RoomStep {
    this.now = step;
    for (const command of commands) this.obey(command);
    if (this.assistant.bedToM !== null) moveBed(this.scene, this.assistant.bedToM);
    const cues = [...this.happenings.step(step), ...this.stepAssistant(step)];
    this.sheath?.before();
    this.gown?.before(step);
    this.torsoX = driveHands(this.scene, this.hands, this.moving, this.torsoX);
    this.moveWorld();
    const site = this.site();
    const { humpX, humpY } = this.happenings;
    const away = this.away();
    const assistant = this.assistant.look();
    const begun = this.work.step(this.hands, site, away);
    this.sheath?.after();
    this.gown?.after();
    // The ledger takes the facts of a step in this order: where things are, what they touch, drift, use, what was said, remedies.
    this.facts.push(...this.touches.step(step, { hands: this.hands, torsoX: this.torsoX, humpX, humpY, gone: away, assistant, handles: { left: this.handled('left'), right: this.handled('right') } }));
    if (this.gown) this.facts.push(...this.made.step(step, this.gown.touches()));
    for (const d of this.drift.step(humpX)) {
      const drape = this.surfaces.upper[this.surfaces.slots.drape[d.side]]!;
      this.facts.push({ kind: 'drape.drifted', step, drape, direction: d.direction, site: this.siteSurface(), metres: d.metres, x: d.x, y: d.y });
    }
    for (const k of begun) this.sayUsed(k, site);
    if (commands.some(({ type }) => type === 'notice')) this.facts.push({ kind: 'noticed', step });
    this.stepRemedies();
    this.handling.step(step, { shapes: this.touches.shapes, hands: this.hands, offField: this.touches.offField(), gone: away, drift: this.drift.farthest });
    const field = this.work.observe(step, this.hands, site, this.gone, this.touches.offField(), this.carriedOff, this.sheath);
    const sheath = this.sheath && { ...this.sheath.observe(step, this.assistant, field.probe.lyingOnField), dropped: field.dropped, packed: this.idsOf((k) => this.packed[k]!), used: this.idsOf((k) => this.gone[k]! && !this.packed[k]) };
    const observation = { gown: this.gown?.observe(step, this.assistant.dresser?.helps ?? false) ?? null, field, sheath };
    const facts = this.facts;
    this.facts = [];
    return { facts, cues, observation };
  }

  site(): SitePoint {
    return sitePoint(this.scene, this.happenings.humpX, this.happenings.humpY);
  }

  /** Gap in metres from each hand (fingers to elbow, with what it holds) to each thing to keep clear of; Infinity where that is far. */
  clearances(): Clearances {
    return this.handling.clearances;
  }

  picture(step: number, marks: ReadonlyMap<string, SurfaceMark>): RoomPicture {
    const sight = {
      step, hands: this.hands, torsoX: this.torsoX, humpX: this.happenings.humpX, humpY: this.happenings.humpY,
      gone: this.gone, used: this.work.used, gelOnSite: this.work.gelOnSite, surfaces: this.surfaces, marks, assistant: this.assistant.look(), sheath: this.sheath, gown: this.gown,
    };
    return (this.lastPicture = takePicture(this.scene, sight, this.lastPicture));
  }

  hashInto(hash: StateHash): void {
    this.scene.world.hashInto(hash);
    this.touches.hashInto(hash);
    this.assistant.hashInto(hash);
    hash.addNumber(this.torsoX).addNumber(this.happenings.humpX).addNumber(this.happenings.humpY);
    for (const side of SIDES) {
      const hand = this.hands[side];
      hash.addNumber(hand.targetX).addNumber(hand.targetY).addNumber(hand.targetAngle).addInt(hand.hold ? 1 : 0).addNumber(hand.pathM);
    }
    hash.addNumber(this.work.gelOnSite).addNumber(this.work.anaesthetic);
    this.gone.forEach((gone) => hash.addInt(gone ? 1 : 0));
    this.sheath?.hashInto(hash);
    this.gown?.hashInto(hash);
  }

  save(): unknown {
    return {
      world: this.scene.world.snapshot(), bedUpM: this.scene.layout.bedUpM, surfaces: this.surfaces.save(), hands: { left: copyHand(this.hands.left), right: copyHand(this.hands.right) },
      remedies: this.remedies.save(), happenings: this.happenings.save(), work: this.work.save(), drift: this.drift.save(), assistant: this.assistant.save(),
      clip: this.clip.save(), handling: this.handling.save(), sheath: this.sheath?.save(), gown: this.gown?.save(), made: this.gown ? this.made.save() : null,
      touches: this.touches.save(), gone: [...this.gone], carriedOff: [...this.carriedOff], packed: [...this.packed], torsoX: this.torsoX, moving: this.moving,
    };
  }

  restore(saved: unknown): void {
    const s = saved as ReturnType<Room['save']> & Record<string, never>;
    this.scene.world.restore(s['world']);
    takeHeight(this.scene, s['bedUpM']);
    this.surfaces.restore(s['surfaces']);
    for (const side of SIDES) Object.assign(this.hands[side], copyHand((s['hands'] as Record<Side, HandState>)[side]));
    this.remedies.restore(s['remedies']);
    this.happenings.restore(s['happenings']);
    this.work.restore(s['work']);
    this.drift.restore(s['drift']);
    this.assistant.restore(s['assistant']);
    this.clip.restore(s['clip']);
    this.touches.restore(s['touches']);
    this.handling.restore(s['handling']);
    this.sheath?.restore(s['sheath']);
    this.gown?.restore(s['gown']);
    if (this.gown) this.made.restore(s['made']);
    (s['gone'] as boolean[]).forEach((gone, k) => (this.gone[k] = gone));
    (s['packed'] as boolean[]).forEach((packed, k) => (this.packed[k] = packed));
    (s['carriedOff'] as boolean[]).forEach((off, k) => (this.carriedOff[k] = off));
    this.torsoX = s['torsoX'];
    this.moving = s['moving'];
    this.facts = [];
  }

  private obey(command: Command): void {
    switch (command.type) {
      case 'hand.move':
        this.moving = command.hand;
        this.hands[command.hand].wishX = command.xMm / 1000;
        this.hands[command.hand].wishY = command.yMm / 1000;
        break;
      case 'hand.turn':
        this.hands[command.hand].wishAngle = (command.angleDeg * PI) / 180;
        break;
      case 'hand.grip':
        if (!this.hands[command.hand].hold) takeHold(this.scene, this.hands, command.hand, this.gone, this.sheath, this.gown);
        break;
      case 'hand.release':
        letGo(this.scene, this.hands[command.hand], this.sheath, this.gown);
        break;
      case 'hand.use':
        this.hands[command.hand].using = command.on;
        break;
      case 'remedy.start':
        this.startRemedy(command.remedy, command.thing);
        break;
      case 'remedy.cancel':
        this.remedies.cancel();
        this.assistant.leaveGlove(this.now);
        break;
      case 'ask':
        this.assistant.ask(command.request, command.thing ?? '', this.now);
        break;
      case 'notice':
      case 'answer':
      case 'pace':
      case 'run.end':
        break;
    }
  }

  private stepAssistant(step: number): { kind: 'assistantSpeaks'; words: string }[] {
    const sight = { step, hands: this.hands, torsoX: this.torsoX, gone: this.gone, packed: this.packed, offField: this.touches.offField() };
    const { said, wiped, tookAway, unpacked } = this.assistant.step(sight);
    if (wiped) this.happenings.itchUntil = -1;
    if (tookAway >= 0) this.gone[tookAway] = this.carriedOff[tookAway] = true;
    if (unpacked >= 0) this.packed[unpacked] = this.gone[unpacked] = this.carriedOff[unpacked] = false;
    return said.map((words) => ({ kind: 'assistantSpeaks', words }));
  }

  /** What a hand has to do with, and the surface that its fingers meet on it: a probe in an opened sheath through the film. */
  private handled(side: Side): { readonly thing: number; readonly surface: string } {
    const { hold } = this.hands[side];
    const { sheath, surfaces } = this;
    const thing = hold?.kind === 'thing' ? hold.thing : sheath?.strokesProbe(side) ? 0 : -1;
    if (thing < 0) return { thing, surface: '' };
    const surface = this.gown?.meets(side, thing) ?? surfaces.upper[surfaces.slots.thing[thing]!.solid]!;
    return { thing, surface: thing === 0 && sheath?.isThroughFilm(...fingertips(this.scene, side)) ? surfaces.film!.probe : surface };
  }

  /** Things that cannot be touched: no longer there, or being carried out. */
  private away(): boolean[] {
    return this.gone.map((gone, k) => gone || k === this.assistant.carried);
  }

  private startRemedy(remedy: RemedyId, thing: string | undefined): void {
    const needsSide = remedy === 'changeGlove' || remedy === 'coverDrape';
    if (needsSide && thing !== 'left' && thing !== 'right') return;
    if (remedy === 'replaceItem' && !this.scene.things.some(({ id }, k) => k > 0 && id === thing)) return;
    this.remedies.start(remedy, thing ?? '', this.now);
  }

  private moveWorld(): void {
    const { world } = this.scene;
    const before = SIDES.map((side) => [world.bodyX[this.scene.hands[side]]!, world.bodyY[this.scene.hands[side]]!] as const);
    world.step();
    SIDES.forEach((side, k) => {
      const dx = world.bodyX[this.scene.hands[side]]! - before[k]![0];
      const dy = world.bodyY[this.scene.hands[side]]! - before[k]![1];
      this.hands[side].pathM += Math.sqrt(dx * dx + dy * dy);
    });
    settleHolds(this.scene, this.hands, this.sheath, this.gown);
    this.clip.step();
    this.catchInBin();
  }

  private catchInBin(): void {
    const { world, layout, things } = this.scene;
    things.forEach(({ body }, k) => {
      if (k === 0 || this.gone[k] || holderOf(this.hands, k)) return;
      const x = world.bodyX[body]!;
      if (x > layout.bin.left && x < layout.bin.right && world.bodyY[body]! < layout.bin.rim) {
        this.gone[k] = true;
        world.setBodyEnabled(body, false);
      }
    });
  }

  private stepRemedies(): void {
    const done = this.remedies.step(this.hands, this.happenings.humpX, (side, isReady) => this.assistant.changesGlove || (isReady && this.assistant.changeGlove(side, this.now, this.torsoX)));
    if (done) this.facts.push({ kind: 'remedied', step: this.now, remedy: done.remedy, things: applyRemedy(this, done.remedy, done.target) });
    const changed = this.gown?.takeChanged() ?? null;
    if (changed === null || this.remedies.active?.remedy !== 'changeGlove') return;
    this.remedies.cancel();
    this.facts.push({ kind: 'remedied', step: this.now, remedy: 'changeGlove', things: [changed] });
  }

  private idsOf(test: (k: number) => boolean): string[] {
    return this.scene.things.filter((_, k) => test(k)).map(({ id }) => id);
  }

  private sayUsed(k: number, site: SitePoint): void {
    const { solid, needle } = this.surfaces.slots.thing[k]!;
    this.facts.push({ kind: 'used', step: this.now, surface: this.surfaces.upper[needle >= 0 ? needle : solid]!, site: this.siteSurface(), x: site.x, y: site.y });
  }

  /** Surface of the skin in the middle of the site. */
  private siteSurface(): string {
    const { skin } = this.scene.layout;
    const x = this.scene.scenario.room.patient.siteXM;
    const k = skin.findIndex((_, i) => i + 1 < skin.length && skin[i]![0] <= x && skin[i + 1]![0] > x);
    return this.surfaces.upper[this.surfaces.slots.skin + k]!;
  }
}
