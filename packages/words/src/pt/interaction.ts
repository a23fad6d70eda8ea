import type { NoticeTexts } from '../notice-texts.ts';

export const interactionTexts = {
  'compliance-size': {
    says: 'Não se pode usar uma matriz de flexibilidade de {bolts} parafusos; pode-se entre 1 e {most}.',
    remedy: 'Dividir a ligação.',
  },
  'compliance-not-square': {
    says: 'A matriz de flexibilidade não tem {bolts} linhas de {bolts} valores.',
    remedy: 'Anotar uma linha e uma coluna para cada parafuso.',
  },
  'compliance-not-symmetric': {
    says: 'A matriz de flexibilidade não é simétrica nos parafusos {first} e {second}.',
    remedy:
      'O que o parafuso {first} faz ao {second} tem de ser igual ao que o {second} faz ao {first}; medir ou anotar outra vez esse par de valores.',
  },
  'compliance-not-definite': {
    says: 'A matriz de flexibilidade não é de uma ligação elástica: não é definida positiva.',
    remedy: 'Procurar um sinal errado, uma unidade errada (mm/N) ou uma flexibilidade de parafuso em falta na diagonal.',
  },
  'members-impossible': {
    says: 'Não se calculou como os parafusos atuam uns sobre os outros: as dimensões descrevem algo impossível ({what}).',
    remedy: 'Corrigi-las em members.yaml.',
  },
  'members-unknown': {
    says: 'Não se calculou como os parafusos atuam uns sobre os outros; não se conhece: {what}.',
    remedy: 'Anotá-lo na lista de ligações ou em members.yaml.',
  },
  'gasket-modulus-needed': {
    says: 'Não se calculou como os parafusos atuam uns sobre os outros: não há nada típico desta junta.',
    remedy: 'Anotar a sua espessura e módulo em members.yaml (dados do fabricante, EN 13555).',
  },
  'gasket-modulus-assumed': {
    says: 'A rigidez da junta é só a típica do seu género; dela depende como os parafusos atuam uns sobre os outros.',
    remedy: 'Anotar em members.yaml o módulo do fabricante (EN 13555) desta junta.',
  },
  'gasket-load-above': {
    says: 'Os parafusos juntos apertam a junta com {force}; a sua tensão máxima de montagem admite {greatest}.',
    remedy: 'Pedir ao engenheiro uma tensão de parafuso menor ou outra junta; nenhuma regulação com esta tensão a poupa.',
  },
  'gasket-load-below': {
    says: 'Os parafusos juntos apertam a junta com {force}; a sua tensão mínima de montagem pede {least}.',
    remedy: 'Pedir ao engenheiro uma tensão de parafuso maior ou outra junta; nenhuma regulação com esta tensão a assenta.',
  },
  'uneven-by-custom': {
    says: 'Apertar um parafuso alivia os vizinhos: depois de {rounds} passagens as forças ainda diferem {spread}.',
    remedy:
      'Dar voltas até nenhuma porca mexer: contar com {more, plural, one {mais # passagem} other {mais # passagens}} até cada parafuso estar dentro de {wanted}.',
  },
  'uneven-still': {
    says: 'Depois de {rounds} passagens um parafuso ainda está a {worst} do seu alvo; queria-se {wanted}.',
    remedy:
      'Perguntar ao engenheiro: outra junta ou lubrificante, várias ferramentas ao mesmo tempo, ou uma sequência com forças acima do alvo.',
  },
  'peak-above-ceiling': {
    says: 'Enquanto se apertam outros, um parafuso sobe a {peak}; acima de {ceiling} pode danificar-se.',
    remedy: 'Perguntar ao engenheiro: mais passagens com regulações crescentes, várias ferramentas ao mesmo tempo, ou menos pré-esforço.',
  },
  'above-target-approval': {
    says: 'Esta sequência leva parafusos a {peak} por algum tempo; o alvo é {target}.',
    remedy: 'O engenheiro aprova a sequência para esta ligação, e uma segunda pessoa confirma cada mudança de regulação.',
  },
  'above-target-refused': {
    says: 'Segundo {rule} nenhum parafuso pode estar acima do seu alvo; não se usa a força máxima de parafuso dada para esta ligação.',
    remedy: 'Apertar com uma só regulação por passagem.',
  },
  'several-settings-none': {
    says: 'Não se encontrou nenhuma sequência de várias regulações abaixo de {cap}.',
    remedy: 'Apertar com uma só regulação por passagem, ou pedir ao engenheiro outra força máxima de parafuso.',
  },
} satisfies NoticeTexts<'interaction'>;
