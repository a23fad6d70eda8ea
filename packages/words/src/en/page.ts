/** Fixed texts of the plan's pages; ICU message format. */
export const PAGE_TEXTS = {
  'page.skip': 'Skip to the content',
  'col.count': 'Number',
  'col.item': 'What',
  'joint.preload': 'Preload',
} as const;
