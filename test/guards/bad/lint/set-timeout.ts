export const later = (run: () => void): unknown => setTimeout(run, 1);
