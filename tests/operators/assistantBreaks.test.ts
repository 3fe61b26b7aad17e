import { describe } from 'vitest';
import { playAll } from '../support/breakRun.ts';
import { ASSISTANT_RUNS } from './runs/assistant.ts';

describe('The assistant', () => playAll(ASSISTANT_RUNS));
