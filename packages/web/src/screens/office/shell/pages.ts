import type { ROLES } from '@clampwright/record';

/** The pages of a draft, in the order in which a job goes. */
export const DRAFT_PAGES = {
  start: '/office',
  define: '/office/define',
  plan: '/office/plan',
  simulate: '/office/simulate',
  compare: '/office/compare',
  issue: '/office/issue',
} as const;

/** The pages of a job of the yard: its tools, what goes on, who works on it, and how it is handed over. */
export const JOB_PAGES = {
  tools: '/office/tools',
  watch: '/office/watch',
  people: '/office/people',
  papers: '/office/papers',
  handover: '/office/handover',
  settings: '/office/settings',
} as const;

export type JobPageName = keyof typeof JOB_PAGES;
export type OfficePageName = keyof typeof DRAFT_PAGES | JobPageName;
type Role = (typeof ROLES)[number];

/** Whose pages they are. What the server answers to whom is decided there; here nobody is led to a page that would stay empty. */
const FOR: { readonly [P in JobPageName]: readonly Role[] } = {
  tools: ['planner', 'store', 'inspector'],
  watch: ['planner', 'crew', 'inspector', 'store', 'client'],
  people: ['planner'],
  papers: ['planner', 'inspector', 'store'],
  handover: ['planner', 'inspector', 'client'],
  settings: ['planner', 'crew', 'inspector', 'store', 'client'],
};
/** Who drafts: a plan is made in the browser and needs nobody’s leave, but those who only look on are not shown it. */
const DRAFTING: readonly Role[] = ['planner', 'store', 'inspector', 'crew'];

/** `roles`: of whoever is signed in; undefined where nobody is. */
export const isFor = (page: JobPageName, roles: readonly Role[] | undefined): boolean =>
  roles === undefined || roles.some((role) => FOR[page].includes(role));
export const drafts = (roles: readonly Role[] | undefined): boolean => roles === undefined || roles.some((role) => DRAFTING.includes(role));
