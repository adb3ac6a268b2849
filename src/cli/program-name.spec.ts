import { describe, expect, it } from 'vitest';
import { asTyped, programName } from './program-name.ts';

describe('programName', () => {
  // [what the starter says, the script's path, where the person is, what to type]
  it.each([
    ['npm start --', '/app/dist/sliderule.js', '/app', 'npm start --'],
    [undefined, '/app/dist/sliderule.js', '/app', 'node dist/sliderule.js'],
    [undefined, '/app/dist/sliderule.js', '/home/coach', 'node /app/dist/sliderule.js'],
    [undefined, '/my apps/dist/sliderule.js', '/home/coach', "node '/my apps/dist/sliderule.js'"],
    [undefined, '/usr/local/bin/sliderule', '/home/coach', 'sliderule'],
    ['', '/usr/local/bin/sliderule', '/home/coach', 'sliderule'],
  ])('%j, %s from %s: %s', (said, script, folder, typed) => {
    expect(programName(said, script, folder)).toBe(typed);
  });
});

describe('asTyped', () => {
  it.each([
    ['sliderule check a.json', 'npm start -- check a.json'],
    ['sliderule demo a && sliderule test a/playbook.json', 'npm start -- demo a && npm start -- test a/playbook.json'],
    ['sliderule test a.json --json > b.json', 'npm start --silent -- test a.json --json > b.json'],
    ['sliderule test sliderule.json', 'npm start -- test sliderule.json'],
  ])('%s', (line, typed) => {
    expect(asTyped(line, 'npm start --')).toBe(typed);
    expect(asTyped(line, 'sliderule')).toBe(line);
  });
});
