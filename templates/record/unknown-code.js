// Says what is wrong with the code in the address, and opens the one that somebody types in.
const BASE = new URL(document.documentElement.dataset.base).pathname;
const LENGTH = 21;

function verdict(typed) {
  const code = plain(typed);
  if (code.length !== LENGTH) {
    return 'length';
  }
  return checks(code, LENGTH) ? 'unknown' : 'typo';
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
  if (checks(code, LENGTH) && code !== typed) {
    location.replace(BASE + code + '/' + location.hash);
  }
  show(verdict(typed));
}

document.querySelectorAll('form').forEach(form => {
  form.hidden = false;
  form.addEventListener('submit', event => {
    event.preventDefault();
    const code = plain(form.elements.code.value);
    if (checks(code, LENGTH)) {
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
