// Keys of tables in which things are typed: Enter and the arrows go down and up a column, Esc takes the typing back.
const fields = 'input, select';

const step = (field, by) => {
  const cell = field.closest('td');
  const rows = [...field.closest('table').querySelectorAll('tbody tr, tfoot tr')];
  for (let at = rows.indexOf(cell.parentElement) + by; rows[at]; at += by) {
    const next = rows[at].cells[cell.cellIndex]?.querySelector(fields) ?? (rows[at].parentElement.matches('tfoot') ? rows[at].querySelector(fields) : null);
    if (next) { next.focus(); next.select?.(); return true; }
  }
  return false;
};

document.addEventListener('keydown', event => {
  const field = event.target;
  if (event.defaultPrevented || event.altKey || event.ctrlKey || event.metaKey || !(field instanceof Element) || !field.matches(fields)) return;
  if (event.key === 'Escape' && field.dataset.was !== undefined && field.value !== field.dataset.was) {
    field.value = field.dataset.was;
    field.dispatchEvent(new Event('change', { bubbles: true }));
    event.preventDefault();
    return;
  }
  if (!field.closest('.entries td')) return;
  const arrows = field.matches('input:not([type="date"])');
  const by = event.key === 'Enter' ? (event.shiftKey ? -1 : 1) : arrows && event.key === 'ArrowDown' && !field.list ? 1 : arrows && event.key === 'ArrowUp' && !field.list ? -1 : 0;
  if (by === 0) return;
  if (field.closest('tfoot') && event.key === 'Enter') return;
  if (step(field, by)) event.preventDefault();
}, true);
