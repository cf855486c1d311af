/** Not written yet. */
export function ReceivePage() {
  return <main id="main" className="page" />;
}
