import type { NoticeTexts } from '../notice-texts.ts';

export const supplyTexts = {
  'battery-rating': {
    says: 'Bateria {serial}: a tensão ou a capacidade nominal não se conhece ou é absurda.',
    remedy: 'Ler ambas na etiqueta dela, V e Ah.',
  },
  'battery-health': {
    says: 'Bateria {serial}: o seu estado não está entre 0 e 100 %.',
    remedy: 'Anotar 100 % para uma nova; menos conforme os ciclos.',
  },
  'battery-gauge': {
    says: 'Bateria {serial}: «{lit}» não é leitura de um indicador de quatro barras.',
    remedy: 'Contar as barras acesas: de 0 a 4.',
  },
  'battery-temperature': { says: 'Bateria {serial}: a sua temperatura é absurda.', remedy: 'Anotar os °C da bateria, não do ar.' },
  'battery-charge': {
    says: 'Bateria {serial}: a sua carga está abaixo de vazia ou acima de cheia.',
    remedy: 'Ler outra vez o indicador: de 0 a 4 barras.',
  },
  'battery-cells': {
    says: 'Bateria {serial}: as suas células, a corrente ou o corte da ferramenta, ou o binário não estão acima de zero.',
    remedy: 'Tirar as células da folha de dados da bateria; corrente e corte, do banco de ensaio.',
  },
  'gauge-reading': { says: '«{lit}» não é leitura de um indicador de quatro barras.', remedy: 'Contar as barras acesas: de 0 a 4.' },
  'energy-impossible': {
    says: 'A energia de uma bateria cheia não se conhece ou não está acima de zero.',
    remedy: 'Ler V e Ah na etiqueta dela.',
  },
  'draw-impossible': {
    says: 'O consumo de um parafuso não está acima de zero, ou o seu mínimo passa o seu máximo.',
    remedy: 'Calculá-lo de binário e rotação, ou de quedas registadas do indicador.',
  },
  'battery-no-working': {
    says: 'A bateria {serial} está a {celsius} °C; trabalha de {low} a {high} °C.',
    remedy: 'Pegar numa guardada ao quente, ou deixá-la arrefecer.',
  },
  'battery-no-charging': {
    says: 'A bateria {serial} está a {celsius} °C; pode carregar-se de {low} a {high} °C.',
    remedy: 'Nunca carregar uma acabada de vir da geada: antes deixá-la aquecer, ou arrefecer.',
  },
  'battery-first-charge': {
    says: 'A bateria {serial} é nova e só está carregada em parte.',
    remedy: 'Carregá-la toda antes do seu primeiro trabalho.',
  },
  'battery-low': {
    says: 'A bateria {serial} mostra uma barra ou nenhuma: isso não garante nada.',
    remedy: 'Decidir agora: mudar, ou chega para os parafusos que faltam? Nunca começar com ela uma etapa de ângulo.',
  },
  'battery-cannot-push': {
    says: 'A etapa precisa de {torque}; a bateria {serial}, a {celsius} °C e com a sua carga, pode dar {greatest}.',
    remedy: 'Pegar numa bateria quente e cheia, numa maior, ou noutra ferramenta. Não tentar o parafuso.',
  },
  'batteries-too-few': {
    says: '{pulls, plural, one {# aperto não está coberto} other {# apertos não estão cobertos}} pelas baterias disponíveis; {more, plural, one {é precisa mais # cheia} other {são precisas mais # cheias}}.',
    remedy: 'Trazê-las ou carregá-las antes da primeira ligação.',
  },
  'batteries-too-weak': {
    says: 'Nenhuma bateria disponível faz com certeza um só destes parafusos.',
    remedy: 'Pegar numa ferramenta com bateria maior, ou numa ligada à rede.',
  },
  'joint-not-covered': {
    says: 'As baterias disponíveis não cobrem todas as etapas da ligação {joint}.',
    remedy: 'Não a começar enquanto não cobrirem.',
  },
  'pull-without-draw': {
    says: 'Não se sabe o que o parafuso {bolt} da ligação {joint} gasta de uma bateria.',
    remedy: 'Anotar o seu binário e rotação.',
  },
  'draw-assumed': {
    says: 'O consumo de um parafuso assenta em {drops, plural, =0 {nenhuma queda registada} one {# queda registada} other {# quedas registadas}} do indicador: é uma suposição.',
    remedy: 'Registar o parafuso em que o indicador desce; cada queda afina-o.',
  },
  'drop-count': {
    says: '«{bolts}» parafusos entre duas quedas do indicador não pode ser.',
    remedy: 'Anotar quantos parafusos se acabaram entre elas.',
  },
  'log-too-short': {
    says: 'Um registo de {found, plural, =0 {nada} one {# leitura} other {# leituras}} diz pouco demais; são precisas {least}.',
    remedy: 'Registar mais cargas ou trabalhos. De tão poucos não se estima nada.',
  },
  'log-impossible': {
    says: 'Um registo contém leituras abaixo de zero ou nenhuma, ou a sua confiança não está entre 50 e 100 %.',
    remedy: 'Corrigir a anotação. Tal como está não se aprende nada dela.',
  },
  'works-all-alike': {
    says: 'Todos os trabalhos custaram o mesmo: o consumo fixo e o rendimento não se conseguem separar.',
    remedy: 'Registar também trabalhos de outro binário ou rotação.',
  },
  'socket-reading': {
    says: 'Carregar na estrada: o fusível da tomada ou a corrente não está acima de zero.',
    remedy: 'Ler o fusível na tomada ou na caixa de fusíveis; nunca o adivinhar.',
  },
  'socket-fuse': {
    says: 'Carregar na estrada puxaria {current} A; a tomada tem um fusível de {fuse} A.',
    remedy: 'Carregar com menos corrente, ou numa tomada de fusível maior. Nunca pôr um fusível maior na mesma tomada.',
  },
  'socket-near-fuse': {
    says: 'Carregar na estrada puxa {current} A de uma tomada com fusível de {fuse} A: mais do que deve dar por muito tempo.',
    remedy: 'Uma bateria de cada vez, com o motor a trabalhar.',
  },
  'supply-reading': {
    says: 'Ferramenta {serial}: uma leitura da sua alimentação falta ou não está acima de zero.',
    remedy: 'Medi-la na ferramenta enquanto trabalha.',
  },
  'supply-weak': {
    says: 'Ferramenta {serial}: há {what}; pede-se {wanted}.',
    remedy: 'Cabo ou mangueira mais curta e grossa, outra tomada, ou uma fonte maior.',
  },
  'supply-unprotected': {
    says: 'Ferramenta {serial}: sem interruptor diferencial.',
    remedy: 'Pôr um entre a tomada e a ferramenta antes de a ligar.',
  },
  'supply-dry-air': { says: 'Ferramenta {serial}: o seu ar não leva óleo.', remedy: 'Encher o lubrificador: um motor seco perde binário.' },
  'supply-hose-changed': {
    says: 'Ferramenta {serial}: a sua mangueira não tem o comprimento que tinha na calibração.',
    remedy: 'Verificar a ferramenta com esta mangueira antes do primeiro parafuso.',
  },
  'supply-hose': {
    says: 'Ferramenta {serial}: as mangueiras admitem {rating} bar; podem chegar-lhes {wanted} bar.',
    remedy: 'Pegar em mangueiras e engates da pressão da bomba; procurar cortes e dobras.',
  },
  'valve-impossible': {
    says: 'Válvula {tag}: uma dimensão, um fator ou uma carga não está acima de zero.',
    remedy: 'Ler outra vez a sua folha de dados.',
  },
  'valve-limit-missing': {
    says: 'Válvula {tag}: não está anotado o binário máximo no fuso do proprietário.',
    remedy: 'Obtê-lo por escrito; até lá, à mão.',
  },
  'valve-permission-missing': {
    says: 'Válvula {tag}: ninguém da operação permitiu movê-la.',
    remedy: 'Anotar quem o permitiu, e para quando.',
  },
  'valve-direction-missing': {
    says: 'Válvula {tag}: não está anotado para que lado abre.',
    remedy: 'Ver o volante: algumas abrem no sentido horário.',
  },
  'valve-thermal-binding': {
    says: 'A válvula {tag} foi fechada a outra temperatura: a gaveta pode estar presa.',
    remedy: 'Não a forçar. Perguntar à operação; deixar igualar as temperaturas.',
  },
  'valve-needs-more': {
    says: 'A válvula {tag} precisa de {needed}; o proprietário admite {limit}.',
    remedy: 'Pedir à operação que tire a pressão, ou libertar empanque e fuso.',
  },
  'valve-may-need-more': {
    says: 'A válvula {tag} pode precisar de {needed}; o proprietário admite {limit}.',
    remedy: 'Se não mexer no limite, parar e comunicar. A regulação não se sobe.',
  },
  'valve-stem-yields': {
    says: 'Válvula {tag}: no limite do proprietário o seu fuso está a {found}; cede a {allowed}.',
    remedy: 'Pedir ao proprietário um limite que o fuso aguente.',
  },
  'valve-long-unmoved': {
    says: 'A válvula {tag} não é movida há anos.',
    remedy: 'Exercitá-la com cuidado, umas voltas para um lado e para o outro, à mão ou com a regulação mais baixa.',
  },
  'valve-turns-differ': {
    says: 'Válvula {tag}: {turns} voltas por curso e avanço; uma válvula de águas da sua medida dá de {low} a {high}.',
    remedy: 'As entradas da rosca ou o curso podem estar errados. Contar as voltas à mão antes de pôr uma ferramenta.',
  },
  'valve-few-turns': {
    says: 'A válvula {tag} dá {turns} voltas: ambos os extremos são da mão, e não fica nada para uma ferramenta.',
    remedy: 'Rodá-la à mão.',
  },
  'valve-by-hand': { says: 'Válvula {tag}: nenhuma regulação está abaixo de {limit}.', remedy: 'Rodá-la à mão.' },
} satisfies NoticeTexts<'supply'>;
