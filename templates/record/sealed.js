// Opens a sealed record with the key behind the number sign of the address. The key stays in this browser: no request
// carries it, and nothing is stored. What a sealed file is made of: docs/sealed.md.
const RECORD = document.documentElement.dataset;
const KEY_LENGTH = 27;
const MARK = 'QUAYSEAL';
const HEAD = 11;
const NONCE = 12;
const TYPES = { html: 'text/html', pdf: 'application/pdf', json: 'application/json', ics: 'text/calendar' };
const text = new TextEncoder();

class Refusal extends Error {
  constructor(state) {
    super(state);
    this.state = state;
  }
}

// "#KEY" or "#KEY/section": so the address opens the record again, wherever the reader has gone in it.
function asked() {
  const [key, section] = location.hash.slice(1).split('/');
  try {
    return [plain(decodeURIComponent(key)), section];
  } catch (broken) {
    return [plain(key), section];
  }
}

function fault(key) {
  if (key === '') {
    return 'no-key';
  }
  if (key.length !== KEY_LENGTH) {
    return 'cut';
  }
  return checks(key, KEY_LENGTH) && key[0] <= '7' ? '' : 'mistyped';
}

function bytes(key) {
  const number = [...key.slice(0, -1)].reduce((sum, symbol) => sum * 32n + BigInt(SYMBOLS.indexOf(symbol)), 0n);
  const digits = number.toString(16).padStart(32, '0');
  return Uint8Array.from(digits.match(/../g), pair => parseInt(pair, 16));
}

function purpose(what, name) {
  return {
    name: 'HKDF', hash: 'SHA-256', salt: text.encode(RECORD.record), info: text.encode('quaybook ' + what + ' ' + name)
  };
}

async function belongs(master) {
  const token = new Uint8Array(await crypto.subtle.deriveBits(purpose('token', ''), master, 64));
  return [...token].map(byte => byte.toString(16).padStart(2, '0')).join('') === RECORD.token;
}

async function fetched(name) {
  try {
    const answer = await fetch(name, { cache: 'no-cache', credentials: 'omit', referrerPolicy: 'no-referrer' });
    if (answer.ok) {
      return new Uint8Array(await answer.arrayBuffer());
    }
  } catch (unreachable) {
    // Said below, like any other answer that is no file.
  }
  throw new Refusal('unreachable');
}

async function unseal(name, master) {
  const file = await fetched(name + '.sealed');
  if (MARK !== String.fromCharCode(...file.subarray(0, MARK.length))) {
    throw new Refusal('damaged');
  }
  if (file[9] * 256 + file[10] !== Number(RECORD.revision)) {
    throw new Refusal('changing');
  }
  const key = await crypto.subtle.deriveKey(
    purpose('key', name), master, { name: 'AES-GCM', length: 256 }, false, ['decrypt']);
  const beside = new Uint8Array([...file.subarray(0, HEAD), ...text.encode(RECORD.record), ...text.encode(name)]);
  const cipher = { name: 'AES-GCM', iv: file.subarray(HEAD, HEAD + NONCE), additionalData: beside, tagLength: 128 };
  let content;
  try {
    content = await crypto.subtle.decrypt(cipher, key, file.subarray(HEAD + NONCE));
  } catch (altered) {
    throw new Refusal('damaged');
  }
  return file[8] === 1
    ? new Response(new Blob([content]).stream().pipeThrough(new DecompressionStream('deflate'))).arrayBuffer()
    : content;
}

function say(attribute, state) {
  document.querySelectorAll('[' + attribute + ']').forEach(line => {
    line.hidden = line.getAttribute(attribute) !== state;
  });
}

function ask(state) {
  say('data-state', state);
  document.querySelector('form').hidden = !['no-key', 'cut', 'mistyped', 'wrong'].includes(state);
}

// Its text is put in place of this page's; this page's content security policy stays in force. What it says of the looks
// of an element is set by script: the policy lets no style attribute through.
function show(page, key) {
  const record = new DOMParser().parseFromString(page.replaceAll(' style="', ' data-look="'), 'text/html');
  record.querySelectorAll('script').forEach(script => script.remove());
  const languages = document.querySelector('nav.languages');
  const files = document.getElementById('files').content;
  const saved = document.querySelector('.saved').hidden;
  document.title = record.title;
  document.querySelector('style').replaceWith(document.adoptNode(record.querySelector('style')));
  document.body.replaceChildren(...record.body.childNodes);
  document.querySelectorAll('[data-look]').forEach(part => { part.style.cssText = part.dataset.look; });
  if (languages !== null) {
    document.querySelector('header').after(languages);
  }
  const foot = document.querySelector('footer');
  foot.insertBefore(files, foot.querySelector('h3'));
  document.querySelector('.saved').hidden = saved;
  document.querySelectorAll('a[href^="#"]').forEach(link => {
    link.setAttribute('href', '#' + key + '/' + link.getAttribute('href').slice(1));
  });
  openBaseline();
  document.querySelectorAll('a[data-earlier]').forEach(link => { link.hash = key; });
}

async function save(link, master) {
  say('data-file-state', '');
  try {
    const type = TYPES[link.dataset.file.split('.').pop()];
    const address = URL.createObjectURL(new Blob([await unseal(link.dataset.file, master)], { type }));
    const copy = document.createElement('a');
    copy.href = address;
    copy.download = link.download;
    copy.click();
    setTimeout(() => URL.revokeObjectURL(address), 60000);
  } catch (refused) {
    say('data-file-state', refused.state ?? 'damaged');
  }
}

function go(section) {
  const target = section === undefined ? null : document.getElementById(section);
  if (target !== null) {
    target.tabIndex = -1;
    target.focus({ preventScroll: true });
    target.scrollIntoView();
  }
}

let opened = '';

async function begin() {
  const [key, section] = asked();
  const wrong = fault(key);
  if (wrong !== '') {
    ask(wrong);
    return;
  }
  document.querySelectorAll('nav.languages a').forEach(link => { link.hash = key; });
  if (globalThis.crypto?.subtle === undefined || globalThis.DecompressionStream === undefined) {
    ask('too-old');
    return;
  }
  ask('opening');
  try {
    const master = await crypto.subtle.importKey('raw', bytes(key), 'HKDF', false, ['deriveBits', 'deriveKey']);
    if (!await belongs(master)) {
      throw new Refusal('wrong');
    }
    show(new TextDecoder().decode(await unseal(RECORD.whole, master)), key);
    document.querySelectorAll('a[data-file]').forEach(link => link.addEventListener('click', event => {
      event.preventDefault();
      save(link, master);
    }));
    opened = key;
    go(section);
  } catch (refused) {
    ask(refused.state ?? 'damaged');
  }
}

addEventListener('hashchange', () => {
  const [key, section] = asked();
  if (opened !== '' && key === opened) {
    go(section);
  } else {
    location.reload();
  }
});

document.querySelector('form').addEventListener('submit', event => {
  event.preventDefault();
  location.hash = plain(event.target.elements.key.value);
});
begin();
