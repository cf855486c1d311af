/** Not written yet. */
export function BeginPage() {
  return <main id="main" className="page" />;
}
