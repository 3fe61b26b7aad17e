import 'pixi.js/unsafe-eval';
import { Container, WebGLRenderer } from 'pixi.js';
import type { Backend } from './backend.ts';
import { keptSprite } from './keptSprite.ts';

/** Shows with WebGL: the still picture as a sprite, moving things as one more picture that is sent anew in every frame. */
export async function createBackend(): Promise<Backend> {
  const renderer = new WebGLRenderer();
  await renderer.init({ width: 1, height: 1, resolution: 1, skipExtensionImports: true, backgroundAlpha: 1, antialias: false, preferWebGLVersion: 2 });
  const scene = new Container();
  const still = keptSprite(scene, true);
  const moving = keptSprite(scene, false);
  return {
    kind: 'webgl',
    canvas: renderer.canvas,
    still,
    resize(width, height) {
      renderer.resize(width, height, 1);
      moving.reshape(width, height);
    },
    render(withStill, paint) {
      still.show(withStill);
      const { ctx } = moving;
      ctx.setTransform(1, 0, 0, 1, 0, 0);
      ctx.clearRect(0, 0, ctx.canvas.width, ctx.canvas.height);
      ctx.save();
      paint(ctx);
      ctx.restore();
      moving.changed();
      renderer.render({ container: scene });
    },
    destroy: () => {
      scene.destroy({ children: true, texture: true, textureSource: true });
      renderer.destroy(true);
    },
  };
}
