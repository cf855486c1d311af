/** Not written yet. */
export function BoardsPage() {
  return <main id="main" className="page" />;
}
