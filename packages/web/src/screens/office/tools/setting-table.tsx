import { gearOf, gears, type Notice, type Setting, type SettingChart, settingText } from '@clampwright/core';
import { useOffice } from '../../../language/office-speech.tsx';
import { useTrade } from '../../../language/speech.tsx';
import { Check } from '../../../ui/page.tsx';
import own from './tools.module.css';

interface TableProps {
  readonly chart: SettingChart;
  readonly label: string;
  /** faults of the chart; the settings that they name are marked */
  readonly notices?: readonly Notice[];
  /** rows that were read back against the paper, and what ticks one */
  readonly read?: ReadonlySet<string>;
  readonly onRead?: (row: string, read: boolean) => void;
}

/** Every setting with its torque: gears down and steps across where there are two labels, else one below the other. */
export function SettingTable({ chart, label, notices = [], read, onRead }: TableProps) {
  const say = useOffice();
  const { figure } = useTrade();
  const named = new Set(notices.flatMap(({ params }) => Object.values(params).filter((one) => typeof one === 'string')));
  const faulty = (one: Setting) => named.has(settingText(chart, one.labels));
  const torque = (one: Setting) => figure(one.torque / 1000, one.torque < 20_000 ? 1 : 0);
  const rows = gears(chart);
  const across = chart.scales.length > 1;
  const steps = across ? [...new Set(rows.flat().map(({ labels }) => labels.at(-1)!))].sort((a, b) => Number(a) - Number(b)) : [];
  const unit = [chart.scales.at(-1)?.name, chart.scales.at(-1)?.unit].filter(Boolean).join(' ');
  const cell = (one: Setting | undefined, key: string) => (
    <td key={key} data-fault={one && faulty(one) ? '' : undefined}>
      {one ? torque(one) : ''}
      {one?.looseningOnly ? <small>{say('store.loosening')}</small> : null}
    </td>
  );
  const tick = (row: string, name: string) =>
    onRead ? (
      <td>
        <Check label={say('store.read-row', { row: name })} checked={read?.has(row) ?? false} onChange={(on) => onRead(row, on)} />
      </td>
    ) : null;
  return (
    <div className={own.scroll}>
      <table className={own.table} aria-label={label}>
        <thead>
          <tr>
            <th scope="col">{across ? `${chart.scales[0]!.name} \\ ${unit}` : unit}</th>
            {across ? (
              steps.map((step) => (
                <th key={step} scope="col">
                  {step}
                </th>
              ))
            ) : (
              <th scope="col">N·m</th>
            )}
            {onRead ? <th scope="col">{say('store.read-back')}</th> : null}
          </tr>
        </thead>
        <tbody>
          {across
            ? rows.map((gear) => {
                const name = gearOf(gear[0]!);
                return (
                  <tr key={name}>
                    <th scope="row">{name}</th>
                    {steps.map((step) =>
                      cell(
                        gear.find(({ labels }) => labels.at(-1) === step),
                        step,
                      ),
                    )}
                    {tick(name, `${chart.scales[0]!.name} ${name}`)}
                  </tr>
                );
              })
            : rows.flat().map((one) => (
                <tr key={one.labels.join(' ')}>
                  <th scope="row">{one.labels.join(' ')}</th>
                  {cell(one, 'torque')}
                  {tick(one.labels.join(' '), settingText(chart, one.labels))}
                </tr>
              ))}
        </tbody>
      </table>
    </div>
  );
}

/** The rows of that table, by which it is read back. */
export const rowsToRead = (chart: SettingChart): string[] =>
  chart.scales.length > 1
    ? gears(chart).map((gear) => gearOf(gear[0]!))
    : gears(chart)
        .flat()
        .map(({ labels }) => labels.join(' '));
