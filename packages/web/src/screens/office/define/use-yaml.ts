import type { Notice } from '@clampwright/core';
import { changeYaml, type YamlChange, yamlOf } from '@clampwright/papers/edit';
import { useMemo } from 'react';
import { change, desk } from '../../../draft/desk.ts';
import { withFiles } from '../../../draft/draft.ts';
import { useWatched } from '../../../job/store.ts';
import { planning } from '../../../planning/planning.ts';

export type Path = readonly (string | number)[];

const EMPTY = new Uint8Array();

/** A YAML file of the draft in hand: what it says, what is said of it, and how it is changed. */
export function useYaml(file: string) {
  const bytes = useWatched(desk)?.draft.files.get(file);
  const value = useMemo(() => (bytes === undefined ? {} : yamlOf(bytes)), [bytes]);
  const notices = useWatched(planning).view?.notices;
  const said = useMemo(() => notices?.filter(({ place }) => place?.file === file) ?? [], [notices, file]);
  return {
    /** the file cannot be read as YAML: it is mended as text */
    broken: value === undefined,
    at: (path: Path): unknown =>
      path.reduce<unknown>((from, key) => (from as Record<string | number, unknown> | undefined | null)?.[key], value ?? {}),
    saidOf: (path: Path): readonly Notice[] => said.filter(({ place }) => place?.path === path.join(' → ')),
    said,
    change: (changes: readonly YamlChange[]) => changeFile(file, changes),
  };
}

/** Changes a YAML file of the draft in hand; one that is not there is made. */
const changeFile = (file: string, changes: readonly YamlChange[]): void =>
  change((files) => withFiles(files, { [file]: changeYaml(files.get(file) ?? EMPTY, changes) }));
