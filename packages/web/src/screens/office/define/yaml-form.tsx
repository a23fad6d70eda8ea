import type { OfficeKey } from '@clampwright/words/office';
import { useEffect, useId, useRef, useState } from 'react';
import { useOffice } from '../../../language/office-speech.tsx';
import { useNotice } from '../../../language/speech.tsx';
import { useWords } from '../../../language/words.ts';
import { Check } from '../../../ui/page.tsx';
import { Choices } from '../shell/choices.tsx';
import own from './define.module.css';
import { type Path, useYaml } from './use-yaml.ts';

/** One thing a YAML file may say. */
export interface YamlField {
  readonly path: Path;
  readonly label: OfficeKey;
  readonly hint?: OfficeKey;
  readonly kind?: 'text' | 'date' | 'yes' | 'list';
  /** what it may be, with a name where the value is none to read; free text beside it unless `only` */
  readonly choices?: readonly (string | readonly [string, string])[];
  readonly only?: boolean;
  /** how a choice is read; by its word where nothing is said */
  readonly named?: (choice: string) => OfficeKey;
}

/** After so long without a further letter what is typed is taken: the plan follows while one types. */
const TYPED_MS = 500;

/** Fields of a YAML file, each with what is said of it. */
export function YamlForm({
  file,
  base = [],
  fields,
}: {
  readonly file: string;
  readonly base?: Path;
  readonly fields: readonly YamlField[];
}) {
  return (
    <div className={own.form}>
      {fields.map((field) => (
        <YamlFieldInput key={field.path.join('/')} file={file} base={base} field={field} />
      ))}
    </div>
  );
}

function YamlFieldInput({ file, base, field }: { readonly file: string; readonly base: Path; readonly field: YamlField }) {
  const say = useOffice();
  const { says, remedy } = useNotice();
  const { term } = useWords();
  const yaml = useYaml(file);
  const path = [...base, ...field.path];
  const value = yaml.at(path);
  const text = Array.isArray(value) ? value.join('; ') : value === undefined || value === null ? '' : String(value);
  const set = (to: string) => {
    if (to === text) return;
    const list =
      field.kind === 'list'
        ? to
            .split(/[;,]/)
            .map((one) => one.trim())
            .filter(Boolean)
        : undefined;
    yaml.change([to === '' ? { kind: 'remove', path } : { kind: 'set', path, value: list ?? to }]);
  };
  const said = yaml.saidOf(path);
  const id = useId();
  if (field.kind === 'yes')
    return (
      <Check
        label={say(field.label)}
        checked={text === 'true'}
        onChange={(checked) => yaml.change([{ kind: 'set', path, value: checked }])}
      />
    );
  const control = { id, 'aria-describedby': `${id}-said`, 'aria-invalid': said.length > 0 } as const;
  return (
    <div className={own.field} data-said={said.length > 0 ? '' : undefined}>
      <label htmlFor={id}>{say(field.label)}</label>
      {field.only ? (
        <select {...control} value={text} onChange={(event) => set(event.target.value)}>
          {text === '' || !field.choices!.some((one) => choiceValue(one) === text) ? <option value={text}>{text || '–'}</option> : null}
          {text !== '' ? <option value="">–</option> : null}
          {field.choices!.map((one) => (
            <option key={choiceValue(one)} value={choiceValue(one)}>
              {typeof one !== 'string' ? term(one[1]) : field.named ? say(field.named(one)) : term(one)}
            </option>
          ))}
        </select>
      ) : (
        <TypedInput
          control={control}
          text={text}
          type={field.kind === 'date' ? 'date' : 'text'}
          choices={field.choices?.map(choiceValue)}
          onType={set}
        />
      )}
      <div id={`${id}-said`}>
        {field.hint === undefined ? null : <small>{say(field.hint)}</small>}
        {said.map((one) => (
          <em key={one.code}>
            {says(one)} {remedy(one)}
          </em>
        ))}
      </div>
    </div>
  );
}

const choiceValue = (choice: string | readonly [string, string]): string => (typeof choice === 'string' ? choice : choice[0]);

interface TypedProps {
  readonly control: Readonly<Record<string, string | boolean>>;
  readonly text: string;
  readonly type: 'text' | 'date';
  readonly choices: readonly string[] | undefined;
  readonly onType: (text: string) => void;
}

/** A field that is taken while one types, a moment after the last letter. */
function TypedInput({ control, text, type, choices, onType }: TypedProps) {
  const list = useId();
  const [typed, setTyped] = useState(text);
  const waiting = useRef<ReturnType<typeof setTimeout>>(undefined);
  const pending = useRef(false);
  useEffect(() => {
    if (!pending.current) setTyped(text);
  }, [text]);
  const take = (to: string) => {
    clearTimeout(waiting.current);
    pending.current = false;
    onType(to.trim());
  };
  return (
    <>
      <input
        {...control}
        type={type}
        value={typed}
        list={choices ? list : undefined}
        onChange={(event) => {
          const to = event.target.value;
          setTyped(to);
          pending.current = true;
          clearTimeout(waiting.current);
          waiting.current = setTimeout(() => take(to), TYPED_MS);
        }}
        onBlur={() => {
          if (pending.current) take(typed);
        }}
      />
      <Choices id={list} choices={choices} />
    </>
  );
}
