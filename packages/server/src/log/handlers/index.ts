import { attachmentHandlers } from './attachments.ts';
import { bookHandlers } from './books.ts';
import { deviceHandlers } from './devices.ts';
import type { Handlers } from './handler.ts';
import { keepingHandlers } from './keeping.ts';
import { passkeyHandlers } from './passkeys.ts';
import { serverHandlers } from './server.ts';
import { sessionHandlers } from './session.ts';

/** One handler for every endpoint of the contract; a missing one does not compile. */
export const HANDLERS: Handlers = {
  ...serverHandlers,
  ...sessionHandlers,
  ...passkeyHandlers,
  ...deviceHandlers,
  ...bookHandlers,
  ...attachmentHandlers,
  ...keepingHandlers,
};
