import { useEffect } from 'preact/hooks';
import type { Scenario } from '../../core/scenario/schema.ts';
import { whenIdle } from '../parts/whenIdle.ts';
import type { Services } from '../services.ts';

/** While a scenario stays chosen and the page is idle, what a run of it needs is done beforehand. */
export function usePrepared(services: Services, scenario: Scenario | undefined): void {
  useEffect(() => (scenario ? whenIdle(() => services.prepareRun(scenario)) : undefined), [services, scenario]);
}
