// What the browser alone can do for the page. Nothing here asks a network.
const place = 'plot-plan';

export function today() {
  const now = new Date(), two = n => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

export function save(name, text) {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 1000);
}

export function print() { window.print(); }

// A browser may be set to keep nothing, and then refuses.
export function keep(text) {
  try {
    if (text === null) localStorage.removeItem(place); else localStorage.setItem(place, text);
    return true;
  } catch (refused) {
    if (refused instanceof DOMException) return false;
    throw refused;
  }
}

export function kept() {
  try {
    return localStorage.getItem(place);
  } catch (refused) {
    if (refused instanceof DOMException) return null;
    throw refused;
  }
}

// The sheet keeps its own style and names: it lies in a tree of its own.
const onScreen = `
  @media screen {
    :host { font-size: 1.0625rem; line-height: 1.4; }
    main { max-width: none; padding: 0; }
    h1 { font-size: 1.35rem; } h2 { font-size: 1.1rem; margin-top: 1.1rem; }
    table, figcaption { font-size: 1em; line-height: 1.35; }
    #buy, .behind { columns: 1; } .behind .rows td + td { white-space: normal; }
    p, li { margin-bottom: .25rem; } td, th { padding-top: .15rem; padding-bottom: .15rem; }
  }
  @media screen and (max-width: 46rem) {
    figure { float: none; width: auto; margin: .5rem 0; } img { width: 100%; }
    table, tbody, tr, td, .remarks th, .figures th { display: block; width: auto; }
    .rows thead { position: absolute; clip-path: inset(50%); width: 1px; height: 1px; overflow: hidden; }
    .rows tbody td { border: 0; display: grid; grid-template-columns: 8.5rem 1fr; column-gap: .5rem; padding-right: 0; }
    .rows tbody td::before { content: attr(data-column); font-style: italic; }
    .rows tbody tr { border-bottom: 1px solid black; padding: .3rem 0; }
    td { overflow-wrap: anywhere; }
  }`;

export function show(id, html) {
  const host = document.getElementById(id);
  if (!host) return;
  const root = host.shadowRoot ?? host.attachShadow({ mode: 'open' });
  if (!html) { root.replaceChildren(); return; }
  const page = new DOMParser().parseFromString(html, 'text/html');
  const style = page.querySelector('style');
  style.textContent = style.textContent.replaceAll('body {', ':host {');
  for (const table of page.querySelectorAll('table.rows')) {
    const columns = [...table.querySelectorAll('thead th')].map(c => c.textContent);
    for (const row of table.tBodies[0].rows) [...row.cells].forEach((cell, i) => cell.dataset.column = columns[i]);
  }
  const more = page.createElement('style');
  more.textContent = onScreen;
  root.replaceChildren(style, more, page.querySelector('main'));
}

function focus(element) {
  for (let at = element; at; at = at.parentElement) if (at.tagName === 'DETAILS') at.open = true;
  const field = element.matches('input, select, textarea, button') ? element : element.querySelector('input, select, textarea, button');
  element.scrollIntoView({ block: 'center' });
  (field ?? element).focus({ preventScroll: true });
}

// Folded fields are made when somebody unfolds them: unfolds until the field is there, and folds again what does not hold it.
async function unfolded(id, part) {
  const folds = [...part.querySelectorAll('details.folded:not([open])')];
  for (const fold of folds) fold.open = true;
  for (let frame = 0; frame < 30 && !document.getElementById(id); frame++) await new Promise(requestAnimationFrame);
  const field = document.getElementById(id);
  for (const fold of folds) if (!fold.contains(field)) fold.open = false;
  return field;
}

// The nearest that is on the page: a part or list that is not there yet is found by what holds it.
export async function goTo(id) {
  for (let at = id; at.length > 1; at = at.replace(/[.[][^.[]*$/, '')) {
    const element = document.getElementById(at);
    if (element) { focus(at === id ? element : await unfolded(id, element) ?? element); return; }
    if (!/[.[]/.test(at)) return;
  }
}

export function goToSection(id, section) {
  const found = document.getElementById(id)?.shadowRoot?.getElementById(section);
  if (!found) return;
  found.tabIndex = -1;
  found.scrollIntoView({ block: 'start' });
  found.focus({ preventScroll: true });
}

export function goToLine(id, line) {
  const text = document.getElementById(id);
  if (!text) return;
  const lines = text.value.split('\n');
  const start = lines.slice(0, line - 1).reduce((sum, l) => sum + l.length + 1, 0);
  text.focus();
  text.setSelectionRange(start, start + (lines[line - 1]?.length ?? 0));
  text.scrollTop = (line - 4) * parseFloat(getComputedStyle(text).lineHeight);
  text.scrollIntoView({ block: 'nearest' });
}
