// Keys that work on every page. They press what stands on the page, so a key never does what a pointer can't.
const press = selector => {
  const target = document.querySelector(selector);
  target?.click();
  return target !== null;
};
const typing = target => target.closest('input, textarea, select, [contenteditable], [data-keys="grid"]') !== null;

const move = (items, from, by) => {
  const at = items.indexOf(from);
  const next = items[Math.max(0, Math.min(items.length - 1, at + by))];
  next?.focus();
};

const treeKey = (event, tree) => {
  const items = [...tree.querySelectorAll('[role="treeitem"]')];
  const item = event.target.closest('[role="treeitem"]') ?? items[0];
  const open = item?.getAttribute('aria-expanded');
  switch (event.key) {
    case 'ArrowDown': move(items, item, 1); break;
    case 'ArrowUp': move(items, item, -1); break;
    case 'Home': items[0]?.focus(); break;
    case 'End': items.at(-1)?.focus(); break;
    case 'ArrowRight': if (open === 'false') item.click(); else if (open === 'true') move(items, item, 1); break;
    case 'ArrowLeft': if (open === 'true') item.click(); else item.closest('ul[role="group"]')?.closest('li')?.querySelector('[role="treeitem"]')?.focus(); break;
    case 'Enter': case ' ': item?.click(); break;
    default: return false;
  }
  return true;
};

// In a ledger the arrows go up and down within a column of things that can be pressed.
const ledgerKey = (event, ledger) => {
  const cell = event.target.closest('td, th');
  const by = event.key === 'ArrowDown' ? 1 : event.key === 'ArrowUp' ? -1 : 0;
  if (!cell || by === 0 || event.target.matches('input, select, textarea')) return false;
  for (let row = cell.parentElement; row; ) {
    const rows = [...ledger.querySelectorAll('tr')];
    row = rows[rows.indexOf(row) + by];
    const target = row?.cells[cell.cellIndex]?.querySelector('button, a, input');
    if (target) { target.focus(); return true; }
  }
  return false;
};

let opener = null;
document.addEventListener('click', event => {
  const number = event.target.closest('[data-n]');
  if (number) opener = number;
}, true);

document.addEventListener('keydown', event => {
  if (event.defaultPrevented) return;
  const target = event.target instanceof Element ? event.target : document.body;
  let done = false;
  if (event.altKey && !event.ctrlKey && !event.metaKey && /^[0-9]$/.test(event.key)) {
    done = press(`[data-stage-key="${event.key}"]`);
  } else if (event.altKey && event.key.toLowerCase() === 'p') {
    const price = document.querySelector('.price .mid [data-n]');
    price?.focus();
    done = price !== null;
  } else if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 'z' && (!target.closest('input, textarea, select') || target.matches('.val'))) {
    done = press(event.shiftKey ? '[data-redo]:not([disabled])' : '[data-undo]:not([disabled])');
  } else if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 'y' && !target.closest('input, textarea, select')) {
    done = press('[data-redo]:not([disabled])');
  } else if (event.key === 'Escape') {
    done = press('[data-close-explanation]');
    if (done) opener?.focus();
  } else if (!event.altKey && !event.ctrlKey && !event.metaKey) {
    const tree = target.closest('[data-keys="tree"]');
    const ledger = target.closest('[data-keys="ledger"]');
    if (tree) done = treeKey(event, tree);
    else if (event.key.toLowerCase() === 'e' && target.matches('[data-n]')) { target.click(); done = true; }
    else if (event.key.toLowerCase() === 'm' && target.closest('.finding') && !typing(target)) { const act = target.closest('.finding').querySelector('.do button'); act?.click(); done = !!act; }
    else if (ledger) done = ledgerKey(event, ledger);
  }
  if (done) event.preventDefault();
});

// The tree is entered with the arrow keys from the number that opened it.
document.addEventListener('keydown', event => {
  if (event.key === 'ArrowRight' && event.target instanceof Element && event.target.matches('[data-n][aria-expanded="true"]')) {
    document.querySelector('#explanation [role="treeitem"]')?.focus();
    event.preventDefault();
  }
});

// A page whose server went away is loaded again: every edit is in the store, so nothing is lost. The event does not bubble.
document.addEventListener('components-reconnect-state-changed', event => {
  if (event.detail?.state === 'rejected') location.reload();
}, true);
document.querySelector('[data-reload]')?.addEventListener('click', () => location.reload());

// The grid of rooms: arrows and Enter go from cell to cell, letters act on the row, a paste of several cells goes to the page as rows.
const gridMove = (input, rows, columns) => {
  const cell = input.closest('td');
  const all = [...input.closest('table').querySelectorAll('tbody tr')].filter(r => r.querySelector('.val'));
  const row = all[Math.max(0, Math.min(all.length - 1, all.indexOf(cell.parentElement) + rows))];
  const cells = [...row.querySelectorAll('.val')];
  const at = [...cell.parentElement.querySelectorAll('.val')].indexOf(input) + columns;
  const target = cells[Math.max(0, Math.min(cells.length - 1, at))];
  if (target && target !== input) { target.focus(); target.select(); return true; }
  if (rows) input.blur();
  return false;
};
document.addEventListener('focusin', event => { if (event.target instanceof Element && event.target.matches('.roomgrid .val')) event.target.select(); });
document.addEventListener('keydown', event => {
  const input = event.target instanceof Element ? event.target.closest('.roomgrid .val') : null;
  if (!input) {
    if (event.key.toLowerCase() === 'n' && !event.ctrlKey && !event.altKey && !event.metaKey && event.target instanceof Element && !event.target.closest('input, textarea, select')) {
      const field = document.querySelector('.newroom input');
      if (field) { field.focus(); event.preventDefault(); }
    }
    return;
  }
  if (event.ctrlKey || event.metaKey || event.altKey) return;
  const row = input.closest('tr');
  let done = true;
  switch (event.key) {
    case 'ArrowDown': gridMove(input, 1, 0); break;
    case 'ArrowUp': gridMove(input, -1, 0); break;
    case 'ArrowRight': gridMove(input, 0, 1); break;
    case 'ArrowLeft': gridMove(input, 0, -1); break;
    case 'Enter': gridMove(input, event.shiftKey ? -1 : 1, 0); break;
    case '+': input.closest('td').querySelectorAll('.step')[1].click(); break;
    case '-': input.closest('td').querySelectorAll('.step')[0].click(); break;
    case 'r': case 'R': row.querySelector('[data-repeat]')?.click(); break;
    case 'e': case 'E': row.querySelector('[data-n]')?.click(); break;
    case 'n': case 'N': document.querySelector('.newroom input')?.focus(); break;
    default: done = event.key.length === 1 && !/[0-9]/.test(event.key);
  }
  if (done) event.preventDefault();
});
document.addEventListener('paste', event => {
  const box = document.querySelector('[data-paste]');
  const text = event.clipboardData?.getData('text/plain') ?? '';
  const field = event.target instanceof Element ? event.target.closest('input, textarea') : null;
  if (!box || !text.includes('\t') || (field && !field.matches('.val, .newroom input'))) return;
  event.preventDefault();
  box.value = text;
  box.dispatchEvent(new Event('change', { bubbles: true }));
  box.value = '';
});
