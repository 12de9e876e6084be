// Says what is wrong with the code in the address, and opens the one that somebody types in.
const ALPHABET = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
const BASE = new URL(document.documentElement.dataset.base).pathname;

function plain(typed) {
  return typed.toUpperCase().replace(/[\s-]/g, '').replace(/O/g, '0').replace(/[IL]/g, '1');
}

function checks(code) {
  if (!/^[0-9A-HJKMNP-TV-Z]{21}$/.test(code)) {
    return false;
  }
  const remainder = [...code.slice(0, 20)].reduce((sum, symbol) => (sum * 32 + ALPHABET.indexOf(symbol)) % 37, 0);
  return ALPHABET[remainder] === code[20];
}

function verdict(typed) {
  const code = plain(typed);
  if (code.length !== 21) {
    return 'length';
  }
  return checks(code) ? 'unknown' : 'typo';
}

function show(kind) {
  document.querySelectorAll('[data-verdict]').forEach(line => { line.hidden = line.dataset.verdict !== kind; });
}

function asked() {
  const path = location.pathname.startsWith(BASE) ? location.pathname.slice(BASE.length) : '';
  try {
    return decodeURIComponent(path.split('/')[0]);
  } catch (broken) {
    return '';
  }
}

const typed = asked();
if (typed !== '' && typed !== '404.html') {
  const code = plain(typed);
  if (checks(code) && code !== typed) {
    location.replace(BASE + code + '/');
  }
  show(verdict(typed));
}

document.querySelectorAll('form').forEach(form => {
  form.hidden = false;
  form.addEventListener('submit', event => {
    event.preventDefault();
    const code = plain(form.elements.code.value);
    if (checks(code)) {
      location.assign(BASE + code + '/');
    } else {
      show(verdict(code));
    }
  });
});

// The reader's own language comes first.
const wanted = navigator.languages.map(tag => tag.slice(0, 2));
const section = wanted.map(tag => document.querySelector('section[lang|="' + tag + '"]')).find(found => found !== null);
if (section) {
  section.parentNode.prepend(section);
}
