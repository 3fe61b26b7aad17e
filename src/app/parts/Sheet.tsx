import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { KeyCap } from './KeyCap.tsx';

interface SheetProps {
  readonly title: string;
  /** A long sheet to read, with its way back at the top. */
  readonly wide?: boolean;
  readonly onClose: () => void;
  readonly children: ComponentChildren;
}

/** A dialog over the page. It keeps the focus, closes with Escape and gives the focus back. */
export function Sheet({ title, wide, onClose, children }: SheetProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const element = dialog.current!;
    const before = document.activeElement as HTMLElement | null;
    element.showModal();
    return () => {
      element.close();
      before?.focus({ preventScroll: true });
    };
  }, []);
  const cancel = (event: Event): void => {
    event.preventDefault();
    onClose();
  };
  return (
    <dialog ref={dialog} class={wide ? 'sheet sheet-wide' : 'sheet'} aria-labelledby="sheet-title" onCancel={cancel}>
      <header class="sheet-head">
        <h2 id="sheet-title">{title}</h2>
        {wide && (
          <button autofocus onClick={onClose}>
            Back <KeyCap>Esc</KeyCap>
          </button>
        )}
      </header>
      {children}
    </dialog>
  );
}
