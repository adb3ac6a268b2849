const { random } = Math;
export const roll = random();
