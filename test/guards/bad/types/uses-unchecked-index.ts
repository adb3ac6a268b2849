export const first = (values: readonly number[]): number => values[0];
