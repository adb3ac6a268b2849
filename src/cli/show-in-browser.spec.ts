import { expect, it } from 'vitest';
import { openerFor } from './show-in-browser.ts';

it.each([
  ['darwin', {}, ['open']],
  ['win32', {}, ['cmd', '/c', 'start', '']],
  ['linux', { DISPLAY: ':0' }, ['xdg-open']],
  ['linux', { WAYLAND_DISPLAY: 'wayland-0' }, ['xdg-open']],
  ['linux', {}, undefined],
  ['linux', { DISPLAY: '' }, undefined],
] as const)('on %s with %j a browser is opened by %j', (platform, environment, expected) => {
  expect(openerFor(platform, environment)).toEqual(expected);
});
