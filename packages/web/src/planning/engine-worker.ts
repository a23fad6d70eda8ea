import type { JointRounds } from '@clampwright/core';
import { openEngine } from './engine.ts';
import { answer, openLine } from './wire.ts';

/** The engine in a worker of its own; the rounds it leaves to another, so that an edit never waits for them. */
const rounds = openLine(new Worker(new URL('./rounds-worker.ts', import.meta.url), { type: 'module' }));
const engine = openEngine((job, wanted) => rounds.ask<JointRounds>('rounds', job, wanted));

answer({ ...engine, rounds: () => engine.rounds((view) => postMessage({ view })) });
