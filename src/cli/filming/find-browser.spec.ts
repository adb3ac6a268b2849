import { describe, expect, it } from 'vitest';
import { findBrowser, type Machine } from './find-browser.ts';

function machine(platform: NodeJS.Platform, environment: Machine['environment'], programs: readonly string[]): Machine {
  return { platform, environment, isExecutable: (path) => programs.includes(path) };
}

const found = (...of: Parameters<typeof machine>): string | undefined => findBrowser(machine(...of))?.executable;

describe('the browser that films', () => {
  it('is the one that is named, and no other when that one is not there', () => {
    const path = { PATH: '/usr/bin', CHROMIUM_PATH: '/opt/mine' };
    expect(found('linux', path, ['/opt/mine', '/usr/bin/chromium'])).toBe('/opt/mine');
    expect(found('linux', path, ['/usr/bin/chromium'])).toBeUndefined();
    expect(found('linux', { ...path, CHROMIUM_PATH: '' }, ['/usr/bin/chromium'])).toBe('/usr/bin/chromium');
  });

  it.each([
    ['linux', { PATH: '/usr/local/bin:/usr/bin' }, '/usr/bin/google-chrome'],
    ['linux', { PATH: '/usr/bin' }, '/usr/bin/microsoft-edge'],
    ['linux', {}, '/snap/bin/chromium'],
    ['darwin', { PATH: '/usr/bin' }, '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome'],
    ['darwin', { HOME: '/Users/coach' }, '/Users/coach/Applications/Chromium.app/Contents/MacOS/Chromium'],
    ['win32', { ProgramFiles: 'C:/Program Files' }, 'C:/Program Files/Google/Chrome/Application/chrome.exe'],
    [
      'win32',
      { 'ProgramFiles(x86)': 'C:/Program Files (x86)' },
      'C:/Program Files (x86)/Microsoft/Edge/Application/msedge.exe',
    ],
    [
      'win32',
      { LOCALAPPDATA: 'C:/Users/coach/AppData/Local' },
      'C:/Users/coach/AppData/Local/Google/Chrome/Application/chrome.exe',
    ],
  ] as const)('is found on %s with %o', (platform, environment, program) => {
    expect(found(platform, environment, [program])).toBe(program);
  });

  it('is none where there is none', () => {
    for (const platform of ['linux', 'darwin', 'win32'] as const)
      expect(found(platform, { PATH: '/usr/bin' }, [])).toBeUndefined();
  });

  it('is one of the search path before one in a usual place', () => {
    const programs = ['/usr/bin/chromium-browser', '/snap/bin/chromium'];
    expect(found('linux', { PATH: '/usr/bin' }, programs)).toBe('/usr/bin/chromium-browser');
  });
});
