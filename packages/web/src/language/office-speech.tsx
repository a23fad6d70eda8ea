import type { Language } from '@clampwright/words/app';
import { loadOfficeTexts, type OfficeSay, officeSay } from '@clampwright/words/office';
import { createContext, type ReactNode, use, useContext, useMemo } from 'react';
import { useSettings } from '../ui/settings.ts';
import { useSay } from './speech.tsx';

const Speech = createContext<OfficeSay | undefined>(undefined);

/** Says a text of the office, or of the app around it, in the reader's language. */
export function useOffice(): OfficeSay {
  const say = useContext(Speech);
  if (!say) throw new Error('a page of the office was shown outside of it');
  return say;
}

const loading = new Map<Language, ReturnType<typeof loadOfficeTexts>>();
function texts(language: Language) {
  const known = loading.get(language) ?? loadOfficeTexts(language);
  loading.set(language, known);
  return known;
}

/** Waits, within a Suspense, until the texts of the office are there. */
export function OfficeSpeech({ children }: { readonly children: ReactNode }) {
  const { language } = useSettings();
  const app = useSay();
  const office = use(texts(language));
  const say = useMemo(() => officeSay(language, office, app), [language, office, app]);
  return <Speech value={say}>{children}</Speech>;
}
