/** A canvas context that draws nothing and writes down what it was asked to do. */
export interface Recording {
  readonly context: CanvasRenderingContext2D;
  /** Names of the calls, in order. */
  readonly calls: string[];
  /** Texts set by `fillText`. */
  readonly texts: string[];
  clear(): void;
}

const IDENTITY = { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 };

export function recordingContext(): Recording {
  const calls: string[] = [];
  const texts: string[] = [];
  let transform = IDENTITY;
  const stack: (typeof IDENTITY)[] = [];
  const special: Record<string, (...args: never[]) => unknown> = {
    save: () => stack.push(transform),
    restore: () => (transform = stack.pop() ?? IDENTITY),
    getTransform: () => transform,
    setTransform: (...[a, b, c, d, e, f]: [number | typeof IDENTITY, number, number, number, number, number]) => {
      transform = typeof a === "number" ? { a, b, c, d, e, f } : a;
    },
    fillText: (text: string) => texts.push(text),
  };
  const properties: Record<string, unknown> = {};
  const context = new Proxy(properties, {
    get(target, name: string) {
      if (name in target) return target[name];
      return (...args: never[]) => {
        calls.push(name);
        return special[name]?.(...args);
      };
    },
  });
  return {
    context: context as unknown as CanvasRenderingContext2D,
    calls,
    texts,
    clear() {
      calls.length = 0;
      texts.length = 0;
    },
  };
}
