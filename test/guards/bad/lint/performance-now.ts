export const now = performance.now();
