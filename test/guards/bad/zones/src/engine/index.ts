export const yard = 1;
