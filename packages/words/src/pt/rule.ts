import type { NoticeTexts } from '../notice-texts.ts';

export const ruleTexts = {
  'rule-unknown': {
    says: 'Não se conhece o conjunto de regras {rule}.',
    remedy: 'Escolher um dos que «clampwright init» põe em job.yaml.',
  },
  'edition-unknown': { says: 'O conjunto de regras não tem a edição {edition}.', remedy: 'Edições conhecidas: {known}.' },
  'structural-size-too-small': {
    says: '{size} está abaixo de M12, a medida menor que a EN 1090-2 deixa pré-esforçar.',
    remedy: 'Pedir ao engenheiro outra medida, ou um pré-esforço especificado para esta ligação.',
  },
  'grade-not-preloadable': {
    says: 'O grau {grade} não se pode pré-esforçar segundo {rule}.',
    remedy: 'Usar o grau para que o conjunto de regras é feito, ou o engenheiro especifica pré-esforço e método.',
  },
  'k-class-needed': {
    says: 'O método ({method}) precisa da classe k do lote ({needed}); nenhuma é dada.',
    remedy: 'Anotar a classe k da etiqueta do lote.',
  },
  'k-class-insufficient': {
    says: 'O método ({method}) precisa da classe k {needed}; o lote tem {kClass}.',
    remedy: 'Usar um lote da classe certa, ou um método que aceite esta.',
  },
  'lot-untested': {
    says: 'O método ({method}) precisa de k_m deste mesmo lote; não está anotado ensaio nem certificado dele.',
    remedy: 'Anotar k_m e V_k do certificado do lote, ou fazer um ensaio de aptidão.',
  },
  'clamp-thickness-needed': {
    says: 'O ângulo depende da espessura apertada, que não é dada.',
    remedy: 'Anotar Σt: todas as chapas, enchimentos e anilhas entre cabeça e porca.',
  },
  'bolt-length-needed': {
    says: 'A rotação depende do comprimento do parafuso, que não é dado.',
    remedy: 'Anotar o comprimento nominal do parafuso.',
  },
  'angle-not-tabulated': {
    says: 'Com {thickness} apertados a tabela não dá ângulo; acaba em {limit}.',
    remedy: 'Mandar determinar o ângulo por um ensaio de procedimento nesta ligação, ou mudar de método.',
  },
  'assembly-needed': {
    says: 'O método ({method}) precisa de parafuso, porca e anilha de um mesmo conjunto para pré-esforço (EN 14399); a ligação não indica nenhum sistema, ou indica parafusos correntes.',
    remedy:
      'Escrever {needed} na coluna «sistema» (system) da lista de ligações, como diz a etiqueta do fornecimento, ou escolher um método para parafusos correntes.',
  },
  'system-needed': { says: 'O método ({method}) é feito para conjuntos {needed}.', remedy: 'Usar {needed}, ou outro método.' },
  'size-not-in-table': {
    says: '{size} não tem valor em {table}.',
    remedy: 'Ler a edição em vigor, ou o engenheiro dá o valor para esta ligação.',
  },
  'bolt-stress-needed': {
    says: 'Não é dada tensão de montagem dos parafusos para esta flange.',
    remedy: 'Perguntar ao engenheiro: resulta de junta, flange e parafusos em conjunto.',
  },
  'bolt-stress-above-yield': {
    says: 'A tensão de parafuso de {stress} atinge a tensão de cedência, {yield}.',
    remedy: 'Verificar tensão, secção e grau com o engenheiro.',
  },
  'bolt-stress-high': {
    says: 'A tensão de parafuso é {share} da cedência; mais de {usual} não é usual numa flange.',
    remedy: 'O engenheiro confirma a tensão na junta e a rotação da flange.',
  },
  'friction-unknown': {
    says: 'Não se sabe nada do atrito deste lote e lubrificante.',
    remedy: 'Anotar um fator k ou coeficientes de atrito com a sua fonte; um desconhecido não se substitui por um usual.',
  },
  'coefficients-needed': {
    says: 'A VDI 2230 precisa dos coeficientes de atrito de rosca e de apoio, não de um fator k.',
    remedy: 'Anotar ambos os coeficientes, ou uma classe de atrito.',
  },
  'figure-needed': {
    says: 'A ligação é para apertar como especificado, mas não é dado pré-esforço nem binário.',
    remedy: 'Anotar o pré-esforço ou o binário do engenheiro para esta ligação.',
  },
  'preload-basis-needed': {
    says: 'Um binário sozinho não diz que pré-esforço dá, nem um pré-esforço que binário.',
    remedy: 'Anotar o fator k de lote e lubrificante, ou pré-esforço e binário ambos.',
  },
  'tested-torque-needed': {
    says: 'Uma chave calibrada regula-se por um ensaio deste lote; um binário de tabela ou de fórmula não vale.',
    remedy: 'Verificar pelo menos três conjuntos do lote num calibrador de tração antes da instalação, e anotar o resultado.',
  },
} satisfies NoticeTexts<'rule'>;
