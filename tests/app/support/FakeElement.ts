type Listener = (event: never) => void;

/** As much of an element as the drivers listen to. */
export class FakeElement {
  private readonly listeners = new Map<string, Listener[]>();

  addEventListener(type: string, listener: Listener): void {
    this.listeners.set(type, [...(this.listeners.get(type) ?? []), listener]);
  }

  setPointerCapture(): void {}

  focus(): void {}

  /** Sends an event; what the driver does not look at may be left out. */
  send(type: string, event: Record<string, unknown> = {}): void {
    const whole = { preventDefault: () => undefined, timeStamp: 0, ...event };
    for (const listener of this.listeners.get(type) ?? []) listener(whole as never);
  }
}

export const asElement = (fake: FakeElement): HTMLElement => fake as unknown as HTMLElement;
