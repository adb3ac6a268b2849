export const threads = 'of a page';
