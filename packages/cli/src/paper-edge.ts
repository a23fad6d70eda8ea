import type { Notice } from '@clampwright/core';
import { installedLetters } from '@clampwright/papers/letters';
import { type PaperOptions, readOrganisation } from '@clampwright/papers/out';
import { isFolder, jobFolder } from './job-folder.ts';
import { type LanguageOptions, languages } from './paper-languages.ts';

/** What every paper of a folder is given: letters, languages, whose it is (organisation.yaml), the time, and a line of progress called `name`. */
export async function paperOptions(
  folder: string,
  name: string,
  asked: LanguageOptions,
): Promise<{ readonly options: PaperOptions; readonly faults: readonly Notice[] }> {
  const { organisation, notices } = isFolder(folder) ? readOrganisation(jobFolder(folder)) : { organisation: undefined, notices: [] };
  const progress = paperProgress(name);
  return {
    options: {
      letters: installedLetters(),
      languages: await languages(asked),
      made: new Date(),
      ...(organisation ? { organisation } : {}),
      ...(progress ? { progress } : {}),
    },
    faults: notices,
  };
}

/** Says on a terminal how far a paper has come; silent in scripts. */
function paperProgress(name: string): ((done: number, of: number) => void) | undefined {
  if (!process.stderr.isTTY) return undefined;
  let told = 0;
  return (done, of) => {
    const now = performance.now();
    if (done < of && now - told < 100) return;
    told = now;
    process.stderr.write(done < of ? `\r\x1b[K${name}: ${done} of ${of}` : '\r\x1b[K');
  };
}
