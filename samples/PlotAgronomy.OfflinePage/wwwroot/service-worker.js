// While the page is being worked on everything comes from the server; the published worker keeps it.
self.addEventListener('fetch', () => { });
