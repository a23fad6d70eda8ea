const LONGEST = 1600;

/** A photo as JPEG, at most 1600 pixels long: enough to read a number, small enough for a poor network. Where it was taken is not kept. */
export async function smallPhoto(file: Blob): Promise<Uint8Array> {
  const picture = await createImageBitmap(file);
  const scale = Math.min(1, LONGEST / Math.max(picture.width, picture.height));
  const canvas = document.createElement('canvas');
  Object.assign(canvas, { width: Math.round(picture.width * scale), height: Math.round(picture.height * scale) });
  canvas.getContext('2d')!.drawImage(picture, 0, 0, canvas.width, canvas.height);
  picture.close();
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/jpeg', 0.8));
  if (!blob) throw new Error('the picture cannot be read');
  return new Uint8Array(await blob.arrayBuffer());
}
