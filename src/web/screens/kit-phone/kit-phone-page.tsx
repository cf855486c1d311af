/** Not written yet. */
export function KitPhonePage() {
  return <main id="main" className="page" />;
}
