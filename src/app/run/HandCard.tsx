import { useEffect, useRef } from 'preact/hooks';
import type { Side } from '../../core/base/side.ts';
import { capital } from '../parts/sentence.ts';
import { heldLook } from './heldLook.ts';
import type { LiveRun } from './LiveRun.ts';
import type { DrawHand } from './stagePort.ts';

interface HandCardProps {
  readonly live: LiveRun;
  readonly side: Side;
  readonly drawHand: DrawHand | null;
}

/** What one hand holds and, under shown coaching, whether it is still sterile. Pressing the card makes the hand the active one. */
export function HandCard({ live, side, drawHand }: HandCardProps) {
  const drawing = useRef<HTMLCanvasElement>(null);
  const shown = live.coaching === 'shown';
  const active = live.hands.active === side;
  const held = live.run.heldWords(side);
  const broken = shown && held.broken;
  useEffect(() => {
    if (drawing.current && drawHand) drawHand(drawing.current, live.current, side, { active, shown });
  }, [drawHand, active, heldLook(live.current, side), shown && held.state]);
  return (
    <button class={active ? 'hand-card hand-card-active' : 'hand-card'} aria-pressed={active} onClick={() => live.hands.choose(side)}>
      <canvas ref={drawing} class="hand-drawing" aria-hidden="true" />
      <span class="hand-words">
        <span class="hand-name">{capital(side)} hand</span>
        <span>{held.what}</span>
        {shown && <span class={broken ? 'hand-state broken-words' : 'hand-state'}>{shortState(held.state)}</span>}
      </span>
      {active && <span class="hand-active">active</span>}
    </button>
  );
}

/** All parts of a hand together are the whole glove. */
const shortState = (state: string): string => (['fingers', 'palm', 'back', 'cuff'].every((part) => state.includes(part)) ? 'whole glove became unsterile' : state);
