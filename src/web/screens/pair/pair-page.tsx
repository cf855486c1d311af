/** Not written yet. */
export function PairPage() {
  return <main id="main" className="page" />;
}
