import { useEffect, useRef, type ReactNode } from 'react';
import './dialogs.css';

interface SheetDialogProps {
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
  readonly isWide?: boolean;
}

/**
 * A dialog of the browser's own: it keeps the focus, and Escape closes it. The focus begins at what is
 * marked `data-first`, else at the first control.
 */
export const SheetDialog = ({ title, onClose, children, isWide = false }: SheetDialogProps) => {
  const ref = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    ref.current?.showModal();
    ref.current?.querySelector<HTMLElement>('[data-first]')?.focus();
  }, []);
  return (
    <dialog
      ref={ref}
      className={`dialog ${isWide ? 'dialog-wide' : ''}`}
      aria-labelledby="dialog-title"
      onClose={onClose}
    >
      <form method="dialog" className="dialog-head">
        <h2 id="dialog-title">{title}</h2>
        <button type="submit" className="button">
          Close
        </button>
      </form>
      {children}
    </dialog>
  );
};
