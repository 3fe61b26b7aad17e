import type { Fact } from '../ledger/fact.ts';

/** Numbers of touches that follow from what hands do with cloth start here, so that they never meet those of tracker and grips. */
const MADE_TOUCHES = 2_000_000;

/** Two surfaces that touch now, by id, though no outline shows it: cloth on a hand, a hand under cloth. */
export interface MadeTouch {
  readonly a: string;
  readonly b: string;
  readonly x: number;
  readonly y: number;
}

/** Turns what touches in a step into touches that begin and end. */
export class MadeTouches {
  private open = new Map<string, number>();
  private next = MADE_TOUCHES;

  step(step: number, now: readonly MadeTouch[]): Fact[] {
    const facts: Fact[] = [];
    const keys = new Set(now.map(({ a, b }) => `${a} ${b}`));
    for (const { a, b, x, y } of now) {
      const key = `${a} ${b}`;
      if (this.open.has(key)) continue;
      facts.push({ kind: 'touch.began', step, touch: this.next, a, b, x, y });
      this.open.set(key, this.next++);
    }
    for (const [key, touch] of this.open) {
      if (keys.has(key)) continue;
      facts.push({ kind: 'touch.ended', step, touch });
      this.open.delete(key);
    }
    return facts;
  }

  save(): unknown {
    return { open: [...this.open], next: this.next };
  }

  restore(saved: unknown): void {
    const s = saved as { open: [string, number][]; next: number };
    this.open = new Map(s.open);
    this.next = s.next;
  }
}
