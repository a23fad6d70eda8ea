/**
 * The contract between devices and server, once for all who use it: a device appends and keeps an outbox (`openDevice`), brings it to a
 * server and reads the log (`syncBook`), and the server takes what it is brought (`acceptBatch`).
 */
export { acceptBatch, type Log } from './accept.ts';
export { type Batch, LARGEST_BATCH_BYTES, readBatch, writeBatch } from './batch.ts';
export { type Cursor, type Device, type DeviceOptions, openDevice } from './device.ts';
export { type HttpOptions, httpTransport } from './http-transport.ts';
export { linesOf } from './lines.ts';
export { type Page, type Row, writePage } from './page.ts';
export { memoryShelf, type Shelf } from './shelf.ts';
export { type Synced, startOver, syncBook } from './sync-book.ts';
export type { Answer, Transport } from './transport.ts';
