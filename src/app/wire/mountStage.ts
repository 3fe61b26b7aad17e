import type { QuerySwitches } from '../querySwitches.ts';
import type { MountStage, StagePort } from '../run/stagePort.ts';

/** Loads the drawing when the first room is shown, and puts a stage into an element. */
export function stageMounter(renderer: QuerySwitches['renderer']): MountStage {
  return async (host, shown): Promise<StagePort> => {
    const { createStage } = await import('../canvas/stage.ts');
    const reducedMotion = matchMedia('(prefers-reduced-motion: reduce)').matches;
    const stage = await createStage(host, { renderer: renderer ?? 'auto', reducedMotion, shown });
    const { camera } = stage;
    const sizes = new ResizeObserver(() => stage.resize());
    sizes.observe(host);
    return {
      draw: (previous, current, blend, look) => stage.draw(previous, current, blend, look),
      roomToScreen: (x, y) => camera.roomToScreen(x, y),
      screenToRoom: (x, y) => camera.screenToRoom(x, y),
      zoom: (factor, x, y) => camera.zoom(factor, x, y),
      pan: (dx, dy) => camera.pan(dx, dy),
      fit: (framing) => camera.fit(framing),
      drawHand: (canvas, picture, side, look) => stage.drawHand(canvas, picture, side, look),
      destroy: () => {
        sizes.disconnect();
        stage.destroy();
      },
    };
  };
}
