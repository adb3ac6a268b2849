export const threads = 'of Node';
