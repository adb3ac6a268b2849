const maths = Math;
export const roll = maths.random();
