import type { z } from 'zod/mini';

/** What an answer or a question is, besides JSON. */
export type Medium = 'none' | 'bytes' | 'lines' | 'events' | 'text';

/**
 * One endpoint: the contract that the server's handler, the OpenAPI document, the typed client and the tests are all held against.
 */
export interface Endpoint {
  readonly method: 'GET' | 'POST' | 'PUT' | 'DELETE';
  /** below /api/v1; `{name}` is a parameter of the path */
  readonly path: string;
  readonly summary: string;
  readonly params?: Readonly<Record<string, z.ZodMiniType<string>>>;
  readonly query?: Readonly<Record<string, z.ZodMiniType<number>>>;
  /** JSON of this shape, or bytes of the media type */
  readonly body?: z.ZodMiniType | { readonly bytes: string; readonly most: number };
  readonly answer: z.ZodMiniType | Medium;
  readonly status: 200 | 201 | 204;
}

export const isSchema = (one: z.ZodMiniType | Medium | { readonly bytes: string }): one is z.ZodMiniType =>
  typeof one === 'object' && '_zod' in one;
