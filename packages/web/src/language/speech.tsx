import { ENGLISH, loadTexts, type NoticeWords, type Say, type Speaker, speaker, type Trade } from '@clampwright/words/app';
import { createContext, type ReactNode, useContext, useEffect, useState } from 'react';
import { useSettings } from '../ui/settings.ts';

const Speech = createContext<Speaker>(ENGLISH);

/** Says a text of the app in the reader's language. */
export const useSay = (): Say => useContext(Speech).say;
/** Says the plan's words: steps, ends, cautions. */
export const useTrade = (): Trade => useContext(Speech).trade;

/** Says notices: what is wrong, what would mend it, where it was found. */
export const useNotice = (): NoticeWords => useContext(Speech).notice;

export function SpeechProvider({ children }: { readonly children: ReactNode }) {
  const { language } = useSettings();
  const [speech, setSpeech] = useState<Speaker>(ENGLISH);
  useEffect(() => {
    let asked = true;
    void loadTexts(language).then((texts) => {
      if (!asked) return;
      document.documentElement.lang = language;
      setSpeech(speaker(language, texts));
    });
    return () => {
      asked = false;
    };
  }, [language]);
  return <Speech value={speech}>{children}</Speech>;
}
