// Asks the browser to keep the pages of this record for when there is no signal. A page opened from a file is kept already.
if ('serviceWorker' in navigator && location.protocol.startsWith('http')) {
  navigator.serviceWorker.register('offline.js').catch(() => {});
}
