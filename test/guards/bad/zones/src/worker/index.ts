export const pool = 1;
