import { useEffect, useRef, useState } from 'preact/hooks';
import type { RunFile } from '../core/recording/recording.ts';
import type { Scenario } from '../core/scenario/schema.ts';
import { LazyDebrief } from './debrief/LazyDebrief.ts';
import { LazyLibrary } from './library/LazyLibrary.ts';
import { whenIdle } from './parts/whenIdle.ts';
import { LazyReport, loadReportPage } from './report/LazyReport.ts';
import { LazyRun } from './run/LazyRun.ts';
import type { LiveRun } from './run/LiveRun.ts';
import { LazyRules } from './rules/LazyRules.ts';
import { installTestHook } from './run/testHook.ts';
import type { Services } from './services.ts';
import { StartPage } from './start/StartPage.tsx';
import { useRunChoice } from './start/useRunChoice.ts';
import { usePageHistory } from './usePageHistory.ts';

/** The rule book, as a scenario sets it, and the page that it was opened from. */
type RulesView = { readonly name: 'rules'; readonly scenario: Scenario | null; readonly rule?: string; readonly from: Page };
type Page = RulesView | { readonly name: 'start' } | { readonly name: 'runs' } | { readonly name: 'run'; readonly live: LiveRun } | { readonly name: 'report' | 'debrief'; readonly file: RunFile };

const START: Page = { name: 'start' };

/** The pages and the ways between them. */
export function App({ services }: { readonly services: Services }) {
  const [page, setPage] = useState<Page>(START);
  const choice = useRunChoice(services);
  const removeHook = useRef<() => void>(() => {});
  const toStart = (): void => {
    removeHook.current();
    if (page.name === 'run') void page.live.leave().then(() => setPage(START));
    else setPage(START);
  };
  // A run ends in its report: that is there by then. If it cannot be loaded, the page says so when it is wanted.
  useEffect(() => (page.name === 'run' ? whenIdle(() => void loadReportPage().catch(() => undefined)) : undefined), [page.name]);
  usePageHistory(page.name, page.name === 'rules' ? () => setPage(page.from) : toStart);

  const begin = async (scenario: Scenario, coaching: Scenario['coaching'], seed = crypto.getRandomValues(new Uint32Array(1))[0]!): Promise<void> => {
    setPage({ name: 'run', live: await services.startRun({ scenario, coaching, slowdown: 1, seed }) });
  };
  const again = ({ header: { scenario, seed } }: RunFile, which: 'same' | 'new'): Promise<void> => begin(scenario, scenario.coaching, which === 'same' ? seed : undefined);
  /** Starts an exercise that a report or a debrief proposes. */
  const practise = (scenarioId: string, seed: number): void => {
    const scenario = services.scenarios.find(({ id }) => id === scenarioId);
    if (scenario) void begin(scenario, scenario.coaching, seed);
  };

  switch (page.name) {
    case 'start':
      return <StartPage services={services} choice={choice} onRules={() => setPage({ name: 'rules', scenario: choice.scenario ?? null, from: page })} onRun={(live) => setPage({ name: 'run', live })} onReport={(file) => setPage({ name: 'report', file })} onRuns={() => setPage({ name: 'runs' })} />;
    case 'rules':
      return <LazyRules scenario={page.scenario} {...(page.rule ? { rule: page.rule } : {})} backWords={page.from.name === 'report' ? 'Report' : 'Start page'} onBack={() => setPage(page.from)} />;
    case 'runs':
      return <LazyLibrary services={services} onReport={(file) => setPage({ name: 'report', file })} onDebrief={(file) => setPage({ name: 'debrief', file })} onBack={toStart} />;
    case 'run':
      return (
        <LazyRun
          key={page.live.id}
          live={page.live}
          mountStage={services.mountStage}
          ruleWords={services.ruleWords}
          onLeave={toStart}
          onEnded={(file) => {
            removeHook.current();
            setPage({ name: 'report', file });
          }}
          onRoomReady={(stage, room) => {
            if (services.switches.test) removeHook.current = installTestHook(page.live, stage, room);
          }}
        />
      );
    case 'report':
      return <LazyReport key={page.file.header.runId} services={services} file={page.file} onAgain={(seed) => void again(page.file, seed)} onDebrief={() => setPage({ name: 'debrief', file: page.file })} onPractise={({ scenarioId, seed }) => practise(scenarioId, seed)} onRuns={() => setPage({ name: 'runs' })} onRule={(rule) => setPage({ name: 'rules', scenario: page.file.header.scenario, ...(rule ? { rule } : {}), from: page })} onBack={toStart} />;
    case 'debrief':
      return <LazyDebrief key={page.file.header.runId} services={services} file={page.file} onReport={() => setPage({ name: 'report', file: page.file })} onPractise={({ scenarioId, seed }) => practise(scenarioId, seed)} />;
  }
}
