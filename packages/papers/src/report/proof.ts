import { drawQr } from '../pdf/draw-qr.ts';
import { type Flow, facts, heading, paragraph, said, table } from '../typeset/index.ts';
import type { Names } from './names.ts';
import type { ReportSource } from './source.ts';

const CODE = 46;

/** What holds the report to the log, in figures and in words. */
export function proofPage(flow: Flow, source: ReportSource, devices: ReadonlyMap<string, number>, names: Names): void {
  flow.turn();
  flow.section(flow.languages[0].label('report.proof'), 1);
  heading(flow, said('report.proof'), 1);
  paragraph(flow, said('report.proof-lead', { size: source.size }));
  facts(flow, [
    [said('report.proof.size'), String(source.size)],
    [said('report.proof.job'), source.job],
  ]);
  heading(flow, said('report.proof.root'), 3, { keep: 8 });
  paragraph(flow, source.root, { face: 'mono', size: 8.5 });
  heading(flow, said('report.proof.key'), 3, { keep: 8 });
  paragraph(flow, source.logKey, { face: 'mono', size: 7.5 });
  heading(flow, said('report.proof.checkpoint'), 3, { keep: 8 });
  paragraph(flow, source.checkpoint.trimEnd(), { face: 'mono', size: 7 });
  flow.need(CODE + 8);
  drawQr(flow.canvas, source.checkpoint, { x: flow.left - 2, y: flow.y() }, CODE);
  flow.move(CODE + 1);
  paragraph(flow, said('report.proof.code'), { size: 8, ink: 'quiet' });
  for (const part of ['shows', 'not', 'how'] as const) {
    heading(flow, said(`report.proof.${part}`), 3, { keep: 10 });
    paragraph(flow, said(`report.proof.${part}-text`));
  }
  heading(flow, said('report.devices'), 2);
  table(
    flow,
    [
      { head: said('report.col.name'), width: 3, cell: ({ device }) => names.device(device) },
      { head: said('report.col.device'), width: 4, cell: ({ device }) => ({ text: device, face: 'mono' }) },
      { head: said('report.col.entries'), width: 1.6, align: 'right', cell: ({ entries }) => String(entries) },
      { head: said('report.col.signed'), width: 2, align: 'right', cell: ({ signed }) => (signed === undefined ? '–' : String(signed)) },
      {
        head: said('report.col.unsigned'),
        width: 1.8,
        align: 'right',
        cell: ({ last, signed }) => {
          const unsigned = last - (signed ?? -1);
          return { text: String(unsigned), ink: unsigned > 0 ? 'stop' : 'ink' };
        },
      },
    ],
    [...devices].map(([device, last]) => ({ device, last, entries: last + 1, signed: source.signedUpTo.get(device) })),
    { size: 7.5 },
  );
}
