import { Link, useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import type { BuildView } from '#api/kits.ts';
import { KITS_PAGE, sayBack, sayKits, sayLeft, sayMadeOf, sayPicked, sayShortPieces } from '#say/en/kits-page.ts';
import { sayDay } from '#say/en/when.ts';
import { useKits } from '../../lab/answers.ts';
import { Answer } from '../../ui/answer.tsx';
import { Fit } from '../../ui/fit.tsx';
import { useKeys } from '../../ui/keys.ts';
import { useNow } from '../../ui/now.ts';
import { Rail } from '../../ui/rail.tsx';
import { TroubleNote } from '../../ui/trouble-note.tsx';
import { hasLeftovers, kitBeside, kitGroups, kitToCarryOn, STATE_FIT } from './kits.ts';
import './kits.css';

/** The kits: those that are open, those that are soldered, those that were given up. */
export function KitsPage() {
  const { value, waiting, trouble } = useKits();
  const builds = value?.builds ?? [];
  const groups = kitGroups(builds);
  const on = kitToCarryOn(builds);
  const open = groups.find(({ group }) => group === 'open')?.builds ?? [];
  return (
    <main id="main" className="page kits">
      {waiting ? (
        <Answer title={KITS_PAGE.reading} />
      ) : (
        <Answer title={sayKits(open, builds.length - open.length)} why={open.length === 0 ? KITS_PAGE.noneWhy : null}>
          {on && (
            <Link to="/kits/$build" params={{ build: on.id }} className="btn main">
              {KITS_PAGE.carryOn(on.name)}
            </Link>
          )}
          <Link to="/boards" className={on ? 'btn' : 'btn main'}>
            {KITS_PAGE.plan}
          </Link>
        </Answer>
      )}
      <TroubleNote trouble={trouble} />
      {groups.length > 0 && <KitTable groups={groups} />}
    </main>
  );
}

function KitTable({ groups }: { readonly groups: ReturnType<typeof kitGroups> }) {
  const navigate = useNavigate();
  const now = useNow();
  const [id, setId] = useState<string | null>(null);
  const all = groups.flatMap(({ builds }) => builds);
  const chosen = kitBeside(all, id, 0);
  const go = (by: 1 | -1): void => {
    const next = kitBeside(all, id, by);
    if (!next) return;
    setId(next.id);
    document.getElementById(`kit-${next.id}`)?.focus();
  };
  useKeys({
    ArrowDown: () => go(1),
    ArrowUp: () => go(-1),
    Enter: () => chosen && void navigate({ to: '/kits/$build', params: { build: chosen.id } }),
  });
  const { columns } = KITS_PAGE;
  return (
    <div className="col">
      <table className="ledger fold">
        <caption className="vh">{KITS_PAGE.page}</caption>
        <thead>
          <tr>
            <th scope="col">{columns.kit}</th>
            <th scope="col">{columns.board}</th>
            <th scope="col">{columns.state}</th>
            <th scope="col">{columns.since}</th>
            <th scope="col">{columns.know}</th>
            <th scope="col" className="n">
              {columns.cells}
            </th>
          </tr>
        </thead>
        {groups.map(({ group, builds }) => (
          <tbody key={group}>
            <tr>
              <th scope="rowgroup" colSpan={6}>
                {KITS_PAGE.groups[group]} <small>{KITS_PAGE.groupWhy[group]}</small>
              </th>
            </tr>
            {builds.map((build) => (
              <KitRow key={build.id} build={build} on={build.id === chosen?.id} now={now} />
            ))}
          </tbody>
        ))}
      </table>
      <p className="keys">
        <span>
          <kbd>↑</kbd> <kbd>↓</kbd> {KITS_PAGE.keys.row}
        </span>
        <span>
          <kbd>Enter</kbd> {KITS_PAGE.keys.open}
        </span>
      </p>
    </div>
  );
}

function KitRow({ build, on, now }: { readonly build: BuildView; readonly on: boolean; readonly now: Date }) {
  const closed = build.state === 'cancelled';
  const picked = build.takes - build.open;
  const going = build.state === 'picking' || build.state === 'reserved';
  return (
    <tr className={[on && 'on', closed && 'off'].filter(Boolean).join(' ') || undefined}>
      <td className="main named" data-as="main">
        <Link to="/kits/$build" params={{ build: build.id }} id={`kit-${build.id}`}>
          <bdi>{build.name}</bdi>
        </Link>
      </td>
      <td className="named" data-as="sub">
        {build.board !== build.name && build.board} <span className="two">{sayMadeOf(build.made, build.boards)}</span>
      </td>
      <td data-as="sub">
        <Fit fit={STATE_FIT[build.state]}>{KITS_PAGE.states[build.state]}</Fit>
      </td>
      <td className="two" data-as="sub">
        {sayDay(build.reserved, now)}
      </td>
      <td className="two" data-as="sub">
        <Known build={build} />
      </td>
      <td className="n main" data-as="n">
        {going && <Rail done={picked} all={build.takes} says={sayPicked(picked, build.takes)} />}
        {!closed && sayPicked(picked, build.takes)}
      </td>
    </tr>
  );
}

/** What is to know of a kit: what it lacks, what it waits for, by when it is wanted. */
function Known({ build }: { readonly build: BuildView }) {
  const said = [
    build.state === 'planned' ? KITS_PAGE.planKeeps : '',
    build.state === 'cancelled' || build.state === 'built' ? '' : sayShortPieces(build.short),
    build.due === null || build.state === 'built' || build.state === 'cancelled' ? '' : KITS_PAGE.due(build.due),
  ].filter(Boolean);
  if (hasLeftovers(build))
    return (
      <>
        {sayLeft(build.left)}:{' '}
        <Link to="/kits/$build/leftovers" params={{ build: build.id }}>
          {KITS_PAGE.leftovers}
        </Link>
      </>
    );
  if (build.state === 'built') return sayBack(build.returned);
  return said.join('; ');
}
