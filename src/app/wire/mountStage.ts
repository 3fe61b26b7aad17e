import type { Stage } from '../canvas/stage.ts';
import type { Framing } from '../input/keyMap.ts';
import type { QuerySwitches } from '../querySwitches.ts';
import type { MountStage, RoomPart, StagePort } from '../run/stagePort.ts';

/** The drawing is loaded when the first room is shown or soon will be. */
const loadStage = () => import('../canvas/stage.ts');

/** Loads the drawing before it is needed. */
export async function prepareStage(renderer: QuerySwitches['renderer']): Promise<void> {
  (await loadStage()).warmUpStage(renderer ?? 'auto');
}

/** Puts a stage into an element. */
export function stageMounter(renderer: QuerySwitches['renderer']): MountStage {
  return async (host): Promise<StagePort> => {
    const { createStage } = await loadStage();
    const reducedMotion = matchMedia('(prefers-reduced-motion: reduce)').matches;
    const stage = await createStage(host, { renderer: renderer ?? 'auto', reducedMotion });
    const { camera } = stage;
    let holding = false;
    const sizes = new ResizeObserver(() => stage.resize());
    sizes.observe(host);
    return {
      draw(previous, current, blend, look) {
        holding = current.hands.left.holds !== null || current.hands.right.holds !== null;
        stage.draw(previous, current, blend, look);
      },
      roomToScreen: (x, y) => camera.roomToScreen(x, y),
      screenToRoom: (x, y) => camera.screenToRoom(x, y),
      zoom: (factor, x, y) => camera.zoom(factor, x, y),
      pan: (dx, dy) => camera.pan(dx, dy),
      fit: (framing) => (holding ? cutTo(camera, framing) : camera.fit(framing)),
      drawHand: (canvas, picture, side, look) => stage.drawHand(canvas, picture, side, look),
      destroy: () => {
        sizes.disconnect();
        stage.destroy();
      },
    };
  };
}

/** Longer than any glide of the camera, in milliseconds. */
const GLIDE_OVER_MS = 10_000;

/** The camera does not move by itself under a held thing; when the person asks for it, it cuts to the view instead of waiting. */
function cutTo(camera: Stage['camera'], framing: Framing | RoomPart): void {
  const nowMs = performance.now();
  camera.advance(false, nowMs);
  camera.fit(framing);
  camera.advance(false, nowMs + GLIDE_OVER_MS);
}
