/** Not written yet. */
export function KitPage() {
  return <main id="main" className="page" />;
}
