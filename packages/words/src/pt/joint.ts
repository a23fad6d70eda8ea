import type { NoticeTexts } from '../notice-texts.ts';

export const jointTexts = {
  'no-bolts': { says: 'A ligação não tem parafusos.', remedy: 'Anotar quantos parafusos tem, ou a flange a que pertence.' },
  'positions-wrong': {
    says: 'Os subgrupos não somam os {boltCount} parafusos da ligação (faltam: {missing}; repetidos: {twice}).',
    remedy: 'Dar cada parafuso a um subgrupo e só a um.',
  },
  'sequence-wrong': {
    says: 'A sequência do engenheiro não nomeia uma vez cada um dos {boltCount} parafusos.',
    remedy: 'Corrigir a sequência; não se completa a adivinhar.',
  },
  'tools-at-once-wrong': {
    says: '{tools} ferramentas ao mesmo tempo não repartem por igual {boltCount} parafusos; o plano usa uma.',
    remedy: 'Usar um número de ferramentas que divida os parafusos.',
  },
  'tool-unknown': { says: 'A ferramenta {serial} não está entre as do trabalho.', remedy: 'Juntá-la com a sua tabela, ou nomear outra.' },
  'no-tool': {
    says: 'O trabalho não tem nenhuma ferramenta com tabela de regulações.',
    remedy: 'Juntar uma ferramenta com a tabela do seu certificado.',
  },
  'tool-chart-faulty': {
    says: 'A tabela da ferramenta {serial} tem falhas, por isso não se lê nada dela.',
    remedy: 'Arranjar a tabela; as falhas estão com a ferramenta.',
  },
  'several-tools': {
    says: 'Nenhuma ferramenta sozinha cobre todas as etapas; o plano usa {tools}.',
    remedy: 'Levar todas, e ler na ficha a ferramenta de cada etapa.',
  },
  'lot-unknown': { says: 'O lote {lot} não está entre os do trabalho.', remedy: 'Juntar o lote com o seu certificado ou ensaio.' },
  'lot-failed': {
    says: 'O lote {lot} não passou no ensaio.',
    remedy: 'Não o usar. Pegar noutro lote, ou ensaiar outra vez quando se conhecer a causa.',
  },
  'turned-not-tested': {
    says: 'O lote {lot} foi ensaiado a rodar {tested, select, head {a cabeça} other {a porca}}; aqui roda {turned, select, head {a cabeça} other {a porca}}. Um binário só vale como foi ensaiado.',
    remedy:
      'Rodar {tested, select, head {a cabeça} other {a porca}}, ou ensaiar o lote a rodar {turned, select, head {a cabeça} other {a porca}}.',
  },
  'datum-missing': {
    says: 'Não se diz onde está o parafuso 1, em que sentido vão os números nem de que lado se olha.',
    remedy: 'Anotar a origem, ou a equipa marca o parafuso 1 no aço e confirma-o.',
  },
  'permit-missing': {
    says: 'Uma ligação sob pressão precisa da sua licença de isolamento ou de abertura de linha antes de se tocar numa porca; não há nenhuma anotada.',
    remedy: 'Anotar o número da licença.',
  },
  'zone-missing': {
    says: 'Não se diz se a ligação está numa área perigosa.',
    remedy: 'Anotar a zona de cada ligação, ou «zone: none» para todo o trabalho.',
  },
  'hot-work-missing': {
    says: 'A ferramenta {tool} é uma fonte de ignição; na zona {zone} precisa de licença de trabalho a quente e teste de gases.',
    remedy: 'Anotar ambos os números, ou planear uma ferramenta sem eletricidade.',
  },
  'wet-retest': {
    says: 'Está indicada chuva. Parafusos molhados ou enferrujados não têm o atrito com que foram ensaiados.',
    remedy: 'Manter os lotes secos; ensaiar outra vez um lote molhado antes de o apertar.',
  },
  'arm-length-unknown': {
    says: 'O braço da ferramenta {serial} não tem comprimento, por isso não se conhece a sua força de reação.',
    remedy: 'Medi-lo em esquadria do quadrado ao contacto e anotá-lo.',
  },
  'arm-overloaded': {
    says: 'A etapa precisa de {torque}; o braço de reação admite {rating}.',
    remedy: 'Pegar num braço que admita esse binário.',
  },
  'reaction-point-overloaded': {
    says: 'O braço empurra com {force}; o seu ponto pode receber {limit}.',
    remedy: 'Escolher um ponto de reação mais forte ou um braço admitido mais comprido. Nunca alongar um braço em obra.',
  },
  'reaction-point-unknown': {
    says: 'O braço vai empurrar com {force}; não está nomeado nenhum ponto de reação.',
    remedy: 'Nomear um que a aguente: uma porca vizinha apertada, o bordo de uma flange, um batente feito de propósito.',
  },
  'socket-does-not-fit': {
    says: 'A chave de caixa de {socket} toca no sextavado vizinho com uma distância entre parafusos de {pitch}: faltam {lacking}.',
    remedy: 'Usar uma chave de caixa de parede fina que admita o binário.',
  },
  'socket-meets-wall': {
    says: 'A chave de caixa de {socket} toca na parede, a {wall} do parafuso.',
    remedy: 'Usar uma chave de caixa menor, ou rodar a outra peça.',
  },
  'socket-unknown': {
    says: 'Não há anotada com a ferramenta nenhuma chave de caixa de {acrossFlats} entre faces.',
    remedy: 'Anotar o seu diâmetro exterior, para se poder verificar a folga.',
  },
  'yield-likely': {
    says: '{share} dos parafusos passariam da cedência ao apertar.',
    remedy: 'Verificar binário, atrito e grau; pegar numa regulação ou num lubrificante que deixe margem.',
  },
  'below-target-likely': {
    says: '{share} dos parafusos podem ficar abaixo do pré-esforço alvo.',
    remedy: 'Ajuda menos dispersão: um lote ensaiado, uma ferramenta melhor; ou o consentimento do engenheiro.',
  },
  'torque-unit-doubt': {
    says: '{torque} significaria {basis, select, yield {um parafuso rodado para além da cedência com fator k {k}} other {um fator k de {k}}}; lido na outra unidade de binário seria um valor corrente.',
    remedy: 'Verificar se o valor está em N·m ou em lbf·ft.',
  },
  'torque-implausible': {
    says: '{torque} significaria {basis, select, yield {um parafuso rodado para além da cedência com fator k {k}} other {um fator k de {k}, que nenhum lubrificante tem}}.',
    remedy: 'Verificar binário, pré-esforço e medida com a especificação.',
  },
  'engineer-override': {
    says: 'Usa-se o que o engenheiro dá em vez do nosso ({what}).',
    remedy: 'Nada a fazer; em plano e ficha mostra-se como dele.',
  },
  'figure-not-used': {
    says: 'A lista dá um valor ({what}); este conjunto de regras não o emprega, e o plano não o segue.',
    remedy:
      'Tirá-lo, ou nomear o conjunto de regras que o toma (as-specified para um binário ou um pré-esforço, flange-bolt-stress para uma tensão de parafuso).',
  },
  'friction-from-table': {
    says: 'O atrito vem de uma tabela ({source}), não de um ensaio deste lote.',
    remedy: 'Preferir um ensaio: as tabelas diferem em metade para as mesmas palavras.',
  },
  'bolt-too-short': {
    says: 'O comprimento de parafuso {length} não chega: {thickness} apertados e uma porca de {nut} precisam de pelo menos {needed}.',
    remedy: 'Usar um parafuso mais longo, ou corrigir o comprimento ou a espessura apertada (Σt: chapas, enchimentos e anilhas).',
  },
  'bolt-below-clamp': {
    says: 'O comprimento de parafuso {length} é menor que os {thickness} apertados.',
    remedy: 'Usar um parafuso mais longo, ou corrigir o comprimento ou a espessura apertada (Σt: chapas, enchimentos e anilhas).',
  },
  'clamp-below-thread': {
    says: 'O comprimento de parafuso {length} deixa pouco demais para a porca e um passo além de {thickness} apertados.',
    remedy: 'Verificar comprimento e espessura apertada.',
  },
  'qualification-expired': {
    says: 'A qualificação de {person} caducou em {until}.',
    remedy: 'Renová-la, ou alguém qualificado faz o trabalho.',
  },
} satisfies NoticeTexts<'joint'>;
