/** An element of the page by its id. */
export function part<Kind extends HTMLElement = HTMLElement>(id: string): Kind {
  return document.getElementById(id) as Kind;
}

/** A new element of class `look` that holds texts and elements. */
export function element<Name extends keyof HTMLElementTagNameMap>(
  name: Name,
  look: string,
  ...content: readonly (string | Node)[]
): HTMLElementTagNameMap[Name] {
  const made = document.createElement(name);
  if (look !== '') made.className = look;
  made.append(...content);
  return made;
}

/** A button that does something. */
export function button(look: string, action: () => void, ...content: readonly (string | Node)[]): HTMLButtonElement {
  const made = element('button', look, ...content);
  made.type = 'button';
  made.addEventListener('click', action);
  return made;
}

/** Shows one part of the page and begins at its top; `heading` gets the focus, so that it is read next. */
export function showOnly(shown: string, all: readonly string[], heading: string): void {
  for (const id of all) part(id).hidden = id !== shown;
  scrollTo(0, 0);
  part(heading).focus({ preventScroll: true });
}
