/**
 * The contract between devices and server, once for all who use it: a device appends and keeps an outbox (`openDevice`), brings it to a
 * server and reads the log (`syncBook`), and the server takes what it is brought (`acceptBatch`).
 */
export { acceptBatch, type Log } from './accept.ts';
export { apiClient, type Client, type ClientOptions } from './api/client.ts';
export { type Answered, type Asked, CONTRACT, type EndpointName } from './api/contract.ts';
export { type Endpoint, isSchema, type Medium } from './api/endpoint.ts';
export { type Batch, LARGEST_BATCH_BYTES, readBatch, writeBatch } from './batch.ts';
export { type Cursor, type Device, type DeviceOptions, openDevice } from './device.ts';
export { fetchAttachments } from './fetch-attachments.ts';
export { httpTransport } from './http-transport.ts';
export { linesOf } from './lines.ts';
export { type Page, type Row, readPage, writePage } from './page.ts';
export { isPin, keepPin, type PinCheck } from './pin.ts';
export { resumedShelf } from './resume.ts';
export { memoryShelf, type Shelf } from './shelf.ts';
export { type Synced, startOver, syncBook } from './sync-book.ts';
export type { Answer, Transport } from './transport.ts';
