import { describe } from 'vitest';
import { playAll } from '../support/breakRun.ts';
import { BODY_RUNS } from './runs/body.ts';

describe("The operator's and the patient's bodies", () => playAll(BODY_RUNS));
