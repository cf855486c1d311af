import { Tag } from './tag.tsx';

/** The bar of jobs. Find is the one job that has its page yet. */
export function Bar() {
  return (
    <>
      <a className="skip" href="#main">
        Skip to the work
      </a>
      <header className="bar">
        <a className="home" href="/">
          <span aria-hidden="true">
            <Tag number="b" at={0.17} />
          </span>
          Bagatelle
        </a>
        <nav className="jobs" aria-label="Jobs">
          <ul>
            <li>
              <a href="/" aria-current="page">
                Find
              </a>
            </li>
          </ul>
        </nav>
      </header>
    </>
  );
}
