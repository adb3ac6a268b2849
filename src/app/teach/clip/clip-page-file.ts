import type { Playbook } from '../../../playbook/index.ts';
import type { Clip } from '../../../render/index.ts';
import { clipPage } from '../../../teach/index.ts';
import { clipPageProgram } from './clip-page-program.ts';

/** A clip as the page that goes to phones: the same bytes as the command line writes. */
export async function clipPageFile(playbook: Playbook, clip: Clip): Promise<Blob> {
  const html = await clipPage(playbook, clip, { script: clipPageProgram, hashOf });
  return new Blob([html], { type: 'text/html' });
}

async function hashOf(text: string): Promise<string> {
  const hash = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text));
  return btoa(String.fromCharCode(...new Uint8Array(hash)));
}
