/** Not written yet. */
export function KeysPage() {
  return <main id="main" className="page" />;
}
