import { type CivilDate, daysBetween } from '../date.ts';
import { type Notice, notice } from '../notice/index.ts';

/** How a lot stands on the day of the work. */
export interface LotOnTheDay {
  readonly lot: string;
  readonly tested: CivilDate;
  readonly workDate: CivilDate;
  /** days after which the owner wants a new test */
  readonly validDays?: number;
  /** °C in the test, and of the bolts now */
  readonly testTemperature?: number;
  readonly boltTemperature?: number;
  readonly wetSinceTest: boolean;
  readonly relubricated: boolean;
}

/** Friction follows temperature and age; limits are the owner's. Common practice, no source. */
const USUAL = { days: 183, degrees: 20 } as const;

/** Whether a test still speaks for the lot: wet, lubricated again, old or far colder or warmer means a new test. */
export function lotNotices({
  lot,
  tested,
  workDate,
  validDays = USUAL.days,
  testTemperature,
  boltTemperature,
  wetSinceTest,
  relubricated,
}: LotOnTheDay): Notice[] {
  const age = daysBetween(tested, workDate);
  const apart = testTemperature === undefined || boltTemperature === undefined ? 0 : Math.abs(testTemperature - boltTemperature);
  return [
    ...(age < 0 ? [notice('lot-test-future', { lot, tested })] : []),
    ...(age > validDays ? [notice('lot-test-old', { lot, days: age, allowed: validDays })] : []),
    ...(apart > USUAL.degrees ? [notice('lot-test-temperature', { lot, apart: Math.round(apart), usual: USUAL.degrees })] : []),
    ...(wetSinceTest || relubricated ? [notice('lot-retest', { lot })] : []),
  ];
}

/** What a crew does where there is no device on site: never a dead end, never a silent one. */
export const WITHOUT_DEVICE = ['test at a laboratory', 'method that needs no friction', 'recorded concession of the engineer'] as const;
