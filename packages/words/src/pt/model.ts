import type { NoticeTexts } from '../notice-texts.ts';

export const modelTexts = {
  'model-broken': {
    says: 'O modelo não se consegue ler: o ficheiro está danificado ou incompleto.',
    remedy: 'Exportá-lo outra vez a partir do programa de modelação.',
  },
  'model-text': {
    says: 'O texto do modelo está danificado aqui: {problem}.',
    remedy: 'Exportá-lo outra vez; se veio por correio, pedi-lo comprimido.',
  },
  'model-not-step': {
    says: 'Isto não é um ficheiro IFC em texto STEP.',
    remedy: 'Exportar IFC (terminação .ifc), não IFC-XML nem uma imagem do modelo.',
  },
  'model-packed': { says: 'O modelo está comprimido.', remedy: 'Descomprimi-lo: o ficheiro IFC está lá dentro.' },
  'model-schema': { says: 'O esquema {schema} não é lido.', remedy: 'Exportar como IFC 2x3, IFC 4 ou IFC 4.3.' },
  'model-unit-missing': {
    says: 'O modelo não diz a sua unidade de comprimento; supuseram-se metros.',
    remedy: 'Verificar uma medida conhecida.',
  },
  'model-without-bolts': {
    says: 'O modelo não contém nenhum parafuso que se pudesse entender.',
    remedy:
      'Exportar com os parafusos como elementos de fixação mecânicos (IfcMechanicalFastener); muitos programas deixam-nos de fora se não se pedirem.',
  },
  'fastener-unreadable': { says: 'Este elemento de fixação não se consegue ler.', remedy: 'Vê-lo no modelo.' },
  'fastener-no-bolt': { says: 'Isto não é um parafuso mas {kind}, e fica de fora.', remedy: 'Nada, se assim for.' },
  'fastener-without-place': {
    says: 'Não se consegue saber onde está este elemento de fixação: a sua posição falta, anda em círculo ou está presa a uma grelha.',
    remedy: 'Exportar com posições locais, ou anotar a ligação à mão.',
  },
  'fastener-without-size': {
    says: 'Não se encontrou aqui nenhuma medida de parafuso; foi lido, e não é medida: {tried}.',
    remedy: 'Completar a medida na lista que é escrita, ou dar ao elemento o seu diâmetro nominal no modelo.',
  },
  'fastener-without-grade': {
    says: 'Não se encontrou grau para os parafusos de «{tag}».',
    remedy: 'Completar o grau na lista que é escrita.',
  },
  'fastener-contradicts': {
    says: 'O modelo diz duas coisas deste elemento de fixação ({what}): {first}, e {second}. Não se tomou nenhuma.',
    remedy: 'Perguntar ao modelador, e completá-lo na lista que é escrita.',
  },
  'fastener-count': {
    says: 'O modelo diz aqui {said} parafusos, e mostra {found}.',
    remedy: 'Comparar com o desenho; os lugares que não são mostrados não estão na lista.',
  },
  'joint-not-flat': { says: 'Os parafusos de «{tag}» saem até {off} mm de um mesmo plano.', remedy: 'Verificar se são uma só ligação.' },
  'bolts-on-one-spot': {
    says: 'Em «{tag}» {bolts, plural, one {há um parafuso} other {há # parafusos}} onde já está outro.',
    remedy: 'O modelo pode tê-los duas vezes: verificar antes de usar a lista.',
  },
  'joint-by-distance': {
    says: 'Nada no modelo mantém juntos {bolts, plural, one {o parafuso} other {os # parafusos}} de «{tag}»; foram agrupados por distância.',
    remedy: 'Comparar a ligação com o desenho, e dar-lhe a sua etiqueta.',
  },
  'grip-open': { says: 'A espessura apertada de «{tag}» está por resolver: {why}.', remedy: 'Completá-la na lista que é escrita.' },
} satisfies NoticeTexts<'model'>;
