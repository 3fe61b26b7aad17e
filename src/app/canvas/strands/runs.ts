import type { SurfaceMark } from '../../../core/room/picture.ts';
import type { MarkOf } from '../art/marks.ts';

/** Neighbouring stretches of a strand that are shown alike: nodes `from` to `to`. */
export interface Run {
  readonly mark: SurfaceMark;
  readonly from: number;
  readonly to: number;
}

export function runsOf(surfaces: readonly string[], markOf: MarkOf): Run[] {
  const runs: Run[] = [];
  surfaces.forEach((surface, i) => {
    const mark = markOf(surface);
    const last = runs.at(-1);
    if (last?.mark === mark && last.to === i) runs[runs.length - 1] = { ...last, to: i + 1 };
    else runs.push({ mark, from: i, to: i + 1 });
  });
  return runs;
}
