export interface Family {
  /** "core/parts" */
  readonly folder: string;
  /** Paths to the loaded modules, the index included. */
  readonly files: ReadonlyMap<string, Record<string, unknown>>;
  /** The name of a member of the family; anything but a string for other things. */
  nameOf(thing: Record<string, unknown>): unknown;
}

/** What is wrong with a folder of members and its index.ts, one sentence each, with the change to make. */
export function registryTrouble({ folder, files, nameOf }: Family): string[] {
  const front = `${folder}/index.ts`;
  const listed = Object.values(files.get(front) ?? {}).flatMap((thing): unknown[] =>
    Array.isArray(thing) ? thing : [],
  );
  return [...files]
    .filter(([path]) => path !== front)
    .flatMap(([path, module]) => {
      const members = Object.entries(module).flatMap(([exported, thing]) => {
        const name = typeof thing === "object" && thing !== null ? nameOf(thing as Record<string, unknown>) : undefined;
        return typeof name === "string" ? [{ exported, thing, name }] : [];
      });
      if (members.length > 1) return [`${path} holds ${members.length} members: give each a file of its own`];
      return members.flatMap(({ exported, thing, name }) => {
        const file = path.slice(folder.length + 1);
        if (file !== `${name}.ts`) return [`${path} holds "${name}": rename the file to ${folder}/${name}.ts`];
        if (listed.includes(thing)) return [];
        const line = `import { ${exported} } from "./${file}"`;
        return [`${path} is not registered: add "${name}" to the list in ${front}, with ${line}`];
      });
    });
}
