// Zoom and pan of the plan, and its keys. The picture is as large as its zoom and lies in a box that scrolls, so that wheel, touch, scroll bars and
// readers of the screen work as anywhere else. What is chosen stays with the server; nothing here makes elements.
const Most = 12;
const Least = 0.5;
const Step = 1.25;
const Nudge = 60;
const Slip = 5;
const phone = matchMedia('(max-width: 720px)');
const still = matchMedia('(prefers-reduced-motion: reduce)');
const PhoneWidth = 760;

export function attach(root) {
  const scroll = root.querySelector('[data-plan-scroll]');
  const stage = root.querySelector('[data-plan-stage]');
  const ended = new AbortController();
  const signal = ended.signal;
  let zoom = 1;
  let drag = null;
  let dragged = false;

  const fit = () => {
    const width = Number(stage.dataset.w);
    const height = Number(stage.dataset.h);
    const narrow = phone.matches ? Math.max(PhoneWidth, scroll.clientWidth) / width : scroll.clientWidth / width;
    const low = phone.matches || scroll.clientHeight < 200 ? narrow : scroll.clientHeight / height;
    return Math.min(narrow, low);
  };

  const lay = () => {
    const foot = fit() * zoom;
    stage.style.width = `${Math.floor(Number(stage.dataset.w) * foot)}px`;
    stage.style.height = `${Math.floor(Number(stage.dataset.h) * foot)}px`;
  };

  // The point under (x, y) stays where it is.
  const zoomTo = (next, x, y) => {
    const box = scroll.getBoundingClientRect();
    const [px, py] = [x ?? box.left + box.width / 2, y ?? box.top + box.height / 2];
    const before = stage.getBoundingClientRect();
    const [fx, fy] = [(px - before.left) / before.width, (py - before.top) / before.height];
    zoom = Math.max(Least, Math.min(Most, next));
    lay();
    const after = stage.getBoundingClientRect();
    scroll.scrollLeft += after.left + fx * after.width - px;
    scroll.scrollTop += after.top + fy * after.height - py;
  };

  const act = name => {
    if (name === 'in') zoomTo(zoom * Step);
    else if (name === 'out') zoomTo(zoom / Step);
    else if (name === 'fit') zoomTo(1);
    else return false;
    return true;
  };

  const go = (items, from, by) => {
    const next = items[(items.indexOf(from) + by + items.length) % items.length];
    next?.focus();
    return next !== undefined;
  };

  const by = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 };
  const arrows = event => {
    const run = event.target.closest('[data-run]');
    if (run) return go([...root.querySelectorAll('[data-run]')], run, by[event.key]);
    const circuit = event.target.closest('[data-circuit]');
    if (circuit) return (event.key === 'ArrowDown' || event.key === 'ArrowUp') && go([...root.querySelectorAll('[data-circuit]')], circuit, by[event.key]);
    if (!event.target.closest('[data-plan-scroll]') || event.target.closest('.card')) return false;
    scroll.scrollBy({
      left: (event.key === 'ArrowRight') * Nudge - (event.key === 'ArrowLeft') * Nudge,
      top: (event.key === 'ArrowDown') * Nudge - (event.key === 'ArrowUp') * Nudge,
      behavior: still.matches ? 'instant' : 'smooth',
    });
    return true;
  };

  root.addEventListener('keydown', event => {
    if (event.altKey || event.ctrlKey || event.metaKey || event.target.closest('input, textarea, select, .facts')) return;
    const name = { '+': 'in', '=': 'in', '-': 'out', '\u2212': 'out', '0': 'fit' }[event.key];
    if (name ? act(name) : event.key in by && arrows(event)) event.preventDefault();
  }, { signal });

  root.addEventListener('click', event => {
    const button = event.target.closest('[data-plan-zoom]');
    if (button) act(button.dataset.planZoom);
  }, { signal });

  scroll.addEventListener('wheel', event => {
    if (!event.ctrlKey) return;
    event.preventDefault();
    zoomTo(zoom * Math.exp(-event.deltaY / 300), event.clientX, event.clientY);
  }, { signal, passive: false });

  // A mouse or pen draws the sheet along; a finger scrolls it as any page.
  scroll.addEventListener('pointerdown', event => {
    if (event.pointerType === 'touch' || event.button !== 0 || event.target.closest('.card')) return;
    drag = { x: event.clientX, y: event.clientY, left: scroll.scrollLeft, top: scroll.scrollTop };
    dragged = false;
  }, { signal });
  scroll.addEventListener('pointermove', event => {
    if (!drag) return;
    const [dx, dy] = [event.clientX - drag.x, event.clientY - drag.y];
    if (!dragged && Math.hypot(dx, dy) < Slip) return;
    if (!dragged) scroll.setPointerCapture(event.pointerId);
    dragged = true;
    scroll.scrollLeft = drag.left - dx;
    scroll.scrollTop = drag.top - dy;
  }, { signal });
  for (const end of ['pointerup', 'pointercancel']) scroll.addEventListener(end, () => { drag = null; }, { signal });
  scroll.addEventListener('click', event => {
    if (dragged) event.stopPropagation();
    dragged = false;
  }, { signal, capture: true });

  const sizes = new ResizeObserver(lay);
  sizes.observe(scroll);
  lay();
  return { dispose: () => { ended.abort(); sizes.disconnect(); } };
}
