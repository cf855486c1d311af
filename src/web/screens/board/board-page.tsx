/** Not written yet. */
export function BoardPage() {
  return <main id="main" className="page" />;
}
