import { STEP_SECONDS } from '../base/time.ts';

/** What a world can be told; everything has a default that the accuracy tests run with. */
export interface WorldOptions {
  /** Gravity along y in m/s² (default −9.81). */
  readonly gravity?: number;
  /** Fewest and most sub-steps per step (default 8 and 40); taut or fast scenes get more. */
  readonly minSubsteps?: number;
  readonly maxSubsteps?: number;
  /** Whether calm things stop exactly (default true). */
  readonly sleep?: boolean;
  /** Speed below which a thing counts as calm, m/s (default 0.003). */
  readonly sleepSpeed?: number;
  /** How long it must stay calm, s (default 0.5). */
  readonly sleepAfter?: number;
}

/** Constants of the solver, in SI units, with the reason for each value. */
export class Settings {
  readonly dt = STEP_SECONDS;
  readonly gravity: number;
  readonly minSubsteps: number;
  readonly maxSubsteps: number;
  readonly sleep: boolean;
  readonly sleepSpeed: number;
  readonly sleepAfter: number;
  /** No node or body may inherit a higher speed than this: more than any fall in a room gives. */
  readonly speedCap = 8;
  /** Things nearer than this are looked at in every sub-step until something has moved that far. */
  readonly margin = 0.016;
  /** A contact exists from this separation on, so that it is there before the surfaces meet. */
  readonly slack = 0.0015;
  /** Speed at which an overlap is undone, against movable things and against fixed ones. */
  readonly recovery = 1;
  readonly recoveryFixed = 4;
  /** Additional recovery between strands, reached at 5 mm of overlap. */
  readonly recoveryDeep = 4;
  /** Range in which a node remembers on which side of another strand it lies. */
  readonly sideMemory = 0.03;
  /** Bulge of a bent link over its chord that contacts of links allow for. */
  readonly sagitta = 0.0015;
  /** Share of its mobility that a node keeps when a body presses it on to something fixed. */
  readonly supported = 0.03;
  /** The contact state enters the chain solve when T h²/m exceeds this (m); below, separate passes are as exact. */
  readonly tautFrom = 1e-4;
  /** Most chain solves per sub-step while contact states settle: a slip front moves one node per solve. */
  readonly stateRounds = 24;
  /** In the first of these rounds nodes may also be caught again; after them only let loose, so that the search ends. */
  readonly tightenRounds = 5;
  readonly rigidRounds = 12;
  /** Overlap that rigid contacts keep, so that they do not come and go. */
  readonly rigidRest = 2e-5;

  /** After this long (s) without any action from outside, drag grows as rate · time² (1/s³) up to the limit (1/s), so that a swinging cord comes to rest. */
  readonly settleAfter = 0.6;
  readonly settleRate = 8;
  readonly settleLimit = 40;
  /** Change of a body's force per step (N) that counts as an action. */
  readonly noticeForce = 0.02;

  constructor(options: WorldOptions) {
    this.gravity = options.gravity ?? -9.81;
    this.minSubsteps = options.minSubsteps ?? 8;
    this.maxSubsteps = options.maxSubsteps ?? 40;
    this.sleep = options.sleep ?? true;
    this.sleepSpeed = options.sleepSpeed ?? 0.003;
    this.sleepAfter = options.sleepAfter ?? 0.5;
  }
}
