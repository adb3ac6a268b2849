const svgNamespace = 'http://www.w3.org/2000/svg';

/** A new shape of class `look` with its attributes. */
export function svgElement<Name extends keyof SVGElementTagNameMap>(
  name: Name,
  look: string,
  attributes: Readonly<Record<string, string | number>> = {},
): SVGElementTagNameMap[Name] {
  const element = document.createElementNS(svgNamespace, name);
  element.setAttribute('class', look);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, String(value));
  return element;
}
