export const folder = process.cwd();
