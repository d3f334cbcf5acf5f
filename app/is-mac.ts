/** Keys are written ⌘ there and Ctrl elsewhere. */
export const IS_MAC = /Mac|iPhone|iPad/.test(navigator.userAgent);
