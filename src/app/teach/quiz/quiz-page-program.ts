/** Stands for the text of `src/clip/quiz-main.ts` as it is built: scripts/vite/page-programs.ts puts it in. */
declare const QUIZ_PAGE_PROGRAM: string;

/** The program of a quiz's page. 21 kB: only what is loaded when a page is saved holds it. */
export const quizPageProgram: string = QUIZ_PAGE_PROGRAM;
