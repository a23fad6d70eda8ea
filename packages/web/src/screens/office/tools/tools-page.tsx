import { useState } from 'react';
import { Link } from 'wouter';
import { openDatabase } from '../../../device/database.ts';
import { enrol } from '../../../device/enrol.ts';
import type { Book } from '../../../job/book.ts';
import { useWatched, watched } from '../../../job/store.ts';
import { type StoreTool, storeTools } from '../../../job/store-tools.ts';
import { today } from '../../../job/today.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import { Banner, Button, LinkButton, Row, Section, Soft } from '../../../ui/page.tsx';
import { useWorld, useYard } from '../../../ui/world-context.ts';
import { FaultLine } from '../job/fault-line.tsx';
import { Gate } from '../job/gate.tsx';
import { type Fault, faultOf, server } from '../job/session.ts';
import { Batteries } from './batteries.tsx';
import { DueDays } from './due-days.tsx';
import { HireTool } from './hire-tool.tsx';
import { Lots } from './lots.tsx';
import { RegisterFolder } from './register-folder.tsx';
import { ToolView } from './tool-view.tsx';
import own from './tools.module.css';
import { YardPeople } from './yard-people.tsx';

interface ToolsProps {
  /** a tool, or `hire`: a tool that is new here */
  readonly serial: string | undefined;
  readonly onEnrolled: () => void;
}

/** The tool store: every tool by its serial number, what falls due, batteries, lots. It writes into the book of the yard. */
export function ToolsPage({ serial, onEnrolled }: ToolsProps) {
  const say = useOffice();
  const world = useWorld();
  const yard = useYard();
  const books = useWatched(world?.books ?? NONE);
  const tools = storeTools(yard, books);
  const tool = tools.find((one) => one.serial === serial);
  return (
    <Gate page="tools" wide has={yard ? 'device' : 'session'}>
      {yard ? (
        <div className={own.store}>
          <nav aria-label={say('store.tools')}>
            <LinkButton href="/office/tools/hire" kind={serial === 'hire' ? 'act' : 'plain'}>
              {say('store.hire')}
            </LinkButton>
            <SerialList tools={tools} at={serial} />
          </nav>
          <div>
            {serial === 'hire' ? <HireTool yard={yard} /> : null}
            {tool ? <ToolView key={tool.serial} tool={tool} yard={yard} /> : null}
            {serial !== undefined && serial !== 'hire' && !tool ? (
              <Banner level="mind">{say('store.no-such-tool', { serial })}</Banner>
            ) : null}
            {serial === undefined ? (
              <>
                <DueDays tools={tools} />
                <Batteries yard={yard} jobs={books} />
                <Lots yard={yard} jobs={books} />
                <RegisterFolder yard={yard} />
                <YardPeople yard={yard} jobs={books} />
              </>
            ) : null}
          </div>
        </div>
      ) : (
        <TakeStore onEnrolled={onEnrolled} />
      )}
    </Gate>
  );
}
const NONE = watched<readonly Book[]>([]);

function SerialList({ tools, at }: { readonly tools: readonly StoreTool[]; readonly at: string | undefined }) {
  const say = useOffice();
  const now = today();
  if (tools.length === 0) return <Soft>{say('store.none')}</Soft>;
  return (
    <ul className={own.serials}>
      {tools.map(({ serial, name, due, tool }) => (
        <li key={serial}>
          <Link href={`/office/tools/${encodeURIComponent(serial)}`} aria-current={serial === at ? 'page' : undefined}>
            <strong>{serial}</strong>
            <small>{name}</small>
            <small data-level={tool.withdrawn || tool.typed || (due !== undefined && due < now) ? 'stop' : undefined}>
              {tool.withdrawn
                ? say('store.is-withdrawn')
                : tool.typed
                  ? say('store.is-typed')
                  : due === undefined
                    ? say('store.no-due')
                    : say(due < now ? 'store.is-overdue' : 'store.is-due', { due })}
            </small>
          </Link>
        </li>
      ))}
    </ul>
  );
}

/** This browser keeps the book of the yard from here on, and writes into it like any device. */
function TakeStore({ onEnrolled }: { readonly onEnrolled: () => void }) {
  const say = useOffice();
  const [fault, setFault] = useState<Fault>();
  const take = async () => {
    const opened = await server('openEnrolment', { body: { name: say('store.title'), books: [] } });
    if (opened.kind !== 'answered') return setFault(faultOf(opened));
    const enrolled = await enrol(await openDatabase('work'), opened.value.code);
    if (!enrolled.ok) return setFault(enrolled.notices);
    return onEnrolled();
  };
  return (
    <Section title={say('store.title')}>
      <Soft>{say('store.take-text')}</Soft>
      <FaultLine fault={fault} />
      <Row>
        <Button kind="act" onClick={() => void take()}>
          {say('store.take')}
        </Button>
      </Row>
    </Section>
  );
}
