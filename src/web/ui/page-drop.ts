import { useEffect, useRef } from 'react';

/** The whole page takes a file; without it, a browser would leave the page for a file that misses its zone. */
export function usePageDrop(onFile: (file: File) => void): void {
  const latest = useRef(onFile);
  useEffect(() => {
    latest.current = onFile;
  });
  useEffect(() => {
    const over = (event: DragEvent): void => {
      if (event.dataTransfer?.types.includes('Files')) event.preventDefault();
    };
    const drop = (event: DragEvent): void => {
      if (event.defaultPrevented) return;
      const file = event.dataTransfer?.files[0];
      if (!file) return;
      event.preventDefault();
      latest.current(file);
    };
    addEventListener('dragover', over);
    addEventListener('drop', drop);
    return () => {
      removeEventListener('dragover', over);
      removeEventListener('drop', drop);
    };
  }, []);
}
