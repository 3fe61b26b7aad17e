import { CanvasSource, Sprite, Texture, type Container } from 'pixi.js';
import type { KeptPicture } from './backend.ts';

/** A kept picture as a sprite of the scene. */
export function keptSprite(parent: Container, index: number): KeptPicture {
  const canvas = document.createElement('canvas');
  canvas.width = canvas.height = 1;
  const source = new CanvasSource({ resource: canvas, resolution: 1, scaleMode: 'nearest' });
  const sprite = new Sprite(new Texture({ source }));
  sprite.roundPixels = true;
  parent.addChildAt(sprite, index);
  const ctx = canvas.getContext('2d')!;
  return {
    ctx,
    reshape(x, y, width, height) {
      source.resize(Math.max(1, width), Math.max(1, height), 1);
      sprite.texture.update();
      sprite.visible = width > 1 && height > 1;
      sprite.position.set(x, y);
      ctx.setTransform(1, 0, 0, 1, 0, 0);
      ctx.clearRect(0, 0, canvas.width, canvas.height);
    },
    moveTo: (x, y) => { sprite.position.set(x, y); },
    changed: () => source.update(),
  };
}
