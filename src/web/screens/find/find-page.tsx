/** Not written yet. */
export function FindPage() {
  return <main id="main" className="page find" />;
}
