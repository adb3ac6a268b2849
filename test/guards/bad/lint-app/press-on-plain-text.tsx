export function Press({ act }: { readonly act: () => void }) {
  return <div onClick={act}>press here</div>;
}
