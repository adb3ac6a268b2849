export function Names({ names }: { readonly names: readonly string[] }) {
  return names.map((name, place) => <li key={place}>{name}</li>);
}
