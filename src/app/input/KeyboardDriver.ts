import { SIDES, type Side } from '../../core/base/side.ts';
import type { HandsControl } from './HandsControl.ts';
import { keyMeaning, type Direction, type KeyMeaning } from './keyMap.ts';
import { FINE_TURN_DEG_PER_S, keySpeed, TURN_DEG_PER_S } from './speedRamp.ts';

/** Meanings that are not about hands; the page answers them. */
export type PageOrder = Extract<KeyMeaning, { kind: 'notice' | 'remedy' | 'ask' | 'answer' | 'say' | 'pause' | 'help' | 'zoom' | 'frame' }>;

/** Keys alone: two mirrored clusters. They work while the room has the focus. */
export class KeyboardDriver {
  private readonly down = new Map<string, KeyMeaning>();
  private readonly heldS: Record<Side, number> = { left: 0, right: 0 };
  private fine = false;

  constructor(
    private readonly hands: HandsControl,
    private readonly onOrder: (order: PageOrder) => void,
  ) {}

  attach(room: HTMLElement, signal: AbortSignal): void {
    room.addEventListener('keydown', (event) => this.keyDown(event), { signal });
    room.addEventListener('keyup', (event) => this.keyUp(event), { signal });
    room.addEventListener('blur', () => this.letGoOfAll(), { signal });
    window.addEventListener('blur', () => this.letGoOfAll(), { signal });
  }

  /** Moves the hands by the keys held; `seconds` of room time have passed. */
  tick(seconds: number): void {
    for (const side of SIDES) this.moveHand(side, seconds);
    for (const meaning of this.down.values()) {
      if (meaning.kind !== 'turn') continue;
      const speed = this.fine ? FINE_TURN_DEG_PER_S : TURN_DEG_PER_S;
      this.hands.rotateBy(this.handOf(meaning), meaning.anticlockwise * speed * seconds);
    }
  }

  private moveHand(side: Side, seconds: number): void {
    const dx = this.held(side, 'right') - this.held(side, 'left');
    const dy = this.held(side, 'up') - this.held(side, 'down');
    if (dx === 0 && dy === 0) {
      this.heldS[side] = 0;
      return;
    }
    this.heldS[side] += seconds;
    const speed = keySpeed(this.heldS[side], this.fine) / Math.sqrt(dx * dx + dy * dy);
    this.hands.moveBy(side, dx * speed * seconds, dy * speed * seconds);
  }

  private held(side: Side, direction: Direction): number {
    for (const meaning of this.down.values()) if (meaning.kind === 'move' && meaning.side === side && meaning.direction === direction) return 1;
    return 0;
  }

  /** The left cluster serves the active hand while the mouse leads; else each cluster serves its own hand. */
  private handOf(meaning: { readonly side: Side; readonly followsMouse: boolean }): Side {
    return meaning.followsMouse && this.hands.mode.context.leader === 'mouse' ? this.hands.active : meaning.side;
  }

  private keyDown(event: KeyboardEvent): void {
    this.fine = event.shiftKey;
    const meaning = keyMeaning(event.code, event.key);
    if (!meaning || event.ctrlKey || event.metaKey || event.altKey) return;
    if (meaning.kind === 'otherHand' && event.shiftKey) return;
    event.preventDefault();
    if (event.repeat) return;
    this.down.set(event.code, meaning);
    this.begin(meaning);
  }

  private begin(meaning: KeyMeaning): void {
    switch (meaning.kind) {
      case 'move':
        this.hands.led('keyboard');
        return this.hands.choose(meaning.side);
      case 'turn':
        return this.hands.choose(this.handOf(meaning));
      case 'grip':
        this.hands.choose(this.handOf(meaning));
        return this.hands.flipGrip(this.hands.active);
      case 'use':
        this.hands.choose(this.handOf(meaning));
        return this.hands.use(this.hands.active, true);
      case 'gripActive':
        return this.hands.flipGrip(this.hands.active);
      case 'otherHand':
        return this.hands.swap();
      default:
        return this.onOrder(meaning);
    }
  }

  private keyUp(event: KeyboardEvent): void {
    this.fine = event.shiftKey;
    const meaning = this.down.get(event.code);
    this.down.delete(event.code);
    if (meaning?.kind === 'use') for (const side of SIDES) this.hands.use(side, false);
  }

  private letGoOfAll(): void {
    this.down.clear();
    for (const side of SIDES) this.hands.use(side, false);
  }
}
