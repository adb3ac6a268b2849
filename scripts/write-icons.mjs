// Draws the icon's pictures, for systems that take no SVG, from the one that is drawn by hand: npm run icons
import { readFileSync, writeFileSync } from 'node:fs';
import { ensureInstalled, root } from './ensure-installed.mjs';

ensureInstalled();
const { Resvg } = await import('@resvg/resvg-js');

const folder = `${root}/src/app/public`;
const icon = readFileSync(`${folder}/icon.svg`, 'utf8');
// A system that cuts the icon to its own shape needs the ground up to the edge, and the mark in the middle four fifths.
const square = icon.replace(/ rx="\d+"/, '');
const maskable = square
  .replace('viewBox="0 0 64 64"', 'viewBox="-8 -8 80 80"')
  .replace('<rect width="64" height="64"', '<rect x="-8" y="-8" width="80" height="80"');

write('icon-192.png', icon, 192);
write('icon-512.png', icon, 512);
write('icon-180-square.png', square, 180);
write('icon-512-maskable.png', maskable, 512);

function write(name, svg, size) {
  writeFileSync(`${folder}/${name}`, new Resvg(svg, { fitTo: { mode: 'width', value: size } }).render().asPng());
  console.log(`src/app/public/${name}`);
}
