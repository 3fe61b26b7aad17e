import 'pixi.js/unsafe-eval';
import { Container, WebGLRenderer } from 'pixi.js';
import type { Backend } from './backend.ts';
import { keptSprite } from './keptSprites.ts';

/** Shows with WebGL: kept pictures as sprites, moving things as one more picture that is sent anew in every frame. */
export async function createBackend(): Promise<Backend> {
  const renderer = new WebGLRenderer();
  await renderer.init({ width: 1, height: 1, resolution: 1, skipExtensionImports: true, backgroundAlpha: 1, antialias: false, preferWebGLVersion: 2 });
  const scene = new Container();
  const moving = keptSprite(scene, 0);
  return {
    kind: 'webgl',
    canvas: renderer.canvas,
    keep: () => keptSprite(scene, scene.children.length - 1),
    resize(width, height) {
      renderer.resize(width, height, 1);
      moving.reshape(0, 0, width, height);
    },
    render(paint) {
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
