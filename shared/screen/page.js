// What a page for the screen can do beyond being read. Everything on it can be read, and its boxes ticked, without this.

// Ticked steps stay ticked, on this device, under the paper's fingerprint; they are counted, cleared and put back.
(() => {
  'use strict';

  const boxes = [...document.querySelectorAll('input[data-step]')];
  const keyOf = (box) => `kettlebook tick ${document.documentElement.dataset.fingerprint} ${box.id}`;
  const language = document.documentElement.lang;
  const panel = document.getElementById('_ticks');
  const notice = document.getElementById('_old');
  const bar = document.getElementById('_bar');
  const lists = [...document.querySelectorAll('.list-foot')].map((foot) => ({
    foot,
    boxes: [...document.getElementById(foot.dataset.list).querySelectorAll('input[data-step]')],
  }));

  /** When each ticked step was ticked, in milliseconds since 1970, by the id of its box. */
  let ticks = new Map();
  /** What was cleared last, so that it can be put back. */
  let cleared = new Map();
  let isKept = true;

  const part = (name) => panel.querySelector(name);
  const say = (words) => {
    part('[role=status]').textContent = words;
  };
  const filled = (words, values) => words.replace(/\{(\w+)\}/g, (whole, name) => values[name] ?? whole);

  // Each tick is kept by itself, so that two windows on one paper add to each other and never overwrite.
  function load() {
    ticks = new Map();
    try {
      for (const box of boxes) {
        const when = Number(localStorage.getItem(keyOf(box)) ?? Number.NaN);
        if (Number.isFinite(when)) ticks.set(box.id, when);
      }
    } catch {
      isKept = false;
    }
  }

  function save(some) {
    try {
      for (const box of some) {
        const when = ticks.get(box.id);
        if (when === undefined) localStorage.removeItem(keyOf(box));
        else localStorage.setItem(keyOf(box), String(when));
      }
      isKept = true;
    } catch {
      isKept = false;
    }
  }

  function refresh() {
    if (isKept) load();
    show();
  }

  const lastTick = () => Math.max(...ticks.values());
  const isOld = () => ticks.size > 0 && new Date(lastTick()).toDateString() !== new Date().toDateString();
  const dayOf = (when) =>
    new Date(when).toLocaleDateString(language, { weekday: 'long', day: 'numeric', month: 'long' });
  const shortDayOf = (when) => new Date(when).toLocaleDateString(language, { day: 'numeric', month: 'short' });
  const timeOf = (when) => new Date(when).toLocaleTimeString(language, { hour: '2-digit', minute: '2-digit' });

  function show() {
    for (const box of boxes) box.checked = ticks.has(box.id);
    for (const list of lists) {
      const done = list.boxes.filter((box) => box.checked).length;
      list.foot.hidden = false;
      list.foot.querySelector('button').hidden = done === 0;
      list.foot.querySelector('.count').textContent = filled(panel.dataset.listSome, { done, all: list.boxes.length });
    }
    showPanel();
    showBar();
  }

  function showPanel() {
    const { none, some } = panel.dataset;
    const when = ticks.size === 0 ? '' : isOld() ? dayOf(lastTick()) : timeOf(lastTick());
    panel.hidden = false;
    part('.state').textContent =
      ticks.size === 0 ? none : filled(some, { done: ticks.size, all: boxes.length, when });
    part('.kept').hidden = isKept;
    part('.clear').hidden = ticks.size === 0;
    part('.back').hidden = cleared.size === 0;
    notice.hidden = !isOld();
    notice.querySelector('.state').textContent = filled(notice.dataset.old, { when });
  }

  function showBar() {
    bar.hidden = false;
    const soFar = bar.querySelector('.so-far');
    if (!soFar) return;
    const list = currentList();
    const done = list?.boxes.filter((box) => box.checked).length;
    soFar.textContent = isOld()
      ? filled(soFar.dataset.old, { when: shortDayOf(lastTick()) })
      : list
        ? filled(panel.dataset.listSome, { done, all: list.boxes.length })
        : '';
    soFar.hidden = soFar.textContent === '';
    soFar.href = isOld() ? '#_old' : '#_ticks';
    bar.querySelector('.next').disabled = !nextBox();
  }

  /** The box ticked last, or none. */
  function lastBox() {
    return boxes.filter((box) => box.checked).sort((a, b) => ticks.get(b.id) - ticks.get(a.id))[0];
  }

  const currentList = () => lists.find((list) => list.boxes.includes(lastBox()));

  /** The first box without a tick after the one ticked last; without ticks, the first of all. */
  function nextBox() {
    const from = boxes.indexOf(lastBox()) + 1;
    return boxes.slice(from).find((box) => !box.checked);
  }

  function clear(some) {
    cleared = new Map([...ticks].filter(([id]) => some.some((box) => box.id === id)));
    for (const id of cleared.keys()) ticks.delete(id);
    save(some);
    show();
    say(filled(panel.dataset.cleared, { count: cleared.size }));
  }

  function putBack() {
    const count = cleared.size;
    ticks = new Map([...cleared, ...ticks]);
    cleared = new Map();
    save(boxes);
    show();
    say(filled(panel.dataset.putBack, { count }));
  }

  function ticked(box) {
    if (box.checked) ticks.set(box.id, Date.now());
    else ticks.delete(box.id);
    cleared = new Map();
    save([box]);
    show();
    const list = lists.find(({ boxes: some }) => some.includes(box));
    say(list?.boxes.every((each) => each.checked) ? panel.dataset.done : '');
  }

  function goToNext() {
    const box = nextBox();
    if (!box) return;
    box.focus({ preventScroll: true });
    const calm = matchMedia('(prefers-reduced-motion: reduce)').matches;
    box.closest('li').scrollIntoView({ block: 'start', behavior: calm ? 'auto' : 'smooth' });
  }

  if (bar) bar.hidden = false;
  if (boxes.length === 0) return;

  for (const box of boxes) box.addEventListener('change', () => ticked(box));
  for (const list of lists) {
    list.foot.querySelector('button').addEventListener('click', () => {
      clear(list.boxes);
      list.boxes[0].focus();
    });
  }
  part('.clear').addEventListener('click', () => {
    clear(boxes);
    part('.back').focus();
  });
  notice.querySelector('button').addEventListener('click', () => {
    clear(boxes);
    document.getElementById('_title').focus();
  });
  part('.back').addEventListener('click', () => {
    putBack();
    part('.clear').focus();
  });
  bar.querySelector('.next').addEventListener('click', goToNext);
  // Ticks may have been set in another window; and a page left open overnight must say, when it is looked at again, that
  // its ticks are old.
  addEventListener('storage', refresh);
  addEventListener('pageshow', refresh);
  document.addEventListener('visibilitychange', () => document.visibilityState === 'visible' && refresh());

  refresh();
})();

