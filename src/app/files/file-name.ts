/** Letters of the team's name that go into a file's: a whole name must fit on every device. */
const longestTeam = 60;

/** A day as the device counts it. */
export type LocalDay = Pick<Date, 'getFullYear' | 'getMonth' | 'getDate'>;

/** The name of a playbook's file: `tamarack-harriers-2026-11-25.json`, the day being that of the device; says so when it holds no names. */
export function playbookFileName(team: string, at: LocalDay, options: { readonly names: boolean }): string {
  return `${slug(team)}-${dayOf(at)}${options.names ? '' : '-numbers-only'}.json`;
}

/** The name of a file with what was found damaged on this device. */
export function damagedFileName(at: LocalDay, count: number): string {
  return `damaged-playbook-${dayOf(at)}-${count}.json`;
}

// Every device knows letters and digits of any script; what else a name may hold differs.
function slug(team: string): string {
  const plain = team.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();
  const words = plain.replace(/[^\p{L}\p{N}]+/gu, '-').slice(0, longestTeam);
  return words.replace(/^-+|-+$/g, '') || 'playbook';
}

function dayOf(at: LocalDay): string {
  return [at.getFullYear(), twoDigits(at.getMonth() + 1), twoDigits(at.getDate())].join('-');
}

function twoDigits(value: number): string {
  return String(value).padStart(2, '0');
}
