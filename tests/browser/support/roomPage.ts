import { expect, type Page } from '@playwright/test';

export type Side = 'left' | 'right';
export interface Spot {
  readonly x: number;
  readonly y: number;
  readonly screenX: number;
  readonly screenY: number;
  readonly holds?: string | null;
}

interface Hook {
  pause(): void;
  advance(steps: number): void;
  stepCount(): number;
  hand(side: Side): Spot;
  item(id: string): Spot;
  end(id: string): Spot;
  site(): Spot;
  assistant(): string;
  result(): { progress: { tasks: { task: string; doneStep: number | null }[] }; breaks: { rule: string }[] };
}

/** The room on the page, with its clock in the hands of the test: events are real, steps are made when asked for. */
export class RoomPage {
  constructor(readonly page: Page) {}

  /** Starts a scenario from the start page. */
  async start(title: string, coaching: 'shown' | 'silent' = 'silent'): Promise<this> {
    await this.page.goto('?test&renderer=canvas');
    await this.page.getByRole('radio', { name: title }).check();
    await this.page.getByRole('radio', { name: coaching, exact: true }).check();
    await this.page.getByRole('button', { name: /^Start/ }).click();
    await this.page.waitForFunction(() => 'trainer' in window);
    await this.ask('pause');
    await this.page.keyboard.press('9');
    await this.pictureStands();
    await this.advance(60);
    return this;
  }

  /** Waits until the picture has glided to where it was sent: screen places hold only from then on. */
  private async pictureStands(): Promise<void> {
    const place = async (): Promise<string> => JSON.stringify([await this.site(), await this.hand('right')].map(({ screenX, screenY }) => [screenX, screenY]));
    for (let still = 0, last = ''; still < 3; ) {
      await this.page.waitForTimeout(100);
      const now = await place();
      still = now === last ? still + 1 : 0;
      last = now;
    }
  }

  /** Makes steps of 1/120 s. */
  async advance(steps: number): Promise<void> {
    await this.page.evaluate((n) => (window as unknown as { trainer: Hook }).trainer.advance(n), steps);
  }

  hand(side: Side): Promise<Spot> {
    return this.ask('hand', side);
  }

  item(id: string): Promise<Spot> {
    return this.ask('item', id);
  }

  end(id: string): Promise<Spot> {
    return this.ask('end', id);
  }

  site(): Promise<Spot> {
    return this.ask('site');
  }

  /** What the assistant is at. */
  assistantDoes(): Promise<string> {
    return this.ask('assistant');
  }

  async tasksDone(): Promise<string[]> {
    const { progress } = await this.ask<ReturnType<Hook['result']>>('result');
    return progress.tasks.filter(({ doneStep }) => doneStep !== null).map(({ task }) => task);
  }

  async rulesBroken(): Promise<string[]> {
    return (await this.ask<ReturnType<Hook['result']>>('result')).breaks.map(({ rule }) => rule);
  }

  /** Screen position of a place in the room, from two known points of it. */
  async screenOf(x: number, y: number): Promise<{ x: number; y: number }> {
    const a = await this.site();
    const b = await this.hand('right');
    const scale = (b.screenX - a.screenX) / (b.x - a.x);
    return { x: a.screenX + (x - a.x) * scale, y: a.screenY - (y - a.y) * scale };
  }

  /** Ends the run and goes to its report. */
  async finish(): Promise<void> {
    await this.page.getByRole('button', { name: 'End run' }).click();
    await this.page.getByRole('dialog').getByRole('button', { name: /^End/ }).click();
    await expect(this.page.getByRole('button', { name: /Save/ }).first()).toBeVisible();
  }

  private ask<Answer>(what: keyof Hook, ...words: string[]): Promise<Answer> {
    return this.page.evaluate(([name, given]) => (window as unknown as { trainer: Record<string, (...w: string[]) => Answer> }).trainer[name as string]!(...(given as string[])), [what, words] as const) as Promise<Answer>;
  }
}
