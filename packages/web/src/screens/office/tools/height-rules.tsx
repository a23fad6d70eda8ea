import own from './tools.module.css';

interface HeightRulesProps {
  readonly ticks: readonly number[];
  readonly y: (value: number) => number;
  readonly from: number;
  readonly to: number;
  readonly says: (value: number) => string;
  /** the one that is drawn as an axis */
  readonly axis?: number;
}

/** Rules across a plot with their figures at the left. */
export const HeightRules = ({ ticks, y, from, to, says, axis }: HeightRulesProps) =>
  ticks.map((tick) => (
    <g key={tick}>
      <line x1={from} x2={to} y1={y(tick)} y2={y(tick)} className={tick === axis ? own.axis : own.rule} />
      <text x={from - 8} y={y(tick) + 4} textAnchor="end">
        {says(tick)}
      </text>
    </g>
  ));
