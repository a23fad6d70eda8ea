/** A plan over HTTP, read only; and the books of a yard. */
export { createApp } from './create-app.ts';
export { makeHandover } from './log/make-handover.ts';
export { type ServeOptions, type Serving, serve } from './serve.ts';
