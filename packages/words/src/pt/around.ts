import type { NoticeTexts } from '../notice-texts.ts';

export const aroundTexts = {
  'loosening-torque': {
    says: 'O binário com que foi apertada não está acima de zero.',
    remedy: 'Anotá-lo, ou o pré-esforço e o atrito de que resulta.',
  },
  'loosening-unknown': {
    says: 'Nada diz com que foi apertada {joint}.',
    remedy: 'Planeá-la primeiro, ou anotar binário e ferramenta; depois desapertar.',
  },
  'loosening-release-missing': {
    says: 'Uma ligação sob pressão só se abre depois de provado o isolamento; falta anotar a licença, ou quem a libertou.',
    remedy: 'Anotar a licença de isolamento ou de abertura de linha e o nome de quem a libertou.',
  },
  'loosening-setting-only': {
    says: '{setting} é só para desapertar.',
    remedy: 'Nunca se usa para apertar: bloquear o sentido de rotação, e voltar a mudá-lo antes de apertar o parafuso seguinte.',
  },
  'loosening-tool-small': {
    says: 'Soltar pode precisar de {needed}; a regulação mais alta é {largest}.',
    remedy: 'Pegar numa ferramenta maior ou num multiplicador. Nunca alongar o braço, nunca bater numa ferramenta sob carga.',
  },
  'loosening-tool-near': {
    says: 'Soltar pode precisar de {needed}: quase tudo o que a ferramenta dá, {largest}.',
    remedy: 'Ter pronta uma ferramenta maior, e desoxidante penetrante.',
  },
  'loosening-socket': {
    says: 'Soltar pode precisar de {needed}; a chave de caixa e o quadrado admitem {rating}.',
    remedy: 'Pegar em chave de caixa de impacto e quadrado do tamanho seguinte.',
  },
  'loosening-bolt': {
    says: 'Soltar pode precisar de {needed}; um parafuso gripado só aguenta {limit}.',
    remedy: 'Parar nesse binário e mudar de método: desoxidante penetrante, calor com licença, cortar ou partir a porca.',
  },
  'loosening-penetrant': {
    says: 'Estas porcas gripam ou partem.',
    remedy: 'Embeber com desoxidante penetrante, limpar os filetes que saem e ter pronto um corta-porcas.',
  },
  'lot-test-missing': {
    says: '{file} não contém nenhum ensaio de aptidão do lote {lot}.',
    remedy: 'Anotar a série em suitability com o identificador deste lote. Até lá as suas ligações param.',
  },
  'lot-friction-twice': {
    says: 'O lote {lot} tem anotado o atrito e um ensaio de aptidão; conta o ensaio.',
    remedy: 'Deixar um dos dois.',
  },
  'lot-test-few': {
    says: 'Lote {lot}: {found, plural, =0 {nenhum conjunto ensaiado} one {# conjunto ensaiado} other {# conjuntos ensaiados}}; pedem-se {wanted}.',
    remedy: 'Ensaiar mais conjuntos deste lote.',
  },
  'lot-test-reading': {
    says: 'Lote {lot}, conjunto {assembly}: uma leitura não está acima de zero.',
    remedy: 'Ler outra vez o registo, ou ensaiar outro conjunto.',
  },
  'lot-test-size': { says: 'Lote {lot}: falta a medida ou o pré-esforço especificado.', remedy: 'Anotar ambos.' },
  'lot-k-class-none': {
    says: 'O lote {lot} não cumpre nenhuma classe k: k_m = {mean}, V_k = {variation}.',
    remedy: 'Usá-lo só com um método que não precise do atrito, ou devolvê-lo.',
  },
  'lot-force-low': {
    says: 'Lote {lot}: um conjunto atingiu {found}; pede-se {wanted}.',
    remedy: 'O lote não passou: pô-lo de parte e ensaiar outro.',
  },
  'lot-rotation-low': {
    says: 'Lote {lot}: um conjunto rodou menos do que deve antes de ceder.',
    remedy: 'O lote não passou: pô-lo de parte e ensaiar outro.',
  },
  'lot-rotation-untested': {
    says: 'Lote {lot}: a reserva de rotação não foi medida.',
    remedy: 'Medi-la onde o método roda os parafusos para além da cedência.',
  },
  'lot-test-future': {
    says: 'Diz-se que o lote {lot} foi ensaiado em {tested}, depois do dia do trabalho.',
    remedy: 'Ler outra vez a data.',
  },
  'lot-test-old': {
    says: 'O ensaio do lote {lot} tem {days} dias; admitem-se {allowed}.',
    remedy: 'Ensaiar outra vez: os lubrificantes envelhecem.',
  },
  'lot-test-temperature': {
    says: 'Os parafusos do lote {lot} estão a {apart} °C da temperatura do seu ensaio.',
    remedy: 'Ensaiar à temperatura do trabalho; a mais de {usual} °C de diferença o atrito é outro.',
  },
  'lot-retest': {
    says: 'O lote {lot} foi molhado ou lubrificado outra vez depois do ensaio.',
    remedy: 'O seu atrito não se conhece: ensaiá-lo outra vez antes de o usar.',
  },
  'sample-none': { says: 'Nenhuma ligação pede amostra.', remedy: 'Anotar execution-class em job.yaml, ou dar o número de parafusos.' },
  'sample-size': {
    says: 'Não se podem sortear «{size}» parafusos de {bolts}.',
    remedy: 'Dar um número inteiro de 1 ao número de parafusos.',
  },
  'sample-seed': { says: '«{seed}» não é uma semente.', remedy: 'Dar um número inteiro a partir de 0, e registá-lo.' },
  'sequential-limits': {
    says: 'Um plano de tipo {type} leva de {least} a {most} parafusos.',
    remedy: 'Anotar as linhas da norma para esse tipo.',
  },
  'sequential-short': {
    says: 'As linhas não chegam a {most} parafusos.',
    remedy: 'Anotar aceitação e rejeição para cada número de parafusos.',
  },
  'sequential-crossed': {
    says: 'Depois de {bolts} parafusos a mesma contagem aceitaria e rejeitaria.',
    remedy: 'Ler outra vez ambas as linhas.',
  },
  'sequential-undecided': {
    says: 'Depois de {most} parafusos o plano tem de aceitar ou rejeitar.',
    remedy: 'Anotar ambos os limites para o último parafuso, com diferença de um.',
  },
  'sequential-over': {
    says: 'O resultado já está decidido ({verdict}): mais nenhum parafuso conta.',
    remedy: 'Começar outro plano se for preciso ver mais.',
  },
  'sequential-twice': {
    says: 'O parafuso {bolt} já foi visto.',
    remedy: 'Pegar no parafuso seguinte do sorteio; um parafuso conta uma vez.',
  },
  'gap-none': { says: 'Não foi lida nenhuma folga.', remedy: 'Lê-la em 4 ou 8 pontos à volta da flange.' },
  'gap-points': { says: 'A passagem {pass} tem {points} leituras.', remedy: 'Ler a folga em 4 ou 8 pontos.' },
  'gap-negative': { says: 'Passagem {pass}, ponto {point}: uma folga não está abaixo de zero.', remedy: 'Lê-la outra vez.' },
  'gap-uneven': {
    says: 'A folga difere {spread} à volta da flange; admite-se {allowed}.',
    remedy: 'Parar. Aliviar o lado estreito, aproximar o lado largo com regulações baixas e ler outra vez.',
  },
} satisfies NoticeTexts<'around'>;
