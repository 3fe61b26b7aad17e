import type { RemedyId } from '../../commands/command.ts';
import type { Scenario } from '../../scenario/schema.ts';
import type { Severity } from '../break.ts';
import type { Zone } from '../fact.ts';
import type { SurfaceKind } from '../surface.ts';
import type { Mark, Source } from './sources.ts';
import type { StationId } from './station.ts';

/**
 * Why a surface that is met counts as unsterile without a break of this run: by nature (a rail), because it lies in the margin,
 * or because it left the field.
 */
export type Because = 'nature' | 'margin' | 'offField';

/** What makes a rule speak; data only. */
export type Trigger =
  /**
   * A surface of kind `surfaces` that is still sterile or prepared meets one of kind `against` that is unsterile for the reason
   * given. `whenBack`: only once the latter is back on the field. `otherThing`: not between two parts of the same thing.
   */
  | {
      readonly kind: 'touch';
      readonly surfaces: readonly SurfaceKind[];
      readonly against: readonly SurfaceKind[];
      readonly because: Because;
      readonly whenBack?: true;
      readonly otherThing?: true;
    }
  /** `loses: 'thing'`: every sterile surface of that kind of the same thing is lost; `'surface'`: that one alone; `'nothing'`: risk without loss. */
  | { readonly kind: 'zone'; readonly zone: Zone; readonly surfaces: readonly SurfaceKind[] | 'unsterile'; readonly loses: 'thing' | 'surface' | 'nothing' }
  | { readonly kind: 'drift'; readonly direction: 'toward' | 'away'; readonly loses: 'site' | 'nothing' }
  | { readonly kind: 'used' }
  /** The film of a sheath tears, or gel that is not sterile goes into it. */
  | { readonly kind: 'torn' }
  | { readonly kind: 'gelled' }
  /** A glove tears. */
  | { readonly kind: 'gloveTorn' };

export interface RuleValue {
  readonly name: string;
  readonly value: number;
  readonly unit: 'm';
  /** Entry of the scenario's policy that sets it; the policy table says what is published. */
  readonly policy: keyof Scenario['policy'];
}

/** One row of the rule book. */
export interface Rule {
  readonly id: string;
  readonly title: string;
  readonly statement: string;
  /** How a break of it is told; `{surface}` and `{against}` stand for the words of the surfaces. */
  readonly sentence: string;
  /** Any one of them makes the rule speak. */
  readonly triggers: readonly Trigger[];
  readonly values: readonly RuleValue[];
  /** Severity at the least; what the break reaches may raise it. */
  readonly severity: Severity;
  /** What answers it, the most fitting first. */
  readonly remedies: readonly RemedyId[];
  readonly source: Source;
  readonly mark: Mark;
  /** Stations in which it can be broken. */
  readonly stations: readonly StationId[];
  /** Where practice differs beyond a figure: the entry of the scenario, and the value of it that switches the rule off. */
  readonly policy?: { readonly key: keyof Scenario['policy']; readonly offWhen?: string };
}
