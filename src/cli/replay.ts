/** `npm run replay -- FILE…`: see replayCommand.ts. */
import { Run } from '../core/run/run.ts';
import { replayCommand } from './replayCommand.ts';

const showProgress = (done: number, steps: number): void => void process.stderr.write(`\r${Math.floor((100 * done) / steps)} %\r`);

process.exitCode = replayCommand(process.argv.slice(2), (scenario, seed) => new Run(scenario, seed), {
  out: (text) => console.log(text),
  fault: (text) => console.error(text),
  ...(process.stderr.isTTY ? { progress: showProgress } : {}),
});
