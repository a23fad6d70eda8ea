import { useState } from 'react';
import { useOffice } from '../../../language/office-speech.tsx';
import { Button, Field, Row } from '../../../ui/page.tsx';
import { CHART_SHAPES, type ChartShape, emptyChart } from './chart-shapes.ts';

interface EmptyChartProps {
  readonly label: string;
  readonly onBegin: (chart: ReturnType<typeof emptyChart>) => void;
}

/** Begins a chart that is typed: in which shape, and how large. */
export function EmptyChart({ label, onBegin }: EmptyChartProps) {
  const say = useOffice();
  const [shape, setShape] = useState<ChartShape>('gear-step');
  const [gears, setGears] = useState('3');
  const [steps, setSteps] = useState('12');
  return (
    <Row>
      <Field label={say('define.chart-shape')}>
        <select value={shape} onChange={(event) => setShape(event.target.value as ChartShape)}>
          {CHART_SHAPES.map((one) => (
            <option key={one} value={one}>
              {say(`define.shape-${one}`)}
            </option>
          ))}
        </select>
      </Field>
      {shape === 'gear-step' ? (
        <>
          <Field label={say('define.gears')}>
            <input value={gears} inputMode="numeric" onChange={(event) => setGears(event.target.value)} />
          </Field>
          <Field label={say('define.steps')}>
            <input value={steps} inputMode="numeric" onChange={(event) => setSteps(event.target.value)} />
          </Field>
        </>
      ) : null}
      <Button onClick={() => onBegin(emptyChart(shape, Number(gears), Number(steps)))}>{label}</Button>
    </Row>
  );
}
