'use strict';

// Ticks of a workday's list. Each is written down on this phone first, under a key of its own, and sent when there is a
// connection; it is forgotten here only when the server says that it has it. Sent twice it counts once. Without this
// script the same buttons send the form that they stand in.
(function () {
	const forms = Array.from(document.querySelectorAll('form[data-task]'));
	const said = document.getElementById('queue');
	if (forms.length === 0 || !said || !window.localStorage || !window.crypto || !crypto.getRandomValues) {
		return;
	}
	const address = forms[0].action;
	const store = 'leafward-ticks ' + address;
	let sending = false;

	function waiting() {
		try {
			return JSON.parse(localStorage.getItem(store)) || [];
		}
		catch (ex) {
			return [];
		}
	}

	function keep(ticks) {
		if (ticks.length === 0) {
			localStorage.removeItem(store);
		}
		else {
			localStorage.setItem(store, JSON.stringify(ticks));
		}
	}

	// crypto.randomUUID is there on secure pages only.
	function key() {
		const octets = crypto.getRandomValues(new Uint8Array(16));
		octets[6] = (octets[6] & 0x0f) | 0x40;
		octets[8] = (octets[8] & 0x3f) | 0x80;
		const hex = Array.from(octets, (one) => one.toString(16).padStart(2, '0')).join('');
		return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join('-');
	}

	function show(form, done) {
		form.classList.toggle('is-done', done);
		form.elements.done.value = String(!done);
		const button = form.querySelector('button');
		if (button) {
			button.classList.toggle('second', done);
			button.querySelector('.say').textContent = done ? button.dataset.undo : button.dataset.do;
		}
		document.getElementById('done-count').textContent = String(document.querySelectorAll('form.is-done').length);
	}

	function tell() {
		const left = waiting().length;
		if (left > 0) {
			said.textContent = said.dataset.waits + left;
			said.hidden = false;
		}
		else if (!said.hidden) {
			said.textContent = said.dataset.sent;
		}
	}

	// A page that lay open for long has a mark against forgery that ended with its session: a fresh page has a fresh one.
	async function mark() {
		const page = await fetch(location.pathname, { credentials: 'same-origin', cache: 'no-store' });
		if (!page.ok || new URL(page.url).pathname !== location.pathname) {
			return null;
		}
		const fresh = new DOMParser().parseFromString(await page.text(), 'text/html').querySelector('form[data-task] input[name="_csrf"]');
		return fresh ? fresh.value : null;
	}

	// A worker keeps this list on the phone until the day after the workday, so that it opens without a connection.
	const scope = new URL(address).pathname.replace(/ticks$/, 'checklist');
	const until = Number(said.dataset.until);

	async function keepList() {
		if (!('serviceWorker' in navigator) || !said.dataset.worker) {
			return;
		}
		try {
			if (Date.now() > until) {
				const old = await navigator.serviceWorker.getRegistration(scope);
				if (old && old.active) {
					old.active.postMessage({ what: 'forget' });
				}
				return;
			}
			await navigator.serviceWorker.register(said.dataset.worker, { scope: scope });
			const worker = (await navigator.serviceWorker.ready).active;
			const parts = Array.from(document.querySelectorAll('link[rel="stylesheet"], script[src]'), (one) => one.href || one.src);
			worker.postMessage({ what: 'keep', parts: parts, until: until });
		}
		catch (ex) {
			// No room, or not allowed: the list works with a connection only.
		}
	}

	// Who signs out here leaves no list behind.
	document.addEventListener('submit', (event) => {
		if (new URL(event.target.action).pathname.endsWith('/sign-out') && navigator.serviceWorker && navigator.serviceWorker.controller) {
			navigator.serviceWorker.controller.postMessage({ what: 'forget' });
		}
	});

	function body(ticks, csrf) {
		const fields = new URLSearchParams();
		ticks.forEach((one) => fields.append('mark', [one.key, one.task, one.done ? 'yes' : 'no', one.at].join('|')));
		if (csrf) {
			fields.append('_csrf', csrf);
		}
		return fields;
	}

	function post(ticks, csrf) {
		return fetch(address, { method: 'POST', body: body(ticks, csrf), headers: { Accept: 'application/json' }, credentials: 'same-origin', redirect: 'manual' });
	}

	async function send() {
		const ticks = waiting().slice(0, 200);
		if (sending || ticks.length === 0) {
			tell();
			return;
		}
		sending = true;
		try {
			const own = forms[0].elements._csrf;
			let answer = await post(ticks, own ? own.value : null);
			if (!answer.ok) {
				const fresh = await mark();
				if (fresh === null) {
					said.textContent = said.dataset.stale;
					said.hidden = false;
					return;
				}
				forms.forEach((form) => { if (form.elements._csrf) { form.elements._csrf.value = fresh; } });
				answer = await post(ticks, fresh);
			}
			if (answer.ok) {
				const sent = new Set(ticks.map((one) => one.key));
				keep(waiting().filter((one) => !sent.has(one.key)));
				const states = await answer.json();
				const open = new Set(waiting().map((one) => one.task));
				forms.forEach((form) => {
					const task = form.dataset.task;
					if (task in states && !open.has(task)) {
						show(form, states[task]);
					}
				});
				keepList();
			}
			tell();
		}
		catch (ex) {
			tell();
		}
		finally {
			sending = false;
		}
	}

	forms.forEach((form) => form.addEventListener('submit', (event) => {
		const done = form.elements.done.value === 'true';
		try {
			keep(waiting().concat([{ key: key(), task: form.dataset.task, done: done, at: new Date().toISOString() }]));
		}
		catch (ex) {
			// No room on this phone: the form goes its plain way.
			return;
		}
		event.preventDefault();
		show(form, done);
		send();
	}));

	// What waited from before stands on the page as it was ticked.
	waiting().forEach((one) => forms.filter((form) => form.dataset.task === one.task).forEach((form) => show(form, one.done)));
	window.addEventListener('online', send);
	document.addEventListener('visibilitychange', () => { if (!document.hidden) { send(); } });
	setInterval(() => { if (waiting().length > 0) { send(); } }, 15000);
	send();
	keepList();
})();
