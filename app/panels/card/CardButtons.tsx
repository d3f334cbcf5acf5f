import { useApp, useEditor } from "../../app-context.tsx";
import { whyNot } from "../../commands/command.ts";
import { findCommand } from "../../commands/index.ts";

/** Commands as a row of buttons; one that can't be done is greyed and says why. */
export function CardButtons({ commands }: { readonly commands: readonly string[] }) {
  return (
    <div className="row-buttons">
      {commands.map((id) => (
        <CommandButton key={id} id={id} />
      ))}
    </div>
  );
}

function CommandButton({ id }: { readonly id: string }) {
  const { runner } = useApp();
  const command = useEditor((state) => findCommand(state, id));
  const reason = useEditor((state) => (command ? whyNot(command, state) : "It is not there any more"));
  if (command === undefined) return null;
  return (
    <button
      type="button"
      data-command={id}
      aria-disabled={reason !== null}
      title={reason ?? undefined}
      onClick={() => runner.run(id)}
    >
      {command.short ?? command.title}
    </button>
  );
}
