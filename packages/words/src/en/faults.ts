/** Words of the copy on which faults are marked. */
export const FAULT_TEXTS = {
  'faults.sheet': 'What was found',
  'faults.level': 'Level',
  'faults.place': 'Where',
  'faults.says': 'What is wrong',
  'faults.remedy': 'What would mend it',
} as const;
