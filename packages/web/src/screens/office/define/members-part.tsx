import type { YamlChange } from '@clampwright/papers/edit';
import { useOffice } from '../../../language/office-speech.tsx';
import { Button, Section, Soft } from '../../../ui/page.tsx';
import { Pick } from '../shell/pick.tsx';
import { MEMBERS, MEMBERS_HEAD, type MemberKind } from './fields.ts';
import { type Path, useYaml } from './use-yaml.ts';
import { YamlForm } from './yaml-form.tsx';

/** What joints clamp, where it is known: then the plan says how their bolts act on each other. */
export function MembersPart() {
  const say = useOffice();
  const yaml = useYaml('members.yaml');
  const list = (yaml.at(['members']) as readonly Readonly<Record<string, unknown>>[] | undefined) ?? [];
  return (
    <>
      <Soft>{say('define.members-text')}</Soft>
      {list.map((entry, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: entries have no other name
        <Entry key={at} at={at} entry={entry ?? {}} />
      ))}
      <Button
        onClick={() =>
          yaml.change([{ kind: 'insert', path: ['members'], at: list.length, value: { joints: [''], gasket: { kind: 'fibre sheet' } } }])
        }
      >
        {say('define.add-members')}
      </Button>
    </>
  );
}

const kindOf = (entry: Readonly<Record<string, unknown>>): MemberKind =>
  (['ring', 'plates', 'matrix'] as const).find((kind) => entry[kind] !== undefined) ?? 'gasket';

function Entry({ at, entry }: { readonly at: number; readonly entry: Readonly<Record<string, unknown>> }) {
  const say = useOffice();
  const yaml = useYaml('members.yaml');
  const base: Path = ['members', at];
  const kind = kindOf(entry);
  const turnTo = (to: MemberKind) => {
    const gone = (Object.keys(MEMBERS) as MemberKind[]).filter((one) => entry[one] !== undefined && one !== to);
    const fresh =
      to === 'matrix'
        ? 'matrix.csv'
        : to === 'gasket'
          ? { kind: 'fibre sheet' }
          : to === 'ring'
            ? { 'wall-side': 'outside' }
            : { support: 'mirrored' };
    yaml.change([
      ...(entry[to] === undefined ? [{ kind: 'set', path: [...base, to], value: fresh } satisfies YamlChange] : []),
      ...gone.map((one): YamlChange => ({ kind: 'remove', path: [...base, one] })),
    ]);
  };
  return (
    <Section title={Array.isArray(entry.joints) ? entry.joints.join(', ') : say('define.for-joints')}>
      <Pick
        key={kind}
        label={say('define.clamped')}
        choices={(Object.keys(MEMBERS) as MemberKind[]).map((one) => [one, say(`define.clamped-${one}`)])}
        value={kind}
        does={say('pick.apply')}
        onPicked={(to) => turnTo(to as MemberKind)}
      />
      <YamlForm file="members.yaml" base={base} fields={[...MEMBERS_HEAD, ...MEMBERS[kind], ...(kind === 'ring' ? MEMBERS.gasket : [])]} />
      <Button kind="quiet" onClick={() => yaml.change([{ kind: 'remove', path: base }])}>
        {say('define.remove-members')}
      </Button>
    </Section>
  );
}
