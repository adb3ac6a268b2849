export const now = globalThis.Date.now();
