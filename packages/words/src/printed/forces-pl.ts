import type { ForceTexts } from './texts.ts';

/** What a screen tells of forces, in Polish. */
export const FORCES_PL: ForceTexts = {
  'interaction.title': 'Jak śruby działają na siebie',
  'interaction.lead': 'Dokręcenie jednej śruby odciąża lub obciąża sąsiednie. Siły po każdej rundzie, według {model}:',
  'interaction.model.ring section': 'modelu przekroju pierścienia',
  'interaction.model.plate on a bed': 'modelu blach na tym, co leży między nimi',
  'interaction.model.given matrix': 'macierzy podanej dla tego połączenia',
  'interaction.limits':
    'Granice tych liczb: model jest liniowy, sklejony i bez szczelin, a śruba jest sprężyną: od 5 do 7 % wobec śruby jako bryły w miękkich połączeniach. Dochodzą nierównoległe powierzchnie kołnierzy, pełzanie uszczelki i rozrzut tarcia.',
  'interaction.round': 'Runda',
  'interaction.way': 'Kolejność',
  'interaction.setting': 'Nastawa',
  'interaction.forces': 'Siły po niej',
  'interaction.range': 'od {least} do {greatest}',
  'interaction.peak': 'Największa po drodze',
  'interaction.worst': 'Największa odchyłka',
  'interaction.moving': 'Nakrętki, które się ruszają',
  'interaction.minutes': 'Minuty',
  'interaction.custom':
    'Jak zwykle na tym samym połączeniu (rosnące rundy w kolejności, potem wokoło przy końcowej nastawie): {rounds, plural, one {# runda} few {# rundy} many {# rund} other {# rundy}}, {minutes} min, wtedy najgorsza śruba odbiega o {worst}.',
  'interaction.planned':
    'Zaplanowano: {rounds, plural, one {# runda} few {# rundy} many {# rund} other {# rundy}}, {changes, plural, =0 {bez zmiany nastawy w rundzie} one {# zmiana nastawy w rundzie} few {# zmiany nastawy w rundzie} many {# zmian nastawy w rundzie} other {# zmiany nastawy w rundzie}}, {minutes} min, praca {energy} J; najgorsza śruba odbiega wtedy o {worst} od wartości docelowej {target}. Pożądane: {wanted}.',
  'interaction.several':
    'Śruby przez pewien czas przekraczają wartość docelową, do {peak}: inżynier zatwierdza ten przebieg, a druga osoba potwierdza każdą zmianę nastawy.',
  'interaction.strip': 'po rundzie {round}: największa odchyłka {worst}',
  'interaction.strips-title': 'Siły śrub {tag} po każdej z {rounds} rund, w procentach wartości docelowej',
  'interaction.ring-title': 'Siły wokół pierścienia {tag}: po ostatniej rundzie i po wcześniejszej',
  'interaction.ring-key':
    'Gruba linia: po ostatniej rundzie. Cienka linia: po wcześniejszej. Okrąg: wartość docelowa; kreskowane: pożądane.',
  'scatter.one': 'Jedna śruba w oknie',
  'scatter.all': 'Wszystkie śruby w oknie ({bolts})',
  'scatter.window': 'między tym, co musi mieć co najmniej, a szkodą',
  'scatter.below': 'poniżej tego, co by szkodziło',
  'scatter.chance': 'w {chance} przypadków',
  'scatter.nearly': 'w ponad 99,9 % przypadków',
  'scatter.certificate': 'świadectwo tabeli nastaw',
  'scatter.repeatability': 'powtarzalność narzędzia',
  'scatter.lot mean': 'średnie tarcie partii',
  'scatter.bolt to bolt': 'tarcie od śruby do śruby',
  'scatter.share': '{share}',
  'scatter.bell-title': 'Rozkład siły sprężenia wokół {mean} z jej oknem',
  'scatter.bars-title': 'Co decyduje o rozrzucie siły sprężenia',
  'rotation.title': 'Obrót od dociągnięcia',
  'rotation.text': 'około {expected}; poniżej {low} lub powyżej {high} obejrzeć ponownie',
  'step.next': 'Następna najlepsza: {setting} ({torque})',
  'step.angle-window': 'gdy brakuje do {minus}, obraca się dalej; ponad {plus} za dużo: zapytać',
  'step.interpolated': 'interpolowane, nie zmierzone',
  'sequence.painted': 'Malowane numery: jeśli kolejność maluje się na stali, przy każdej śrubie stoi ten numer',
  'sequence.painted-lead': 'Malowany numer nie jest numerem śruby.',
};
