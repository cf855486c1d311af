/** Not written yet. */
export function KitsPage() {
  return <main id="main" className="page" />;
}
