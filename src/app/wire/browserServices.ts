import { isSameSimulation } from '../../core/recording/recording.ts';
import { RunStore } from '../../storage/RunStore.ts';
import type { QuerySwitches } from '../querySwitches.ts';
import type { Services } from '../services.ts';
import { beginRun, continueRun, prepareRun } from './beginRun.ts';
import { keptRuns, openKept } from './keptRuns.ts';
import { libraryService } from './library/libraryService.ts';
import { prepareStage, stageMounter } from './mountStage.ts';
import { openFile } from './openFile.ts';
import { resultBeside, verifyBeside } from './replayClient.ts';
import { ruleWords } from './ruleWords.ts';
import { saveFile } from './saveFile.ts';
import { SettleAhead } from './SettleAhead.ts';
import { shippedScenarios } from './shippedScenarios.ts';

/** The services of the real page. */
export function browserServices(switches: QuerySwitches): Services {
  const opened = RunStore.open();
  const ahead = new SettleAhead();
  return {
    switches,
    scenarios: shippedScenarios(),
    startRun: async (choice) => beginRun(await opened, ahead, choice),
    prepareRun: (scenario) => {
      prepareRun(ahead, scenario);
      void prepareStage(switches.renderer);
    },
    keptRuns: async () => keptRuns(await opened),
    resumeRun: async (runId) => continueRun(await opened, ahead, runId),
    openKept: async (key) => openKept(await opened, ahead, key),
    deleteRun: async (key) => void (await (await opened).delete(key)),
    library: libraryService(opened),
    mountStage: stageMounter(switches.renderer),
    openFile,
    saveFile,
    ruleWords,
    verify: verifyBeside,
    replayResult: resultBeside,
    openDebrief: async (file) => {
      const [{ openDebrief }, settled] = await Promise.all([import('./debriefClient.ts'), ahead.settled(file.header.scenario)]);
      return openDebrief(file, settled);
    },
    isSameSimulation: (file) => isSameSimulation(file.header),
  };
}
