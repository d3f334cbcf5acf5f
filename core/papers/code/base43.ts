/**
 * Bytes as text of 43 characters that a scanned code packs tightly (its alphanumeric set, ISO/IEC 18004) and that may stand in the
 * fragment of a web address as they are (RFC 3986): that set without the space and the percent sign. Two bytes are three
 * characters, an odd last byte two; 43³ is over 2^16, so 5.5 bits a character carry 5.33.
 */
const CHARACTERS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ$*+-./:";
const BASE = CHARACTERS.length;

export function toBase43(bytes: Uint8Array): string {
  const pieces: string[] = [];
  for (let at = 0; at < bytes.length; at += 2) {
    const isPair = at + 1 < bytes.length;
    let value = isPair ? bytes[at]! * 256 + bytes[at + 1]! : bytes[at]!;
    for (let digit = 0; digit < (isPair ? 3 : 2); digit++) {
      pieces.push(CHARACTERS[value % BASE]!);
      value = Math.floor(value / BASE);
    }
  }
  return pieces.join("");
}

/** The bytes again; `null` for text that `toBase43` never wrote. */
export function fromBase43(text: string): Uint8Array | null {
  if (text.length % 3 === 1) return null;
  const bytes: number[] = [];
  for (let at = 0; at < text.length; at += 3) {
    const group = text.slice(at, at + 3);
    let value = 0;
    for (let digit = group.length - 1; digit >= 0; digit--) {
      const worth = CHARACTERS.indexOf(group[digit]!);
      if (worth < 0) return null;
      value = value * BASE + worth;
    }
    if (value > (group.length === 3 ? 0xffff : 0xff)) return null;
    if (group.length === 3) bytes.push(value >> 8, value & 0xff);
    else bytes.push(value);
  }
  return Uint8Array.from(bytes);
}
