import { describe, expect, it } from 'vitest';
import { handMadeField, handMadeNames, handMadePlay } from '../hand-made.fixture.ts';
import type { Clip } from './clip.ts';
import { clipHtml } from './clip-html.ts';
import { clipOfScript } from './clip-of-script.ts';
import { clipStyle } from './clip-style.ts';
import { handMadeScript } from './hand-made-script.fixture.ts';

const scheme = clipOfScript(handMadeScript(), handMadePlay, handMadeNames, 'One of many.');
const clip: Clip = {
  play: 'Far <b>corner</b>',
  team: '</script><img src=x>',
  spots: handMadeNames.offense,
  men: handMadeNames.offense.map((_, index) => `number ${index + 10}`),
  follow: 1,
  schemes: [scheme, { ...scheme, name: 'Jump & go' }],
};
const parts = { field: handMadeField, script: 'go()', hashOf: async (text: string) => `hash-of-${text.length}` };

describe('the page of a clip', async () => {
  const page = await clipHtml(clip, parts);

  it('holds the clip as it was given', () => {
    const json = /<script type="application\/json" id="clip">(.*)<\/script>/.exec(page)?.[1];
    expect(JSON.parse(json ?? '')).toEqual(clip);
  });

  it('takes no name for a tag', () => {
    expect(page).not.toContain('<b>');
    expect(page).not.toContain('<img');
    expect(page.match(/<\/script>/g)).toHaveLength(2);
    expect(page).toContain('<h1>Far &lt;b&gt;corner&lt;/b&gt;</h1>');
  });

  it('lets in its own script and style by their hashes, and nothing else', async () => {
    expect(page).toContain(`default-src 'none'; script-src 'sha256-hash-of-${'go()'.length}'`);
    expect(page).toContain(`style-src 'sha256-hash-of-${clipStyle().length}'`);
    expect(page).toContain(`<style>${clipStyle()}</style>`);
    // What the clip itself says is no part of how the page is made.
    const made = await clipHtml({ ...clip, team: 'Harriers' }, parts);
    expect(made).not.toMatch(/\b(src|href)=|url\(|@import|\sstyle=|\son\w+=/);
  });

  it('offers every scheme and every view, the wanted one chosen', () => {
    expect(page).toContain(
      '<option value="0" selected>Box and one, zone</option><option value="1">Jump &amp; go</option>',
    );
    expect(page).toContain('<option value="-1">Whole unit</option>');
    expect(page).toContain('<option value="1" selected>TR, number 11</option>');
    expect(page).toContain('Left and right are the offense&#39;s, looking in.');
  });

  it('is light or dark as the device is', () => {
    const [light = '', dark = ''] = clipStyle().split('@media (prefers-color-scheme:dark)');
    const fillOf = (style: string): string | undefined => /\.turf\{fill:(#\w+)/.exec(style)?.[1];
    expect(fillOf(light)).toBeDefined();
    expect(fillOf(dark)).toBeDefined();
    expect(fillOf(light)).not.toBe(fillOf(dark));
  });

  it('is refused without a scheme, and with a script that would end its own element', async () => {
    await expect(clipHtml({ ...clip, schemes: [] }, parts)).rejects.toThrow(RangeError);
    await expect(clipHtml(clip, { ...parts, script: 'x = "</script>"' })).rejects.toThrow(RangeError);
  });
});
