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
  } else if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 'z' && !target.closest('input, textarea, select')) {
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

// A page whose server went away is loaded again: every edit is in the store, so nothing is lost.
document.addEventListener('components-reconnect-state-changed', event => {
  if (event.detail?.state === 'rejected') location.reload();
});
