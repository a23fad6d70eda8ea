import { type Language, loadWords, type Words } from '@clampwright/words';
import { use } from 'react';
import { useSettings } from '../ui/settings.ts';

const loading = new Map<Language, Promise<Words>>();

/** The words in which papers tell of a plan, in the reader's language; waits, within a Suspense, until they are there. */
export function useWords(): Words {
  const { language } = useSettings();
  const known = loading.get(language) ?? loadWords(language);
  loading.set(language, known);
  return use(known);
}
