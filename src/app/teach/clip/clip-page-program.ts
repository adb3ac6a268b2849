/** Stands for the text of `src/clip/main.ts` as it is built: scripts/vite/page-programs.ts puts it in. */
declare const CLIP_PAGE_PROGRAM: string;

/** The program of a clip's page. 10 kB: only what is loaded when a page is made holds it. */
export const clipPageProgram: string = CLIP_PAGE_PROGRAM;
