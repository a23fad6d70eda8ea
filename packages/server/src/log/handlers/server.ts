import { done } from '@clampwright/core';
import { openApi } from '../openapi.ts';
import type { Handlers } from './handler.ts';

export const serverHandlers = {
  health: async (_, { context: { store } }) => {
    await store.ping();
    return done({ ok: true, engine: store.engine });
  },
  metrics: async (_, { context: { metrics, live } }) => done(metrics.text({ listeners: live.count() })),
  document: async () => done(openApi()),
} satisfies Partial<Handlers>;
