/** Not written yet. */
export function DraftPage() {
  return <main id="main" className="page" />;
}
