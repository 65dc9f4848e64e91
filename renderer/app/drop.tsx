import { useLayoutEffect, useState } from 'react';
import { useActions } from './use-actions.ts';

const holdsFiles = ({ dataTransfer }: DragEvent): boolean =>
  dataTransfer?.types.includes('Files') ?? false;

/** Takes files that are dropped anywhere on the window, or pasted. */
export const DropAnywhere = () => {
  const { takeFiles } = useActions();
  const [isOver, setOver] = useState(false);
  useLayoutEffect(() => {
    const over = (event: DragEvent): void => {
      if (!holdsFiles(event)) return;
      event.preventDefault();
      setOver(true);
    };
    const leave = (event: DragEvent): void => {
      if (event.relatedTarget === null) setOver(false);
    };
    const drop = (event: DragEvent): void => {
      if (!holdsFiles(event)) return;
      event.preventDefault();
      setOver(false);
      takeFiles([...(event.dataTransfer?.files ?? [])]);
    };
    const paste = (event: ClipboardEvent): void => {
      const files = [...(event.clipboardData?.files ?? [])];
      if (files.length === 0) return;
      event.preventDefault();
      takeFiles(files);
    };
    window.addEventListener('dragover', over);
    window.addEventListener('dragleave', leave);
    window.addEventListener('drop', drop);
    window.addEventListener('paste', paste);
    return () => {
      window.removeEventListener('dragover', over);
      window.removeEventListener('dragleave', leave);
      window.removeEventListener('drop', drop);
      window.removeEventListener('paste', paste);
    };
  }, [takeFiles]);
  return isOver ? (
    <div className="drop-over" aria-hidden="true">
      Drop the log here, with its schedule beside it if there is one
    </div>
  ) : null;
};
