import type { Scene } from './scene.ts';

/** Share by which a new pull enters the one that counts: about 0.1 s, since cloth and cord take up shorter jerks. */
const PULL_BLEND = 0.08;

/** The clip that ties the cord to the drape: it lets go once the cord pulls at it harder than it holds. Plain data in `save`. */
export class Clip {
  /** Pull in newtons, averaged over about 0.1 s. */
  private pullN = 0;

  constructor(private readonly scene: Scene) {}

  /** Whether it still holds. */
  get closed(): boolean {
    const { world, clip } = this.scene;
    return clip !== null && world.holderOf(clip.cordNode) === clip.body;
  }

  step(): void {
    const { world, clip, scenario } = this.scene;
    if (!clip || !this.closed) return;
    this.pullN += (world.holdForce(clip.cordNode) - this.pullN) * PULL_BLEND;
    if (this.pullN > scenario.cord.clipN) world.releaseNode(clip.cordNode);
  }

  /** Ties the cord to the drape where both lie now. */
  close(): void {
    const { world, clip } = this.scene;
    this.pullN = 0;
    if (clip && !this.closed) world.gripNode(clip.body, clip.cordNode, Infinity);
  }

  save(): unknown {
    return this.pullN;
  }

  restore(saved: unknown): void {
    this.pullN = saved as number;
  }
}
