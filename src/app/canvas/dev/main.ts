import '../../look/fonts.css';
import { createStage } from '../stage.ts';
import type { RendererChoice } from '../render/chooseBackend.ts';
import type { Framing } from '../framing.ts';
import type { RoomPicture } from '../../../core/room/picture.ts';
import { showCards } from './cards.ts';
import { makeFixture, type FixtureName } from './fixture.ts';
import { isSheathFixture, makeSheathFixture } from './sheathFixture.ts';
import { playGowning } from './liveGown.ts';
import { playLoading } from './liveLoading.ts';
import { playRun } from './liveRun.ts';

/** Shows a fixture; `?scene=field|marked|open|aside|run|cards|lying|overMouth|inside|drawing|banded|torn|loading|gown&seconds=4&framing=field|reach|room&renderer=canvas|webgl&shown=1&zoom=3&atX=640&atY=300`. */
const query = new URLSearchParams(location.search);
const shown = query.get('shown') === '1';
const fixtureNamed = (name: string | null): FixtureName => (name === 'marked' || name === 'open' || name === 'aside' ? name : 'field');
const stage = await createStage(document.querySelector<HTMLElement>('#host')!, {
  renderer: (query.get('renderer') ?? 'canvas') as RendererChoice, reducedMotion: true,
});
const seconds = Number(query.get('seconds') ?? 4);
const played = query.get('scene') === 'run' ? playRun(seconds) : query.get('scene') === 'loading' ? playLoading(seconds) : query.get('scene') === 'gown' ? playGowning(seconds) : [];
const scene = query.get('scene');
const picture = played.at(-1) ?? (isSheathFixture(scene) ? makeSheathFixture(scene) : makeFixture(fixtureNamed(scene)));
stage.camera.fit((query.get('framing') ?? 'field') as Framing);
if (query.has('zoom')) stage.camera.zoom(Number(query.get('zoom')), Number(query.get('atX')), Number(query.get('atY')));
const draw = (previous = picture, current = picture, blend = 1): void => stage.draw(previous, current, blend, { activeHand: 'right', shown });
draw();
draw();
addEventListener('resize', () => { stage.resize(); draw(); });

/** Hands and cord a little further, so that every frame has something new. */
function moved(phase: number): RoomPicture {
  const by = 0.02 * Math.sin(phase);
  const hands = { left: { ...picture.hands.left, y: picture.hands.left.y + by }, right: { ...picture.hands.right, x: picture.hands.right.x + by } };
  const strands = picture.strands.map((strand) => ({ ...strand, y: strand.y.map((y, i) => y + by * 0.2 * Math.sin(i)) }));
  return { ...picture, hands, strands };
}
if (query.get('scene') === 'cards') {
  stage.destroy();
  showCards(document.querySelector<HTMLElement>('#host')!);
}
Object.assign(window, { __draw: draw, __moved: moved, __stage: stage, __played: played, __ready: true });
