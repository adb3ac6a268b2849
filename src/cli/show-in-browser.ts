import { spawn } from 'node:child_process';

/**
 * Opens an address in the system's browser and does not wait for it. Where there is none, nothing happens: the address is printed anyway.
 */
export function showInBrowser(address: string): void {
  const opener = openerFor(process.platform, process.env);
  if (opener === undefined) return;
  const [command, ...args] = opener;
  const child = spawn(command, [...args, address], { stdio: 'ignore', detached: true, windowsHide: true });
  child.on('error', () => undefined);
  child.unref();
}

/** The system's command that opens an address, undefined where no browser can show itself. */
export function openerFor(
  platform: NodeJS.Platform,
  environment: Readonly<Record<string, string | undefined>>,
): readonly [string, ...string[]] | undefined {
  if (platform === 'darwin') return ['open'];
  // `start` takes its first quoted word for a window's title.
  if (platform === 'win32') return ['cmd', '/c', 'start', ''];
  // Without a display xdg-open looks for a browser in text, which would take the terminal away.
  const display = environment.DISPLAY || environment.WAYLAND_DISPLAY;
  return display ? ['xdg-open'] : undefined;
}
