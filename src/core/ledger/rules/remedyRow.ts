import type { RemedyId, RequestId } from '../../commands/command.ts';
import type { Mark, Source } from './sources.ts';
import type { StationId } from './station.ts';

/** One row of the table of breaks and what answers them. */
export interface RemedyRow {
  readonly id: string;
  /** Row of the project's table of practice, or null where that table is silent and the row is our own. */
  readonly row: string | null;
  /** What happened. */
  readonly broken: string;
  /** What must be done. */
  readonly asked: string;
  /** How it can be practised here, or the station that it waits for and why. */
  readonly practised: Practised | Waiting;
  readonly source: Source;
  readonly mark: Mark;
}

export interface Practised {
  /** Rules of the rule book of which this is the answer. */
  readonly rules: readonly string[];
  /** Remedies that a run offers for it, the most fitting first. */
  readonly remedies: readonly RemedyId[];
  readonly requests?: readonly RequestId[];
  /** Part of the row that a run cannot show. */
  readonly without?: string;
}

export interface Waiting {
  readonly station: StationId;
  /** What the station does not show yet; absent where the station itself is still to come. */
  readonly missing?: string;
}
