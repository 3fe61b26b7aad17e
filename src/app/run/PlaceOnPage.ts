import type { StagePoint } from './stagePort.ts';

/** Where an element lies on the page, measured again only after the page changed its layout: asking in every frame costs a layout. */
export class PlaceOnPage {
  private corner: StagePoint | null = null;
  private readonly sizes = new ResizeObserver(() => this.forget());
  private readonly end = new AbortController();

  constructor(private readonly element: HTMLElement) {
    const { signal } = this.end;
    this.sizes.observe(element);
    this.sizes.observe(document.documentElement);
    addEventListener('scroll', () => this.forget(), { capture: true, passive: true, signal });
    addEventListener('resize', () => this.forget(), { signal });
  }

  /** A place on the page (client pixels) in pixels from the element's upper left corner. */
  inside(clientX: number, clientY: number): StagePoint {
    if (!this.corner) {
      const { left, top } = this.element.getBoundingClientRect();
      this.corner = { x: left, y: top };
    }
    return { x: clientX - this.corner.x, y: clientY - this.corner.y };
  }

  dispose(): void {
    this.sizes.disconnect();
    this.end.abort();
  }

  private forget(): void {
    this.corner = null;
  }
}
