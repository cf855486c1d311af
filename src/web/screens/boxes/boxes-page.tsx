/** Not written yet. */
export function BoxesPage() {
  return <main id="main" className="page" />;
}
