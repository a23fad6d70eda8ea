/** A plan over HTTP, read only. */
export { createApp } from './create-app.ts';
export { type ServeOptions, type Serving, serve } from './serve.ts';
