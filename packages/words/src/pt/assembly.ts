import type { NoticeTexts } from '../notice-texts.ts';

export const assemblyTexts = {
  'protrusion-short': {
    says: 'Parafuso {bolt}: saem {found} de rosca da porca; o mínimo é {wanted}.',
    remedy: 'Pegar num parafuso mais comprido.',
  },
  'clear-threads-few': {
    says: 'Parafuso {bolt}: {found, plural, =0 {nenhum filete completo} one {# filete completo} other {# filetes completos}} entre porca e espiga; pelo menos {wanted}.',
    remedy: 'Pegar no comprimento de parafuso certo, ou pôr mais uma anilha sob a cabeça.',
  },
  'plates-step': {
    says: 'As chapas de uma camada diferem {found}; admite-se {allowed}.',
    remedy: 'Pôr uma chapa de enchimento da espessura certa.',
  },
  'packs-wrong': {
    says: '{count, plural, one {A chapa de enchimento não está como se admite} other {# chapas de enchimento não estão como se admite}}: pelo menos 2 mm cada, três no máximo.',
    remedy: 'Usar menos e mais espessas.',
  },
  'slip-surface-other': {
    says: 'A superfície de atrito está especificada da classe {specified}; encontrou-se a classe {found}.',
    remedy: 'Parar. Preparar a superfície como especificado, ou perguntar ao engenheiro o que a encontrada aguenta.',
  },
  'gasket-other': {
    says: 'A junta é {found}; a especificação diz {wanted}.',
    remedy: 'Arranjar a junta certa. Um binário vale só para a sua própria junta.',
  },
  'gasket-used': { says: 'A junta não é nova.', remedy: 'Usar uma nova. Uma junta nunca se usa duas vezes.' },
  'gasket-faces': {
    says: 'Não consta que as faces de assentamento estejam limpas e sãs.',
    remedy: 'Limpar e ver ambas; as marcas radiais que atravessam o assento vão ao engenheiro.',
  },
} satisfies NoticeTexts<'assembly'>;
