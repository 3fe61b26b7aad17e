import { useEffect, useRef } from 'preact/hooks';

/** Calls back with a file that is dropped anywhere on the page. */
export function useDroppedFile(onFile: (file: File) => void): void {
  const latest = useRef(onFile);
  latest.current = onFile;
  useEffect(() => {
    const over = (event: DragEvent): void => event.preventDefault();
    const drop = (event: DragEvent): void => {
      event.preventDefault();
      const file = event.dataTransfer?.files[0];
      if (file) latest.current(file);
    };
    document.addEventListener('dragover', over);
    document.addEventListener('drop', drop);
    return () => {
      document.removeEventListener('dragover', over);
      document.removeEventListener('drop', drop);
    };
  }, []);
}
