export const roll = Math.random();
