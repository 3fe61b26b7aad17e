import { useState } from 'preact/hooks';
import type { Scenario } from '../../core/scenario/schema.ts';
import type { Coaching, Slowdown } from '../run/LiveRun.ts';
import type { RunChoice, Services } from '../services.ts';

export interface ChoiceState {
  /** Shipped scenarios, then those opened from files. */
  readonly scenarios: readonly Scenario[];
  readonly scenario: Scenario | undefined;
  readonly coaching: Coaching;
  readonly slowdown: Slowdown;
  /** All of it as a run needs it, or null without a scenario. */
  readonly value: RunChoice | null;
  isOwn(scenario: Scenario): boolean;
  choose(scenario: Scenario): void;
  addOwn(scenario: Scenario): void;
  setCoaching(coaching: Coaching): void;
  setSlowdown(slowdown: Slowdown): void;
}

/** What is chosen for the next run. A scenario brings its own coaching, which can then be changed. */
export function useRunChoice({ scenarios: shipped, switches }: Services): ChoiceState {
  const [own, setOwn] = useState<readonly Scenario[]>([]);
  const [scenario, setScenario] = useState<Scenario | undefined>(shipped.find(({ id }) => id === switches.scenario) ?? shipped[0]);
  const [coaching, setCoaching] = useState<Coaching>(scenario?.coaching ?? 'shown');
  const [slowdown, setSlowdown] = useState<Slowdown>(1);
  const choose = (chosen: Scenario): void => {
    setScenario(chosen);
    setCoaching(chosen.coaching);
  };
  return {
    scenarios: [...shipped, ...own],
    scenario,
    coaching,
    slowdown,
    value: scenario ? { scenario, coaching, slowdown, seed: switches.seed ?? scenario.seed } : null,
    isOwn: (asked) => own.includes(asked),
    choose,
    addOwn: (added) => {
      setOwn([...own, added]);
      choose(added);
    },
    setCoaching,
    setSlowdown,
  };
}