// What is written into fields stays, on this device, under the paper's fingerprint and the name of the field.
(() => {
  'use strict';

  const fields = [...document.querySelectorAll('[data-field]')];
  const panel = document.getElementById('_fields');
  if (!panel) return;
  const keyOf = (field) => `kettlebook field ${document.documentElement.dataset.fingerprint} ${field.name}`;
  const isBox = (field) => field.type === 'checkbox';
  const valueOf = (field) => (isBox(field) ? (field.checked ? 'yes' : '') : field.value);
  const part = (name) => panel.querySelector(name);
  /** What was cleared last, so that it can be put back. */
  let cleared = new Map();

  function set(field, value) {
    if (isBox(field)) field.checked = value !== '';
    else field.value = value;
  }

  function show(isKept) {
    panel.hidden = false;
    part('.kept').hidden = isKept;
    part('.clear').hidden = fields.every((field) => valueOf(field) === '');
    part('.back').hidden = cleared.size === 0;
  }

  function load() {
    try {
      for (const field of fields) set(field, localStorage.getItem(keyOf(field)) ?? '');
      show(true);
    } catch {
      show(false);
    }
  }

  function save(some) {
    try {
      for (const field of some) {
        if (valueOf(field) === '') localStorage.removeItem(keyOf(field));
        else localStorage.setItem(keyOf(field), valueOf(field));
      }
      show(true);
    } catch {
      show(false);
    }
  }

  for (const field of fields) {
    field.addEventListener('input', () => {
      cleared = new Map();
      save([field]);
    });
  }
  part('.clear').addEventListener('click', () => {
    cleared = new Map(fields.map((field) => [field, valueOf(field)]));
    for (const field of fields) set(field, '');
    save(fields);
    part('.back').focus();
  });
  part('.back').addEventListener('click', () => {
    for (const [field, value] of cleared) set(field, value);
    cleared = new Map();
    save(fields);
    part('.clear').focus();
  });
  addEventListener('storage', load);
  addEventListener('pageshow', load);
  load();
})();

// Tables and drawings that are wider than the screen fade at the side that goes on; only those can be reached by keyboard.
(() => {
  'use strict';

  const frames = [...document.querySelectorAll('.frame, .drawing')];

  function look(frame) {
    const spare = frame.scrollWidth - frame.clientWidth;
    if (spare > 1) frame.tabIndex = 0;
    else frame.removeAttribute('tabindex');
    frame.classList.toggle('goes-on', frame.scrollLeft < spare - 1);
  }

  for (const frame of frames) frame.addEventListener('scroll', () => look(frame), { passive: true });
  const sizes = new ResizeObserver((changes) => changes.forEach(({ target }) => look(target)));
  for (const frame of frames) sizes.observe(frame);
})();
