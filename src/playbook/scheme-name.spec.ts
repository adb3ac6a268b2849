import { expect, it } from 'vitest';
import { demoPlaybook } from './demo.ts';
import { schemeName } from './scheme-name.ts';

it("is the coach's own word for a scheme first, then ours, then what was written", () => {
  const [own] = demoPlaybook.schemes ?? [];
  expect(schemeName({}, 'box-zone')).not.toBe('box-zone');
  expect(schemeName({}, 'nobody-knows')).toBe('nobody-knows');
  if (own !== undefined) expect(schemeName(demoPlaybook, own.id)).toBe(own.name);
  expect(schemeName({ schemes: [{ id: 'box-zone', name: 'Ours', men: {}, rows: [] } as never] }, 'box-zone')).toBe(
    'Ours',
  );
});
