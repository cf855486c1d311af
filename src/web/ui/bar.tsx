import { FIND_PAGE } from '#say/en/find-page.ts';
import { Tag } from './tag.tsx';

/** The bar of jobs. Find is the one job that has its page yet. */
export function Bar() {
  return (
    <>
      <a className="skip" href="#main">
        {FIND_PAGE.skip}
      </a>
      <header className="bar">
        <a className="home" href="/">
          <span aria-hidden="true">
            <Tag number="b" at={0.17} />
          </span>
          Bagatelle
        </a>
        <nav className="jobs" aria-label={FIND_PAGE.jobs}>
          <ul>
            <li>
              <a href="/" aria-current="page">
                {FIND_PAGE.find}
              </a>
            </li>
          </ul>
        </nav>
      </header>
    </>
  );
}
