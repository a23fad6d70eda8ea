import type { Outcome } from '@clampwright/core';
import { type ReadModel, readModel } from '@clampwright/papers';
import wasm from 'web-ifc/web-ifc.wasm?url';

export { modelJointList } from '@clampwright/papers';

/** Reads a model on this device; the parser ships with the app. */
export const readModelHere = (bytes: Uint8Array, file: string): Promise<Outcome<ReadModel>> => readModel(bytes, file, { wasm });
