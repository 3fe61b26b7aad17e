import { StateHash } from '../core/base/hash.ts';
import { buildBedScene } from './bedScene.ts';
import { HandScript, WORKING } from './handScript.ts';
import { OwnEngine } from './ownEngine.ts';

/**
 * Hash of the whole physics state of the bed scene with scripted hands, once per simulated second. Runs in Node and in browsers
 * and must give the same texts in all of them.
 */
export function scriptedSceneHash(seconds: number): string[] {
  const engine = new OwnEngine();
  const script = new HandScript(buildBedScene(engine, 60, 50), WORKING, 12345);
  return Array.from({ length: seconds }, () => {
    for (let k = 0; k < 120; k++) {
      script.drive();
      engine.step();
    }
    const hash = new StateHash();
    engine.world.hashInto(hash);
    return hash.digest();
  });
}
