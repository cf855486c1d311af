/** Not written yet. */
export function HistoryPage() {
  return <main id="main" className="page" />;
}
