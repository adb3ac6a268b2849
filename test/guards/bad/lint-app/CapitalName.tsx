export function Fine() {
  return <p>fine</p>;
}
