import { useEffect, useState } from "react";
import { useApp, useEditor } from "./app-context.tsx";
import type { Consultations, Topic } from "./worker/consultations.ts";

/**
 * The worker's answer about the drawing and situation as they are now; asked again when either changes. `undefined` while it is on
 * its way, without a question, or when there is no answer. `key` tells questions apart.
 */
export function useConsultation<T extends Topic>(
  topic: T,
  key: string,
  asks: Consultations[T]["asks"] | null,
): Consultations[T]["gives"] | undefined {
  const { consult } = useApp();
  const positions = useEditor((state) => state.positions);
  const report = useEditor((state) => (state.analysis === "done" ? state.report : null));
  const [heard, setHeard] = useState<{ key: string; answer: Consultations[T]["gives"] | undefined }>();
  useEffect(() => {
    let isWanted = report !== null && asks !== null;
    if (isWanted) void consult(topic, asks!, positions).then((answer) => isWanted && setHeard({ key, answer }));
    return () => {
      isWanted = false;
    };
    // The question is what `key` says; an object made anew for each rendering must not ask again.
    // eslint-disable-next-line react/exhaustive-deps
  }, [consult, topic, key, positions, report]);
  return asks !== null && heard?.key === key ? heard.answer : undefined;
}
