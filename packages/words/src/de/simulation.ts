import type { NoticeTexts } from '../notice-texts.ts';

export const simulationTexts = {
  'simulation-runs': { says: '„{runs}“ ist keine Zahl von Läufen.', remedy: 'Eine ganze Zahl von 1 bis {most} angeben.' },
  'simulation-seed': {
    says: '„{seed}“ ist kein Startwert.',
    remedy: 'Eine ganze Zahl ab 0 angeben; derselbe Startwert gibt dieselben Zahlen.',
  },
  'mistake-unknown': { says: '„{name}“ ist kein Fehler, der gespielt wird.', remedy: 'Wählen aus {known}.' },
  'mistake-rate': { says: '„{rate}“ ist keine Häufigkeit von {name}.', remedy: 'Einen Anteil der Züge von 0 bis {most} angeben.' },
} satisfies NoticeTexts<'simulation'>;
