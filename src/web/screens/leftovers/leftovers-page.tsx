/** Not written yet. */
export function LeftoversPage() {
  return <main id="main" className="page" />;
}
