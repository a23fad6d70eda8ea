import { RULE_SETS } from '@clampwright/core';
import { Link } from 'wouter';
import { desk } from '../../../draft/desk.ts';
import { useWatched } from '../../../job/store.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import { Section } from '../../../ui/page.tsx';
import { NoDraft } from '../shell/no-draft.tsx';
import { OfficeShell } from '../shell/office-shell.tsx';
import own from './define.module.css';
import { BATTERIES, CHARGER, CONDITIONS, JOB, LOTS, PEOPLE } from './fields.ts';
import { FilesPart } from './files-part.tsx';
import { JointsPart } from './joints-part.tsx';
import { MembersPart } from './members-part.tsx';
import { ToolsPart } from './tools-part.tsx';
import { YamlForm } from './yaml-form.tsx';
import { YamlTable } from './yaml-table.tsx';

const PARTS = ['joints', 'job', 'people', 'lots', 'tools', 'batteries', 'members', 'files'] as const;
export type DefinePart = (typeof PARTS)[number];

/** Everything a job is made of, a part at a time. */
export function DefinePage({ part = 'joints', which }: { readonly part: string | undefined; readonly which: string | undefined }) {
  const say = useOffice();
  const here = useWatched(desk);
  if (!here) return <NoDraft title={say('office.page-define')} />;
  return (
    <OfficeShell title={say('office.page-define')} wide={part === 'joints' || part === 'lots'}>
      <nav className={own.tabs} aria-label={say('define.parts')}>
        {PARTS.map((one) => (
          <Link
            key={one}
            href={one === 'joints' ? '/office/define' : `/office/define/${one}`}
            aria-current={one === part ? 'page' : undefined}
          >
            {say(`define.part-${one}`)}
          </Link>
        ))}
      </nav>
      <Part part={part} which={which} />
    </OfficeShell>
  );
}

function Part({ part, which }: { readonly part: string; readonly which: string | undefined }) {
  const say = useOffice();
  const row = which === undefined || !/^\d+$/.test(which) ? undefined : Number(which);
  switch (part as DefinePart) {
    case 'job':
      return (
        <>
          <YamlForm
            file="job.yaml"
            fields={[...JOB, { path: ['rule-set'], label: 'define.rule-set', hint: 'define.rule-set-hint', only: true, choices: RULES }]}
          />
          <Section title={say('define.conditions')}>
            <YamlForm file="job.yaml" fields={CONDITIONS} />
          </Section>
        </>
      );
    case 'people':
      return <YamlTable label={say('define.part-people')} file="job.yaml" path={PEOPLE.path} columns={PEOPLE.columns} goToRow={row} />;
    case 'lots':
      return <YamlTable label={say('define.part-lots')} file="job.yaml" path={LOTS.path} columns={LOTS.columns} goToRow={row} />;
    case 'tools':
      return <ToolsPart serial={which} />;
    case 'batteries':
      return (
        <>
          <YamlTable
            label={say('define.part-batteries')}
            file="tools.yaml"
            path={BATTERIES.path}
            columns={BATTERIES.columns}
            goToRow={row}
          />
          <Section title={say('define.charger')}>
            <YamlForm file="tools.yaml" fields={CHARGER} />
          </Section>
        </>
      );
    case 'members':
      return <MembersPart />;
    case 'files':
      return <FilesPart which={which} />;
    default:
      return <JointsPart which={which} />;
  }
}

const RULES = Object.entries(RULE_SETS).map(([id, { title }]) => [id, title] as const);
