import { CHARGE_CONFIDENCE, nextChargeBound } from '@clampwright/core';
import type { BatteryDraft } from '@clampwright/record';
import type { Book } from '../../../job/book.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import { useTrade } from '../../../language/speech.tsx';
import { Section, Soft } from '../../../ui/page.tsx';
import own from './tools.module.css';

interface StoreBattery extends Pick<BatteryDraft, 'battery' | 'name' | 'chargeMilliampereHour' | 'charges' | 'tightened' | 'inTool'> {}

/** Batteries of the yard and of jobs: what they hold, and how many bolts each charge really did. */
export function Batteries({ yard, jobs }: { readonly yard: Book; readonly jobs: readonly Book[] }) {
  const say = useOffice();
  const { figure } = useTrade();
  const all = batteriesOf([yard, ...jobs]);
  return (
    <Section title={say('store.batteries')}>
      {all.length === 0 ? <Soft>{say('store.batteries-none')}</Soft> : <Soft>{say('store.batteries-text')}</Soft>}
      {all.length === 0 ? null : (
        <div className={own.scroll}>
          <table className={own.table}>
            <thead>
              <tr>
                <th scope="col">{say('store.col-battery')}</th>
                <th scope="col">{say('store.col-rated')}</th>
                <th scope="col">{say('store.col-bolts')}</th>
                <th scope="col">{say('store.col-charges')}</th>
                <th scope="col">{say('store.col-next')}</th>
              </tr>
            </thead>
            <tbody>
              {all.map(({ battery, name, charges, tightened, inTool }) => {
                const counts = charges.map(({ bolts }) => bolts);
                const least = nextChargeBound(counts, CHARGE_CONFIDENCE);
                return (
                  <tr key={battery}>
                    <th scope="row">
                      {battery}
                      {inTool === undefined ? null : <small>{say('store.in-tool', { tool: inTool })}</small>}
                    </th>
                    <td>{name}</td>
                    <td>{figure(tightened, 0)}</td>
                    <td>
                      <Charges counts={counts} label={say('store.charges-of', { battery, counts: counts.join(', ') || '–' })} />
                    </td>
                    <td>{least.ok ? say('store.next-charge', { bolts: Math.floor(least.value) }) : say('store.charges-few')}</td>
                  </tr>
                );
              })}
            </tbody>
          </table>
        </div>
      )}
    </Section>
  );
}

function batteriesOf(books: readonly Book[]): StoreBattery[] {
  const ids = [...new Set(books.flatMap(({ fold }) => fold.ids('battery')))].sort();
  return ids.map((battery) => {
    const told = books.filter(({ fold }) => fold.ids('battery').includes(battery)).map(({ fold }) => fold.state('battery', battery));
    const [name, inTool] = [told.find((one) => one.name)?.name, told.find((one) => one.inTool)?.inTool];
    return {
      battery,
      charges: told.flatMap(({ charges }) => charges).sort((a, b) => a.mention.at.localeCompare(b.mention.at)),
      tightened: told.reduce((sum, one) => sum + one.tightened, 0),
      ...(name === undefined ? {} : { name }),
      ...(inTool === undefined ? {} : { inTool }),
    };
  });
}

const BAR = 9;
const TALL = 34;

/** Bolts of each charge, the oldest first: a battery that ages is seen at once. */
function Charges({ counts, label }: { readonly counts: readonly number[]; readonly label: string }) {
  const shown = counts.slice(-24);
  const most = Math.max(...shown, 1);
  if (shown.length === 0) return <>–</>;
  return (
    <svg
      viewBox={`0 0 ${shown.length * BAR} ${TALL}`}
      width={shown.length * BAR}
      height={TALL}
      role="img"
      aria-label={label}
      className={own.bars}
    >
      {shown.map((count, at) => {
        const height = (count / most) * (TALL - 2);
        // biome-ignore lint/suspicious/noArrayIndexKey: charges stay where they are
        return <rect key={at} x={at * BAR} y={TALL - height} width={BAR - 2} height={height} />;
      })}
    </svg>
  );
}
