import { Link } from '@tanstack/react-router';
import { UI } from '#say/en/ui.ts';
import { Icon } from './icon.tsx';
import { HomeTag } from './tag.tsx';

export interface Job {
  readonly to: '/' | '/receive' | '/boards' | '/kits' | '/boxes' | '/stray' | '/history' | '/devices' | '/keys';
  readonly name: string;
  readonly count?: number;
  /** on a phone it stands under More */
  readonly far?: boolean;
}

interface BarProps {
  readonly jobs: readonly Job[];
  /** what stands under More beside the far jobs */
  readonly more: readonly Job[];
  readonly lab: string | null;
}

/** Where am I, what else can I do: the jobs on a rail; on a phone at the foot. */
export function Bar({ jobs, more, lab }: BarProps) {
  return (
    <>
      <a className="skip" href="#main">
        {UI.skip}
      </a>
      <header className="bar">
        <Link className="home" to="/">
          <HomeTag />
          Bagatelle
        </Link>
        <nav className="jobs" aria-label={UI.jobs}>
          <ul>
            {jobs.map((job) => (
              <li key={job.to} className={job.far ? 'far' : undefined}>
                <JobLink job={job} />
              </li>
            ))}
            <li className="more">
              <button type="button" popoverTarget="more">
                {UI.more}
              </button>
            </li>
          </ul>
        </nav>
        <div className="who">
          {lab && <span>{lab}</span>}
          <button type="button" className="btn quiet wide-more" popoverTarget="more">
            {UI.more}
          </button>
          <Link className="btn" to="/" search={{ focus: '1' }}>
            <Icon sign="scan" />
            {UI.findOrScan} <kbd aria-hidden="true">/</kbd>
          </Link>
        </div>
      </header>
      <nav id="more" popover="auto" aria-label={UI.moreJobs}>
        {[...jobs.filter((job) => job.far).map((job) => ({ ...job, phone: true })), ...more].map((job) => (
          <Link
            key={job.to}
            to={job.to}
            className={'phone' in job ? 'phone' : undefined}
            onClick={() => document.getElementById('more')?.hidePopover()}
          >
            {job.name}
          </Link>
        ))}
      </nav>
    </>
  );
}

function JobLink({ job }: { readonly job: Job }) {
  return (
    <Link to={job.to} activeOptions={{ exact: job.to === '/', includeSearch: false }} activeProps={{ 'aria-current': 'page' }}>
      {job.name}
      {job.count ? <i>{job.count}</i> : null}
    </Link>
  );
}
