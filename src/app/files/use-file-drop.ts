import { useEffect, useState } from 'react';

/** Takes a file that is dropped anywhere on the page. Whether one is held over it now. */
export function useFileDrop(onFile: (file: File) => void): boolean {
  const [isOver, setOver] = useState(false);
  useEffect(() => {
    const onOver = (event: DragEvent): void => {
      if (!holdsFile(event)) return;
      // Otherwise the browser would leave the workbench and show the file.
      event.preventDefault();
      setOver(true);
    };
    const onLeave = (event: DragEvent): void => {
      if (event.relatedTarget === null) setOver(false);
    };
    const onDrop = (event: DragEvent): void => {
      if (!holdsFile(event)) return;
      event.preventDefault();
      setOver(false);
      const file = event.dataTransfer?.files[0];
      if (file !== undefined) onFile(file);
    };
    window.addEventListener('dragover', onOver);
    window.addEventListener('dragleave', onLeave);
    window.addEventListener('drop', onDrop);
    return () => {
      window.removeEventListener('dragover', onOver);
      window.removeEventListener('dragleave', onLeave);
      window.removeEventListener('drop', onDrop);
    };
  }, [onFile]);
  return isOver;
}

function holdsFile({ dataTransfer }: DragEvent): boolean {
  return dataTransfer?.types.includes('Files') ?? false;
}
