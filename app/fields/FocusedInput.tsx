import { useEffect, useRef, type ComponentProps } from "react";

/** An input that takes the focus when it appears, as the answer to the press that made it appear. */
export function FocusedInput(props: ComponentProps<"input">) {
  const input = useRef<HTMLInputElement>(null);
  useEffect(() => input.current?.focus(), []);
  return <input ref={input} data-first-focus {...props} />;
}
