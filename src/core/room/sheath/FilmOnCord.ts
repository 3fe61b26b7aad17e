import type { Scene } from '../scene.ts';
import type { Slot, Surfaces } from '../surfaces.ts';
import { turningOver } from './alongCord.ts';
import { coverableM, FOLD_M, POCKET_LINKS, stretchAt } from './loading.ts';
import type { Pocket } from './Pocket.ts';
import { slideForceN } from './slideForce.ts';

interface Saved {
  readonly tailed: boolean;
  readonly links: number;
}

/** Which surface of the film lies where: on the opened sheath by depth, on probe and cord by what is covered. */
export class FilmOnCord {
  /** The open end was given into the assistant's hand. */
  tailed = false;
  /** Links of the cord that carry film now. */
  private links = 0;

  constructor(
    private readonly scene: Scene,
    private readonly surfaces: Surfaces,
    private readonly host: { replaced(slot: Slot): void; moved(slot: Slot): void },
  ) {}

  /** Pull that moves the open end along the cord (N). */
  stickN(): number {
    const { world, cord, cover, scenario } = this.scene;
    const { drawN, friction } = scenario.sheath;
    return slideForceN(drawN, friction, turningOver(world, cord, scenario.cord.linkM, cover.coveredM));
  }

  /** The film lies on the probe. */
  lieOnProbe(): void {
    const { slots, film } = this.surfaces;
    this.wear(slots.thing[0]!.solid, film!.probe);
    this.host.moved(slots.thing[0]!.solid);
    this.host.moved(slots.end);
  }

  /** Gives each stretch of the opened film, or of the covered cord, its surface. */
  layOut(pocket: Pocket, strand: number): void {
    const { scenario, cover, world } = this.scene;
    const { slots, film } = this.surfaces;
    if (pocket.isOpen) {
      const linkM = (2 * pocket.depthM) / POCKET_LINKS;
      for (let k = 0, links = world.strandSize(strand) - 1; k < links; k++) {
        const fromEnd = Math.abs(k + 0.5 - POCKET_LINKS / 2) * linkM;
        const stretch = stretchAt(scenario, fromEnd);
        const id = stretch === 'probe' ? film!.probe : film!.links[stretch]!;
        this.wear(slots.pocket + k, pocket.depthM - fromEnd < FOLD_M ? film!.inside : id, film!.inside);
      }
    }
    const covered = cover.on ? Math.min(film!.links.length, Math.round(cover.coveredM / scenario.cord.linkM)) : 0;
    for (; this.links < covered; this.links++) this.wear(slots.cord + this.links, film!.links[this.links]!);
    for (; this.links > covered; this.links--) this.wear(slots.cord + this.links - 1, this.surfaces.bare!.cord[this.links - 1]!);
  }

  /** The end and the last of the film become the open end that was in the assistant's hand. */
  handOver(): void {
    if (this.tailed) return;
    this.tailed = true;
    const { scenario } = this.scene;
    const { slots } = this.surfaces;
    const from = Math.floor((coverableM(scenario) - scenario.policy.sheathTailM) / scenario.cord.linkM + 0.5);
    this.surfaces.openEnd(Math.max(0, from));
    this.host.replaced(slots.end);
    for (let k = Math.max(0, from); k < this.links; k++) this.wear(slots.cord + k, this.surfaces.film!.links[k]!);
  }

  /** A new sheath, folded; probe and cord are bare. */
  startOver(): void {
    const { slots } = this.surfaces;
    this.tailed = false;
    this.links = 0;
    this.surfaces.newFilm();
    this.surfaces.bareProbe();
    for (let slot = slots.cord; slot < slots.cord + this.scene.world.strandSize(this.scene.cord) - 1; slot++) this.host.replaced(slot);
    for (let slot = slots.pocket; slot < slots.count; slot++) this.host.replaced(slot);
    this.host.replaced(slots.thing[0]!.solid);
  }

  save(): unknown {
    const saved: Saved = { tailed: this.tailed, links: this.links };
    return saved;
  }

  restore(saved: unknown): void {
    ({ tailed: this.tailed, links: this.links } = saved as Saved);
  }

  private wear(slot: Slot, upper: string, under = upper): void {
    if (this.surfaces.upper[slot] === upper && this.surfaces.under[slot] === under) return;
    this.surfaces.upper[slot] = upper;
    this.surfaces.under[slot] = under;
    this.host.replaced(slot);
  }
}
