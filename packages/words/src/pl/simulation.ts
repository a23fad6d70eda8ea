import type { NoticeTexts } from '../notice-texts.ts';

export const simulationTexts = {
  'simulation-runs': { says: '„{runs}” to nie jest liczba przebiegów.', remedy: 'Podać liczbę całkowitą od 1 do {most}.' },
  'simulation-seed': { says: '„{seed}” to nie ziarno.', remedy: 'Podać liczbę całkowitą od 0; to samo ziarno daje te same liczby.' },
  'mistake-unknown': { says: '„{name}” to nie jest błąd, który się odgrywa.', remedy: 'Wybrać z: {known}.' },
  'mistake-rate': { says: '„{rate}” to nie jest częstość dla {name}.', remedy: 'Podać udział pociągnięć od 0 do {most}.' },
} satisfies NoticeTexts<'simulation'>;
