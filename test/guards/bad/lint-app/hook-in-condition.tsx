import { useState } from 'react';

export function Counter({ shown }: { readonly shown: boolean }) {
  if (!shown) return null;
  const [count] = useState(0);
  return <p>{count}</p>;
}
