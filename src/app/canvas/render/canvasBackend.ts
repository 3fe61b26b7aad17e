import { CanvasRenderer, Container, RenderContainer } from 'pixi.js';
import type { Backend } from './backend.ts';
import { keptSprite } from './keptSprite.ts';

/** The check for code made at run time is meant for shaders; this way of drawing has none. */
class PlainCanvasRenderer extends CanvasRenderer {
  override _unsafeEvalCheck(): void {}
}

/**
 * Draws with the 2D canvas: the still picture as a sprite, moving things straight on to the screen's canvas.
 * @param canvas one of a page that is drawn from elsewhere; without it a new one is made
 */
export async function createBackend(canvas?: OffscreenCanvas): Promise<Backend> {
  const renderer = new PlainCanvasRenderer();
  await renderer.init({ width: 1, height: 1, resolution: 1, skipExtensionImports: true, clearBeforeRender: false, backgroundAlpha: 1, ...(canvas && { canvas }) });
  let paint: (ctx: CanvasRenderingContext2D) => void = () => {};
  const scene = new Container();
  const still = keptSprite(scene, true);
  scene.addChild(new RenderContainer(() => {
    const ctx = renderer.canvasContext.activeContext as unknown as CanvasRenderingContext2D;
    ctx.save();
    ctx.setTransform(1, 0, 0, 1, 0, 0);
    ctx.globalAlpha = 1;
    paint(ctx);
    ctx.restore();
  }));
  return {
    kind: 'canvas',
    canvas: renderer.canvas as HTMLCanvasElement,
    still,
    resize: (width, height) => renderer.resize(width, height, 1),
    render(withStill, next) {
      still.show(withStill);
      paint = next;
      renderer.render({ container: scene, clear: false });
    },
    destroy: () => {
      scene.destroy({ children: true, texture: true, textureSource: true });
      renderer.destroy(true);
    },
  };
}
