import { expect, it } from 'vitest';
import { pageFileName } from './page-file-name.ts';

it.each([
  ['Lantern', 'Lantern: play sheet', 'pdf', 'lantern-play-sheet.pdf'],
  ['Łódź / 2', 'Łódź / 2: play sheet', 'png', 'łodz-2-play-sheet.png'],
  ['Copper Falls', 'Against Copper Falls', 'svg', 'copper-falls.svg'],
  ['***', '***', 'pdf', 'pages.pdf'],
])('a file about %s is called %4$s', (about, title, ending, name) => {
  expect(pageFileName(about, title, ending)).toBe(name);
});
