import { assert } from '../../core/base/assert.ts';
import { readScenario } from '../../core/scenario/parseScenario.ts';
import type { Scenario } from '../../core/scenario/schema.ts';

const files = import.meta.glob('../../../scenarios/*.json', { eager: true, import: 'default' });

/** The scenarios that come with the trainer, the shortest first. */
export function shippedScenarios(): readonly Scenario[] {
  return Object.entries(files)
    .map(([path, source]) => {
      const read = readScenario(source);
      assert(read.ok, `${path} is a scenario${read.ok ? '' : `: ${read.error.message}`}`);
      return read.value;
    })
    .sort((a, b) => a.minutes - b.minutes || a.title.localeCompare(b.title));
}
