import { useEffect, useRef, useState } from 'react';

/**
 * The whole page takes a file; without it, a browser would leave the page for a file that misses its zone. True while a file
 * is held over the page.
 */
export function usePageDrop(onFile: (file: File) => void): boolean {
  const [over, setOver] = useState(false);
  const latest = useRef(onFile);
  useEffect(() => {
    latest.current = onFile;
  });
  useEffect(() => {
    const hold = (event: DragEvent): void => {
      if (!event.dataTransfer?.types.includes('Files')) return;
      event.preventDefault();
      setOver(true);
    };
    const leave = (event: DragEvent): void => {
      if (event.relatedTarget === null) setOver(false);
    };
    const drop = (event: DragEvent): void => {
      setOver(false);
      const file = event.dataTransfer?.files[0];
      if (event.defaultPrevented || !file) return;
      event.preventDefault();
      latest.current(file);
    };
    addEventListener('dragover', hold);
    addEventListener('dragleave', leave);
    addEventListener('drop', drop);
    return () => {
      removeEventListener('dragover', hold);
      removeEventListener('dragleave', leave);
      removeEventListener('drop', drop);
    };
  }, []);
  return over;
}
