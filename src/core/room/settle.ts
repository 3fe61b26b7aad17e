import type { Side } from '../base/side.ts';
import { STEPS_PER_SECOND } from '../base/time.ts';
import type { WorldSnapshot } from '../physics/types.ts';
import type { Scenario } from '../scenario/schema.ts';
import { driveHands } from './driveHands.ts';
import { restingHand } from './handState.ts';
import type { Point } from './layout.ts';
import { buildScene, buildSheets, type LaidSheets, type Scene } from './scene.ts';

/** How long sheets lie alone, and then the whole scene, before a run begins, so that everything lies still (s). */
const SHEETS_S = 2.5;
const SETTLE_S = 4;

/**
 * A scene at rest: how the sheets lay alone, and the state of the solver once everything lies still on them. It follows from the
 * scenario alone, not from a run's seed. Plain data that can be sent to another thread and used for any number of runs.
 */
export interface SettledState {
  readonly sheets: LaidSheets;
  readonly world: WorldSnapshot;
}

/** Lets the scene of a scenario come to rest under the operator's still hands. It takes hundreds of steps of the solver. */
export function settle(scenario: Scenario): SettledState {
  const bare = buildSheets(scenario);
  for (let k = 0; k < SHEETS_S * STEPS_PER_SECOND; k++) bare.world.step();
  const sheetOf = (side: Side): Point[] => {
    const start = bare.world.strandStart(bare.drapes[side]);
    return Array.from({ length: bare.world.strandSize(bare.drapes[side]) }, (_, k): Point => [bare.world.x[start + k]!, bare.world.y[start + k]!]);
  };
  const sheets = { left: sheetOf('left'), right: sheetOf('right') };
  const scene = buildScene(scenario, sheets);
  const hands = { left: restingHand(scenario, 'left'), right: restingHand(scenario, 'right') };
  for (let k = 0; k < SETTLE_S * STEPS_PER_SECOND; k++) {
    driveHands(scene, hands, 'right', scene.dress?.homeX ?? 0);
    scene.world.step();
  }
  return { sheets, world: scene.world.snapshot() };
}

/** The scene of a scenario with everything at rest, as `settle` leaves it. */
export function settledScene(scenario: Scenario, settled: SettledState): Scene {
  const scene = buildScene(scenario, settled.sheets);
  scene.world.restore(settled.world);
  return scene;
}

/** Where sheets, cord and things lay when the run began. */
export interface Laid {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly things: readonly { readonly x: number; readonly y: number; readonly c: number; readonly s: number }[];
  readonly clip: Point;
}

export function rememberLaid(scene: Scene): Laid {
  const { world, things, clip } = scene;
  return {
    x: world.x.slice(),
    y: world.y.slice(),
    things: things.map(({ body }) => ({ x: world.bodyX[body]!, y: world.bodyY[body]!, c: world.bodyC[body]!, s: world.bodyS[body]! })),
    clip: clip ? [world.bodyX[clip.body]!, world.bodyY[clip.body]!] : [0, 0],
  };
}
