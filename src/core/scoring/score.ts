/** What an event behind a number is. */
export type EventKind = 'break' | 'notice' | 'remedy' | 'task' | 'movement' | 'drop' | 'drift' | 'clearance' | 'cue';

/** One event of the run that a number or a verdict rests on. */
export interface EventRef {
  readonly kind: EventKind;
  /** Step of the run at which it happened (1/120 s). */
  readonly step: number;
  /** Number of the break, or place (from 1) in its list, where it has one. */
  readonly number?: number;
  /** One short clause for a person. */
  readonly words: string;
}

export type Verdict = 'met' | 'notYet';

/** One condition of the verdict; the verdict is *met* when every one of them holds. */
export interface VerdictReason {
  readonly id: 'criticalBreaks' | 'majorBreaks' | 'usedUnsterile' | 'criticalTasks' | 'standard' | 'time';
  readonly holds: boolean;
  /** One plain sentence. */
  readonly words: string;
  readonly events: readonly EventRef[];
}

export type PartId = 'asepsis' | 'procedure' | 'handling' | 'time';

/** One number under a part, with the points it brought, where the rubric gives any for it. */
export interface ScoreLine {
  /** Unique within its part, such as `breaks` or `task.gel`. */
  readonly id: string;
  readonly words: string;
  /** Null where there was nothing to measure. */
  readonly value: number | null;
  /** Unit of the value: 's', 'm', '%', 'per 10 min', … or '' for a plain count. */
  readonly unit: string;
  /** Exact 95 % interval of the value, where it is a rate. */
  readonly interval?: readonly [number, number];
  /** Points earned and points to earn; both null for a number that is only told. */
  readonly points: number | null;
  readonly of: number | null;
  readonly events: readonly EventRef[];
}

export interface ScorePart {
  readonly id: PartId;
  readonly words: string;
  readonly points: number;
  readonly of: number;
  readonly lines: readonly ScoreLine[];
}

/** What a run is worth under a rubric. Plain JSON, a pure function of the run's result and its scenario. */
export interface Score {
  /** Version of the rules of scoring; scores of different versions are not compared. */
  readonly rubricVersion: number;
  readonly verdict: Verdict;
  readonly reasons: readonly VerdictReason[];
  /** 0 to 100, in tenths. */
  readonly total: number;
  /** Least total for *met*. */
  readonly standard: number;
  readonly parts: readonly ScorePart[];
}
