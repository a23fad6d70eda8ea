import { writeFileWhole } from '@clampwright/store';
import { EXIT, refuse } from './exit.ts';

/** Writes a file whole and says how long it is; one that is there already is left as it is. */
export const written = async (path: string, bytes: AsyncIterable<Uint8Array>): Promise<number> => {
  try {
    const size = await writeFileWhole(path, bytes);
    process.stdout.write(`${path}: ${size} bytes\n`);
    return EXIT.fine;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') return refuse(`${path} is there already and is left as it is.`);
    throw error;
  }
};
