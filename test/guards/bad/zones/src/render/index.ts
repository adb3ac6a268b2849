export const scene = 1;
