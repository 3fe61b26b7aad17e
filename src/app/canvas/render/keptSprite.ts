import { CanvasSource, Sprite, Texture, type Container } from 'pixi.js';
import { makeCanvas } from '../makeCanvas.ts';
import type { KeptPicture } from './backend.ts';

/** A kept picture as a sprite of the scene, over those that were added before it. */
export function keptSprite(parent: Container, opaque: boolean): KeptPicture {
  const canvas = makeCanvas();
  canvas.width = canvas.height = 1;
  const ctx = canvas.getContext('2d', { alpha: !opaque })!;
  const source = new CanvasSource({ resource: canvas, resolution: 1, scaleMode: 'nearest' });
  // A texture of changing size, so that the sprite follows it.
  const sprite = new Sprite(new Texture({ source, dynamic: true }));
  sprite.roundPixels = true;
  parent.addChild(sprite);
  return {
    ctx,
    reshape(width, height) {
      if (canvas.width === width && canvas.height === height) { ctx.clearRect(0, 0, width, height); return; }
      source.resize(width, height, 1);
      sprite.texture.update();
    },
    show: (visible) => { sprite.visible = visible; },
    changed: () => source.update(),
  };
}
