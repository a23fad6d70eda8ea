import type { NoticeTexts } from '../notice-texts.ts';

export const serverTexts = {
  'not-signed-in': {
    says: 'Sem sessão iniciada, ou este dispositivo não entrou em nenhum trabalho.',
    remedy: 'Iniciar sessão, ou fazer o dispositivo entrar de novo.',
  },
  'not-allowed': { says: 'Esta função não faz isso.', remedy: 'Perguntar ao planeador.' },
  'not-found': { says: 'Aqui não há nada acessível.', remedy: 'Verificar o endereço; perguntar ao planeador se se pertence ao trabalho.' },
  'sign-in-failed': {
    says: 'Nome e palavra-passe não batem certo.',
    remedy: 'Escrevê-los outra vez; o planeador pode fazer uma conta nova.',
  },
  'passkey-not-taken': {
    says: 'A chave de acesso não foi aceite: a resposta chegou tarde, ou não é deste endereço.',
    remedy:
      'Começar outra vez. Abrir o endereço por que também os outros chegam a este servidor; um endereço feito de números não pode ter chaves de acesso.',
  },
  'passkey-not-known': {
    says: 'Esta chave de acesso não se conhece aqui.',
    remedy: 'Iniciar sessão com nome e palavra-passe, e depois juntar uma chave de acesso nas definições.',
  },
  'code-not-valid': {
    says: 'O código está errado, já foi usado ou é velho demais.',
    remedy: 'Pedir um novo ao planeador: vale dez minutos e para um só dispositivo.',
  },
  'name-taken': { says: 'Já há uma conta {name}.', remedy: 'Escolher outro nome.' },
  'last-planner': { says: 'Esta é a última conta de um planeador.', remedy: 'Fazer antes outro planeador.' },
  'question-malformed': {
    says: 'O campo «{field}» falta ou não é como descrito.',
    remedy: 'Perguntar como /api/v1/openapi.json descreve.',
  },
  'body-not-json': { says: 'O conteúdo não é JSON em UTF-8.', remedy: 'Perguntar como /api/v1/openapi.json descreve.' },
  'body-too-large': { says: 'O conteúdo é maior do que {limit} bytes.', remedy: 'Enviá-lo em partes menores.' },
  'body-cut-short': { says: 'O conteúdo acabou cedo demais.', remedy: 'Enviá-lo outra vez.' },
  'hash-of-other-bytes': { says: 'Os bytes não têm o hash {hash}.', remedy: 'Enviar o ficheiro outra vez; nada dele foi guardado.' },
  'asked-too-often': { says: 'Perguntou-se vezes a mais.', remedy: 'Esperar {seconds} s.' },
  'from-another-site': { says: 'O pedido veio de uma página de outro sítio.', remedy: 'Abrir o endereço deste mesmo servidor.' },
  'store-not-reachable': {
    says: 'Neste momento os livros não se conseguem escrever nem ler.',
    remedy: 'Nada se perdeu: os dispositivos guardam o que não foi confirmado. Ver o disco ou a base de dados; tentar outra vez.',
  },
  'server-defect': { says: 'O servidor falhou no pedido {request}.', remedy: 'Comunicar com esse número; nada foi confirmado.' },
  'report-too-long': {
    says: 'O registo tem {size} entradas; aqui faz-se um relatório até {most}.',
    remedy: 'Fazê-lo ao lado do servidor: clampwright report TRABALHO FICHEIRO.pdf.',
  },
  'log-smaller-than-asked': { says: 'O diário tem {size} anotações.', remedy: 'Perguntar dentro disso.' },
} satisfies NoticeTexts<'server'>;
