import { useMemo, useState } from 'preact/hooks';
import { canBeFollowedByField, withField } from '../../core/scenario/followedByField.ts';
import type { Scenario } from '../../core/scenario/schema.ts';
import type { Coaching, Slowdown } from '../run/LiveRun.ts';
import type { RunChoice, Services } from '../services.ts';

export interface ChoiceState {
  /** Shipped scenarios, then those opened from files. */
  readonly scenarios: readonly Scenario[];
  readonly scenario: Scenario | undefined;
  readonly coaching: Coaching;
  readonly slowdown: Slowdown;
  /** Whether the scenario can go on into the field after the probe is sheathed, and whether it shall. */
  readonly canGoOn: boolean;
  readonly goesOn: boolean;
  /** All of it as a run needs it, or null without a scenario. */
  readonly value: RunChoice | null;
  isOwn(scenario: Scenario): boolean;
  choose(scenario: Scenario): void;
  addOwn(scenario: Scenario): void;
  setCoaching(coaching: Coaching): void;
  setSlowdown(slowdown: Slowdown): void;
  setGoesOn(goesOn: boolean): void;
}

/** What is chosen for the next run. A scenario brings its own coaching and its own stations, which can then be changed. */
export function useRunChoice({ scenarios: shipped, switches }: Services): ChoiceState {
  const [own, setOwn] = useState<readonly Scenario[]>([]);
  const [scenario, setScenario] = useState<Scenario | undefined>(shipped.find(({ id }) => id === switches.scenario) ?? shipped[0]);
  const [coaching, setCoaching] = useState<Coaching>(scenario?.coaching ?? 'shown');
  const [slowdown, setSlowdown] = useState<Slowdown>(1);
  const [goesOn, setGoesOn] = useState(scenario?.followedBy.includes('field') ?? false);
  const canGoOn = useMemo(() => scenario !== undefined && canBeFollowedByField(scenario), [scenario]);
  const played = useMemo(() => (scenario && canGoOn ? withField(scenario, goesOn) : scenario), [scenario, canGoOn, goesOn]);
  const choose = (chosen: Scenario): void => {
    setScenario(chosen);
    setCoaching(chosen.coaching);
    setGoesOn(chosen.followedBy.includes('field'));
  };
  return {
    scenarios: [...shipped, ...own],
    scenario,
    coaching,
    slowdown,
    canGoOn,
    goesOn,
    value: played ? { scenario: played, coaching, slowdown, seed: switches.seed ?? played.seed } : null,
    isOwn: (asked) => own.includes(asked),
    choose,
    addOwn: (added) => {
      setOwn([...own, added]);
      choose(added);
    },
    setCoaching,
    setSlowdown,
    setGoesOn,
  };
}
