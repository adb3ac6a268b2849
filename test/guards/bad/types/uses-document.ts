export const title = document.title;
