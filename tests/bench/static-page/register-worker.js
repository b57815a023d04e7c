navigator.serviceWorker.register('small-worker.js');
