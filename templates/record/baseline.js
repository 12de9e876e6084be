// Holds readings of a later visit against those of the handover. Nothing that is typed is sent or kept, and every number that
// it is held against stands in the page, so that the page and the program judge alike.
const NUMBER = /^([>≥]?)\s*([+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+))\s*(\S*)$/;

// In canonical units; null for nothing, NaN for what is no number or has another unit.
function typedNumber(typed, units, mayExceed) {
  if (typed.trim() === '') {
    return null;
  }
  const parts = typed.trim().replace('\u2212', '-').match(NUMBER);
  const unit = parts === null || parts[3] === '' ? Object.keys(units)[0] : parts[3];
  if (parts === null || units[unit] === undefined || (parts[1] !== '' && !mayExceed)) {
    return NaN;
  }
  return Number(parts[2].replace(',', '.')) * units[unit];
}

// The form that is compared, and the weight that the load gives to what the meter blurs; null if something is missing.
function comparable(data, visit) {
  const load = visit.load ?? data.load;
  if (data.form !== 'as-read' && !(load > 0)) {
    return null;
  }
  switch (data.form) {
    case 'drop':
      return { now: Math.abs(visit.reading) / load, weight: 1 / load };
    case 'behind':
      return visit.rest === null ? null : { now: Math.abs(visit.rest - visit.reading) / load, weight: 1 / load };
    case 'rise': {
      const scale = (data.load / load) * (data.load / load);
      return visit.air === null ? null : { now: (visit.reading - visit.air) * scale, weight: scale };
    }
    default:
      return { now: visit.reading, weight: 0 };
  }
}

function judgement(data, visit) {
  const compared = comparable(data, visit);
  if (compared === null) {
    return 'unclear';
  }
  if (compared.now > data.most || compared.now < data.least) {
    return 'beyond';
  }
  const now = Math.min(compared.now, data.ceiling ?? Infinity);
  const blur = data.blur + data.blurOfLoad * compared.weight;
  const hidden = blur * (1 + data.noise);
  if (now >= data.up - data.noise * Math.abs(data.up)) {
    return now - data.first > hidden ? (data.falling ? 'better' : 'moved') : 'unclear';
  }
  if (now <= data.down + data.noise * Math.abs(data.down)) {
    return data.first - now > hidden ? (data.falling ? 'moved' : 'better') : 'unclear';
  }
  return blur > data.tolerance ? 'unclear' : 'steady';
}

function fields(row) {
  return Object.fromEntries([...row.querySelectorAll('input')].map(input => [input.dataset.field, input]));
}

function judgeRows(table, summary) {
  const rows = [...table.querySelectorAll('tbody[data-baseline]')];
  const visits = rows.map(row => {
    const data = JSON.parse(row.dataset.baseline);
    const { reading, load, air } = fields(row);
    return {
      row, data,
      reading: typedNumber(reading.value, data.units, data.falling),
      load: load === undefined ? null : typedNumber(load.value, { A: 1 }),
      air: air === undefined ? null : typedNumber(air.value, { '°C': 1 })
    };
  });
  const rest = visits.find(visit => visit.data.rest)?.reading ?? null;
  const found = { moved: [], beyond: [] };
  let read = 0;
  visits.forEach(visit => {
    const wrong = [visit.reading, visit.load, visit.air].some(Number.isNaN);
    const verdict = wrong ? 'number'
      : visit.reading === null ? ''
      : judgement(visit.data, { ...visit, rest: Number.isNaN(rest) ? null : rest });
    const line = visit.row.querySelector('.verdict');
    line.textContent = table.dataset[verdict] ?? '';
    line.dataset.verdict = verdict;
    found[verdict]?.push(visit.row.dataset.name);
    read += verdict === '' || wrong ? 0 : 1;
  });
  const said = ['beyond', 'moved']
    .filter(verdict => found[verdict].length > 0)
    .map(verdict => table.dataset[verdict + 'All'].replace('{0}', found[verdict].join('; ')));
  const text = said.length > 0 ? said.join(' ') : read > 0 ? table.dataset.none : '';
  summary.dataset.found = said.length > 0;
  if (summary.textContent !== text) {
    summary.textContent = text;
  }
}

// Turns the blanks that stand there for a pen into fields.
function openBaseline() {
  const table = document.querySelector('table.baseline');
  if (table === null) {
    return;
  }
  table.querySelectorAll('tbody[data-baseline] .blank').forEach(blank => {
    const label = document.createElement('label');
    const input = document.createElement('input');
    input.id = blank.id + '-typed';
    input.dataset.field = blank.dataset.field;
    input.inputMode = 'decimal';
    input.autocomplete = 'off';
    label.htmlFor = input.id;
    label.id = blank.id;
    label.textContent = blank.textContent;
    input.setAttribute('aria-labelledby', blank.closest('tbody').querySelector('th').id + ' ' + label.id);
    const field = document.createElement('div');
    field.append(label, input);
    blank.replaceWith(field);
  });
  table.querySelectorAll('tbody[data-baseline] .fields').forEach(all => {
    const verdict = document.createElement('p');
    verdict.className = 'verdict';
    all.after(verdict);
  });
  table.classList.add('typed');
  const summary = document.getElementById('baseline-summary');
  table.addEventListener('change', () => judgeRows(table, summary));
  document.querySelectorAll('.typing').forEach(line => { line.hidden = !line.hidden; });
}
openBaseline();
