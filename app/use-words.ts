import { useEditor } from "./app-context.tsx";

const GROUND = /\b(g)round(s|ed|ing)?\b/gi;

/** "Ground strip" as "Earth strip" for those who say earth; everything else stays. */
function earthWords(text: string): string {
  return text.replace(
    GROUND,
    (_word, initial: string, ending: string | undefined) => `${initial === "G" ? "E" : "e"}arth${ending ?? ""}`,
  );
}

const asItIs = (text: string) => text;

/** Puts texts of the program in the words the person chose: ground or earth. */
export function useWords(): (text: string) => string {
  return useEditor((state) => state.preferences.words) === "earth" ? earthWords : asItIs;
}
