export const command = 1;
