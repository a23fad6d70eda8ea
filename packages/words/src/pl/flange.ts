import type { NoticeTexts } from '../notice-texts.ts';

export const flangeTexts = {
  'flange-unknown': {
    says: '{standard} nie podaje kołnierza {size} {rating}.',
    remedy: 'Sprawdzić wymiar i ciśnienie na krawędzi kołnierza; albo wpisać ręcznie śruby, średnicę podziałową i otwór.',
  },
  'gasket-unknown': {
    says: 'Dla uszczelki „{gasket}” nie są znane żadne wartości.',
    remedy: 'Wpisać wartości producenta uszczelki z ich źródłem.',
  },
  'assembly-stress-limited': {
    says: 'Uszczelka wymaga naprężenia śrub {wanted}; {by, select, greatest {największe naprężenie śruby ogranicza je do} least {najmniejsze naprężenie śruby podnosi je do} other {kołnierz ogranicza je do}} {selected}.',
    remedy: 'Przed dalszą pracą przeczytać sprawdzenia uszczelki i kołnierza przy tym naprężeniu.',
  },
  'gasket-not-seated': {
    says: 'Przy naprężeniu śrub {stress} uszczelka nie osiada; potrzebuje {limit}.',
    remedy: 'Projektant wybiera inną uszczelkę, mocniejsze śruby albo węższą powierzchnię styku.',
  },
  'gasket-unloads-in-service': {
    says: 'Przy naprężeniu śrub {stress} w pracy zostaje na uszczelce za mało; potrzebuje {limit}.',
    remedy: 'Projektant wybiera inną uszczelkę albo mocniejsze śruby, albo ponownie sprawdza ciśnienie i relaksację.',
  },
  'gasket-crushed': {
    says: 'Naprężenie śrub {stress} miażdży uszczelkę; wytrzymuje ona {limit}.',
    remedy: 'Obniżyć naprężenie śrub albo projektant wybierze uszczelkę, która wytrzyma więcej.',
  },
  'flange-rotates-too-far': {
    says: 'Przy naprężeniu śrub {stress} kołnierze obracają się bardziej, niż znosi uszczelka; granica to {limit}.',
    remedy: 'Obniżyć naprężenie śrub albo projektant ponownie sprawdzi kołnierz i uszczelkę.',
  },
} satisfies NoticeTexts<'flange'>;
