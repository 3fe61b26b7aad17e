import type { Pen } from './pen/pen.ts';

/** Side of a cell in device pixels. */
const SIDE_PX = 64;

/** The cells of an even grid on the screen that a thin thing touches, so that only those need to be copied. */
export class Cells {
  private readonly rows = new Map<number, Set<number>>();

  /**
   * @param points of the pen's frame, near enough to each other that no cell between two of them is missed
   * @param reachPx how far the thing reaches from its points, in device pixels
   */
  constructor(pen: Pen, points: Iterable<readonly [number, number]>, reachPx: number) {
    const [a, b, c, d, e, f] = pen.map;
    for (const [u, v] of points) {
      const x = a * u + c * v + e;
      const y = b * u + d * v + f;
      for (let row = Math.floor((y - reachPx) / SIDE_PX); row <= Math.floor((y + reachPx) / SIDE_PX); row++) {
        const cells = this.rows.get(row) ?? new Set();
        this.rows.set(row, cells);
        for (let column = Math.floor((x - reachPx) / SIDE_PX); column <= Math.floor((x + reachPx) / SIDE_PX); column++) cells.add(column);
      }
    }
  }

  /** Calls `visit` with left, top, width, height of each row of neighbouring cells. */
  forEachRun(visit: (left: number, top: number, width: number, height: number) => void): void {
    for (const [row, cells] of this.rows) {
      const columns = [...cells].sort((a, b) => a - b);
      let start = columns[0]!;
      columns.forEach((column, i) => {
        if (columns[i + 1] === column + 1) return;
        visit(start * SIDE_PX, row * SIDE_PX, (column - start + 1) * SIDE_PX, SIDE_PX);
        start = columns[i + 1]!;
      });
    }
  }
}
