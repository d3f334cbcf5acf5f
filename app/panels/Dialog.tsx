import { useEffect, useRef, type ReactNode } from "react";
import { useApp } from "../app-context.tsx";

interface Props {
  readonly title: string;
  readonly className?: string;
  readonly children: ReactNode;
}

/** A native dialog over the page. Escape, the cross or a press beside it closes; focus goes back where it was. */
export function Dialog({ title, className = "", children }: Props) {
  const { editor } = useApp();
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const shown = dialog.current!;
    shown.showModal();
    (shown.querySelector<HTMLElement>("[data-first-focus]") ?? shown).focus();
    return () => shown.close();
  }, []);
  const close = () => editor.show(null);
  return (
    <dialog
      ref={dialog}
      className={`dialog ${className}`}
      aria-label={title}
      tabIndex={-1}
      closedby="any"
      onClose={() => dialog.current?.open === false && close()}
    >
      <div className="dialog-inner">
        <header className="dialog-head">
          <h2 className="sleeve">{title}</h2>
          <button type="button" className="close" aria-label="Close" onClick={close}>
            <span aria-hidden="true">×</span>
          </button>
        </header>
        <div className="dialog-body">{children}</div>
      </div>
    </dialog>
  );
}
