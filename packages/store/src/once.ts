/** Bytes in one piece, as a stream. */
export async function* once(bytes: Uint8Array): AsyncGenerator<Uint8Array> {
  yield bytes;
}
