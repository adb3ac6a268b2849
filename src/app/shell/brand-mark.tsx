import type { ReactNode } from 'react';

/** The workbench's own mark: the crease's arc as a scale, and the cursor that slides on it. */
export function BrandMark({ size = 26 }: { readonly size?: number }): ReactNode {
  return (
    <svg width={size} height={size} viewBox="0 0 26 26" aria-hidden="true" fill="none" stroke="currentColor">
      <path d="M2.5 20a10.5 10.5 0 0 1 21 0" strokeWidth="2" />
      <path d="M5 13.2l1.9 1.2M8.9 9.5l1.1 2M13 8v3M21 13.2l-1.9 1.2" strokeWidth="1.6" />
      <path d="M19.4 5.2L14.6 15" strokeWidth="2.4" strokeLinecap="round" />
      <path d="M2 20h22" strokeWidth="2" />
    </svg>
  );
}
