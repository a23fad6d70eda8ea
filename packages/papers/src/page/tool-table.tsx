import type { Plan } from '@clampwright/core';
import { label, remedy, says } from '@clampwright/words';
import { DataTable } from './data-table.tsx';

/** The job's tools: certificate, due date, and what speaks against each. */
export function ToolTable({ plan }: { readonly plan: Plan }) {
  const { units } = plan.job;
  return (
    <section>
      <h2>{label('tools.title')}</h2>
      <DataTable
        label={label('tools.title')}
        rows={plan.tools}
        keyOf={({ serial }) => serial}
        columns={[
          {
            head: label('col.tool'),
            cell: ({ serial, name }) => (
              <>
                {serial}
                <span className="title">{name}</span>
              </>
            ),
          },
          { head: label('col.certificate'), cell: ({ certificate }) => <span className="whole">{certificate}</span> },
          { head: label('col.due'), cell: ({ due }) => <span className="whole">{due}</span> },
          {
            head: label('col.notes'),
            cell: ({ notices }) =>
              notices.length === 0
                ? label('tools.fine')
                : notices.map((one) => (
                    <span key={JSON.stringify(one)} className="note">
                      {says(one, units)} {remedy(one, units)}
                    </span>
                  )),
          },
        ]}
      />
    </section>
  );
}
