export function Picture() {
  return <img src="field.svg" />;
}
