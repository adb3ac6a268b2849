import type { Playbook } from '../../../playbook/index.ts';
import type { Quiz } from '../../../render/index.ts';
import { quizPage } from '../../../teach/index.ts';
import { quizPageProgram } from './quiz-page-program.ts';

/** A quiz as the page that goes to phones: the same bytes as the command line writes. */
export async function quizPageFile(playbook: Playbook, quiz: Quiz): Promise<Blob> {
  const html = await quizPage(playbook, quiz, { script: quizPageProgram, hashOf });
  return new Blob([html], { type: 'text/html' });
}

async function hashOf(text: string): Promise<string> {
  const hash = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text));
  return btoa(String.fromCharCode(...new Uint8Array(hash)));
}
