import { expect, test } from 'vitest';
import { demoPlaybook, demoText } from './demo.ts';

// The file is the demo that the command line writes out, so it is kept in the layout that it is written in.
// When it was edited by hand: npx vitest run src/playbook/demo.spec.ts -u
test('the demo file is written as a playbook is written', async () => {
  await expect(demoText).toMatchFileSnapshot('demo/playbook.json');
  expect(demoPlaybook.format).toBe('sliderule-playbook');
});
