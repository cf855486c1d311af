/** Not written yet. */
export function DevicesPage() {
  return <main id="main" className="page" />;
}
