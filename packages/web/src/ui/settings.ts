import type { Language } from '@clampwright/words/app';
import { LANGUAGES } from '@clampwright/words/app';
import { useSyncExternalStore } from 'react';

/** What each device is set to; kept on it, never sent. */
export interface Settings {
  readonly language: Language;
  readonly guard: 'hold' | 'second';
  readonly theme: 'system' | 'light' | 'dark';
  readonly sound: boolean;
  readonly speech: boolean;
  readonly vibration: boolean;
}

const KEY = 'clampwright settings';
const known = navigator.languages.map((one) => one.slice(0, 2)).find((one) => one in LANGUAGES) as Language | undefined;
const FIRST: Settings = { language: known ?? 'en', guard: 'hold', theme: 'system', sound: false, speech: false, vibration: true };

function read(): Settings {
  try {
    const settings = { ...FIRST, ...(JSON.parse(localStorage.getItem(KEY) ?? '{}') as Partial<Settings>) };
    return settings.language in LANGUAGES ? settings : { ...settings, language: 'en' };
  } catch {
    return FIRST;
  }
}

let settings = read();
const listeners = new Set<() => void>();
const show = () => {
  document.documentElement.dataset.theme = settings.theme;
};
show();

export function change(more: Partial<Settings>): void {
  settings = { ...settings, ...more };
  try {
    localStorage.setItem(KEY, JSON.stringify(settings));
  } catch {
    // a full device keeps the setting until the page closes
  }
  show();
  for (const listener of listeners) listener();
}

export const whenSettingsChange = (listener: () => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};
export const settingsNow = (): Settings => settings;
export const useSettings = (): Settings => useSyncExternalStore(whenSettingsChange, settingsNow);
