import type { NoticeTexts } from '../notice-texts.ts';

export const inputTexts = {
  'file-missing': { says: 'O ficheiro {file} não está lá.', remedy: 'Pô-lo na pasta do trabalho, ou corrigir o seu nome.' },
  'file-empty': { says: 'O ficheiro {file} está vazio.', remedy: 'Anotar pelo menos os títulos e uma linha.' },
  'file-too-large': { says: 'O ficheiro {file} é maior do que {limit}.', remedy: 'Repartir o trabalho por várias pastas.' },
  'file-not-text': {
    says: 'O ficheiro {file} não é um ficheiro de texto.',
    remedy: 'Guardá-lo a partir da folha de cálculo como XLSX ou CSV (UTF-8).',
  },
  'encoding-assumed': {
    says: 'O ficheiro {file} não é UTF-8; foi lido como {encoding}.',
    remedy: 'Verificar nomes com acentos e tremas, ou guardar o ficheiro como UTF-8.',
  },
  'path-leaves-folder': {
    says: 'O caminho {path} sai da pasta do trabalho.',
    remedy: 'Pôr o ficheiro na pasta do trabalho e nomeá-lo a partir daí.',
  },
  'csv-broken': {
    says: 'A tabela não se consegue ler a partir daqui: {problem}.',
    remedy: 'Procurar nesta linha umas aspas por fechar ou um separador a mais.',
  },
  'heading-row-missing': {
    says: 'Não se reconheceu nenhuma linha de títulos.',
    remedy: 'Uma das primeiras linhas tem de nomear as colunas, entre elas: {wanted}.',
  },
  'column-missing': { says: 'Falta a coluna «{wanted}».', remedy: 'Juntá-la, com um dos títulos de docs/columns.md.' },
  'column-twice': {
    says: 'O título «{heading}» significa {meaning}, e «{other}» também.',
    remedy: 'Deixar um dos dois, ou dizer qual é, no título na aplicação ou com --map "{heading}={meaning}".',
  },
  'column-unclear': {
    says: 'O título «{heading}» pode significar: {candidates}.',
    remedy:
      'Dizer uma vez o que significa, no título na aplicação ou com --map "{heading}={example}", ou --map "{heading}=ignore". Fica lembrado em mapping.yaml.',
  },
  'column-asked': {
    says: 'Nenhum título significa {wanted}; não se entenderam {candidates}.',
    remedy: 'Se for um destes, dizê-lo uma vez, no título na aplicação ou com --map "{example}={wanted}". Senão, juntar a coluna.',
  },
  'heading-map-unused': {
    says: '--map "{heading}={means}" não serve a nenhuma tabela deste trabalho.',
    remedy: 'Escrever o título como está no ficheiro, e um significado de docs/columns.md.',
  },
  'workbook-broken': {
    says: 'O livro de cálculo não se consegue ler: {problem}.',
    remedy: 'Abri-lo na folha de cálculo e guardá-lo como XLSX.',
  },
  'workbook-unsafe': {
    says: 'O livro de cálculo é recusado: {problem}.',
    remedy: 'Uma lista de ligações não precisa de nada assim. Perguntar de onde vem o ficheiro; copiar os valores para um livro novo.',
  },
  'workbook-old': {
    says: 'O livro de cálculo está fechado com palavra-passe, ou é do tipo antigo (XLS).',
    remedy: 'Guardá-lo como XLSX sem palavra-passe, ou como CSV.',
  },
  'sheet-missing': { says: 'O livro de cálculo não tem a folha «{sheet}»; tem {sheets}.', remedy: 'Corrigir o nome a seguir ao #.' },
  'sheet-unclear': {
    says: 'Várias folhas podem ser a procurada ({wanted}): {sheets}.',
    remedy: 'Nomear a que vale, a seguir a um #: {example}',
  },
  'rows-hidden': {
    says: '{rows, plural, one {Também foi lida uma linha oculta} other {Também foram lidas # linhas ocultas}}.',
    remedy: 'Apagar o que já não vale: ocultar não tira uma linha da lista.',
  },
  'cell-error': { says: 'A célula mostra um erro, não um valor.', remedy: 'Arranjar a fórmula na folha de cálculo, ou anotar o valor.' },
  'bolt-list-uneven': {
    says: 'As linhas da ligação {tag} não dão a cada parafuso o seu próprio número e lugar; ver {bolts}.',
    remedy: 'Numerar os parafusos a partir de 1 sem falhas, uma linha cada, todos com x e y ou nenhum.',
  },
  'column-ignored': { says: 'A coluna «{heading}» não se entendeu e não se usa.', remedy: 'Mudar-lhe o nome se for importante.' },
  'unit-unknown': {
    says: 'A unidade «{unit}» não é uma de {wanted}.',
    remedy: 'Escrever a unidade entre parênteses no título, ou a seguir ao número.',
  },
  'unit-missing': {
    says: 'O número não tem unidade.',
    remedy: 'Escrever uma de {wanted} entre parênteses no título, ou a seguir ao número.',
  },
  'cell-empty': { says: 'Esta célula está vazia.', remedy: 'Anotar: {wanted}.' },
  'cell-formula': {
    says: 'A célula contém uma fórmula, não um valor.',
    remedy: 'Colar o valor no seu lugar, ou calcular a folha e guardá-la; aqui nunca se executam fórmulas.',
  },
  'number-wanted': { says: 'Isto não é um número.', remedy: 'Anotar: {wanted}.' },
  'quantity-wanted': { says: 'Isto não é um número.', remedy: 'Escrever um número, em {units}.' },
  'number-outside': { says: 'Este número não pode ser usado.', remedy: 'Escrever um número de {low} a {high}.' },
  'whole-number-outside': { says: 'Este número não pode ser usado.', remedy: 'Escrever um número inteiro de {low} a {high}.' },
  'number-ambiguous': {
    says: '«{read}» pode ler-se como decimal ou com separador de milhares.',
    remedy: 'Escrevê-lo sem separador de milhares; num livro de cálculo, como número e não como texto.',
  },
  'number-absurd': { says: 'O número não é credível.', remedy: 'Anotar: {wanted}, acima de zero e até {largest}; verificar a unidade.' },
  'label-too-long': {
    says: 'Este nome tem mais de {most} caracteres ou mais de uma linha.',
    remedy: 'Encurtá-lo: o registo guarda etiquetas, números de série e lotes com até {most} caracteres.',
  },
  'word-unknown': { says: 'Esta palavra não se conhece aqui.', remedy: 'Anotar uma de: {wanted}.' },
  'positions-unreadable': { says: 'Os parafusos não se conseguem ler.', remedy: 'Escrever um número (8), ou posições (1-4, 7, 9-12).' },
  'layout-unreadable': { says: 'A disposição não se consegue ler.', remedy: 'Escrever «ring», ou linhas × colunas (2x4).' },
  'layout-contradicts-bolts': { says: 'A disposição {layout} não tem {bolts} parafusos.', remedy: 'Corrigir um dos dois.' },
  'joint-contradicts-itself': {
    says: 'A ligação {tag} está descrita duas vezes: {field} é «{first}» numa linha e «{second}» noutra.',
    remedy: 'As linhas de uma ligação só podem diferir no que é de um subgrupo: posições, medida, grau, comprimento, lote.',
  },
  'flange-contradicts': {
    says: '{flange} tem {field} {table}; a lista diz {given}.',
    remedy: 'Corrigir a lista, ou deixar a célula vazia para a tabela da norma a preencher.',
  },
  'flange-unreadable': { says: 'A flange não se consegue ler.', remedy: 'Escrever «B16.5 NPS 8 Class 300» ou «EN 1092-1 DN80 PN16».' },
  'friction-half-given': { says: 'O atrito só está dado a meio.', remedy: 'Anotar: {wanted}.' },
  'friction-implausible': {
    says: 'Nenhum parafuso tem este valor ({what}); ocorrem de {low} a {high}.',
    remedy: 'Comparar o valor com o certificado, e ver se está na coluna certa.',
  },
  'yaml-broken': {
    says: 'O ficheiro não se consegue ler: {problem}.',
    remedy: 'Comparar a linha com o exemplo que «clampwright init» escreve.',
  },
  'yaml-unknown-key': { says: 'A palavra «{key}» não se conhece aqui.', remedy: 'Comparar com o exemplo que «clampwright init» escreve.' },
  'yaml-wrong-value': { says: 'Este valor não se pode usar.', remedy: 'Pede-se: {wanted}.' },
  'date-unreadable': { says: 'Isto não é uma data do calendário.', remedy: 'Escrever ano-mês-dia: 2026-11-25.' },
  'certificates-unclear': {
    says: 'A ferramenta {serial} tem dois certificados de {day}: {first} e {second}. Não se escolheu nenhum.',
    remedy: 'Deixar o que vale, ou corrigir a data do outro.',
  },
  'certificate-missing': {
    says: 'A ferramenta {serial} não tem certificado com tabela.',
    remedy: 'Dar aqui certificado e tabela, ou pô-los no ficheiro de certificados.',
  },
  'certificate-of-no-tool': {
    says: 'A lista tem um certificado de {serial}, que não é ferramenta deste trabalho.',
    remedy: 'Nada, se a ferramenta não se usa aqui; senão, comparar os números de série.',
  },
  'record-joint-unknown': {
    says: 'Neste trabalho não foi emitida ficha para uma ligação «{tag}».',
    remedy: 'Ligações com ficha: {joints}.',
  },
  'record-step-unknown': { says: 'A ligação não tem a etapa «{step}».', remedy: 'As suas etapas: {steps}.' },
  'record-bolt-unknown': { says: 'A ligação não tem o parafuso {bolt}.', remedy: 'Os seus parafusos são de 1 a {bolts}.' },
  'records-known': {
    says: 'O ficheiro {name} já foi anotado neste livro, byte por byte.',
    remedy: 'Anotar só o que é novo, como ficheiro próprio.',
  },
  'entered-lot-unknown': {
    says: 'O lote {lot} não está inscrito neste livro, e o ficheiro não diz o que são os seus conjuntos.',
    remedy: 'Escrever medida, grau e sistema a seguir a «designation», ao lado do lote.',
  },
  'entered-tool-unknown': {
    says: 'A ferramenta {tool} não está inscrita nem neste livro nem no do estaleiro.',
    remedy: 'Comparar o número de série, ou inscrever antes a ferramenta: clampwright register.',
  },
  'serial-twice': {
    says: 'O número de série {serial} aparece duas vezes.',
    remedy: 'Uma ferramenta aparece uma vez; trocar a tabela, não a ferramenta.',
  },
  'lot-twice': { says: 'O lote {lot} aparece duas vezes.', remedy: 'Dar a cada lote o seu próprio nome.' },
  'members-joint-unknown': {
    says: 'members.yaml fala da ligação {joint}, que a lista de ligações não tem ou que foi deixada de fora.',
    remedy: 'Escrever a etiqueta como na lista de ligações.',
  },
  'members-twice': { says: 'Duas entradas dizem o que a ligação {joint} aperta.', remedy: 'Deixar uma delas.' },
  'members-no-flange': {
    says: 'A ligação {joint} não é uma flange normalizada com junta, e as suas dimensões não são dadas.',
    remedy: 'Nomear a flange na lista de ligações e a junta aqui, ou dar anel, chapas ou matriz.',
  },
  'row-broken': {
    says: 'A linha tem {cells} células; os títulos têm {wanted}.',
    remedy: 'Procurar um separador em falta ou a mais, ou uma vírgula dentro de um número.',
  },
} satisfies NoticeTexts<'input'>;
