/** The pages of a draft, in the order in which a job goes. */
export const DRAFT_PAGES = {
  start: '/office',
  define: '/office/define',
  plan: '/office/plan',
  simulate: '/office/simulate',
  compare: '/office/compare',
  issue: '/office/issue',
} as const;

/** The pages of a job of the yard: what was issued, and who works on it. */
export const JOB_PAGES = {
  board: '/office/board',
  settle: '/office/settle',
  people: '/office/people',
  devices: '/office/devices',
  papers: '/office/papers',
  handover: '/office/handover',
  account: '/office/account',
} as const;

export type OfficePageName = keyof typeof DRAFT_PAGES | keyof typeof JOB_PAGES;
