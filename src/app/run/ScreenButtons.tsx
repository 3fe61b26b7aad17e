import type { Side } from '../../core/base/side.ts';
import type { HandsControl } from '../input/HandsControl.ts';

const TURN_DEG = 8;

/** Buttons in the lower corners for fingers: each hand's own, on the side where the hand is seen. */
export function ScreenButtons({ hands }: { readonly hands: HandsControl }) {
  return (
    <>
      <Corner hands={hands} side="right" />
      <Corner hands={hands} side="left" />
    </>
  );
}

function Corner({ hands, side }: { readonly hands: HandsControl; readonly side: Side }) {
  return (
    <div class={`corner corner-${side}`} role="group" aria-label={`${side} hand`}>
      <span class="corner-name" aria-hidden="true">
        {side} hand
      </span>
      <button class={hands.isClosed(side) ? 'corner-on' : undefined} onClick={() => hands.flipGrip(side)}>
        {hands.isClosed(side) ? 'Open' : 'Grip'}
      </button>
      <button onPointerDown={() => hands.use(side, true)} onPointerUp={() => hands.use(side, false)} onPointerLeave={() => hands.use(side, false)}>
        Use
      </button>
      <button aria-label={`Turn the ${side} wrist anticlockwise`} onClick={() => hands.rotateBy(side, TURN_DEG)}>
        ⟲
      </button>
      <button aria-label={`Turn the ${side} wrist clockwise`} onClick={() => hands.rotateBy(side, -TURN_DEG)}>
        ⟳
      </button>
    </div>
  );
}
