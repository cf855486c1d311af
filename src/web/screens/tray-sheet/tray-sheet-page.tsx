/** Not written yet. */
export function TraySheetPage() {
  return <main id="main" className="page" />;
}
