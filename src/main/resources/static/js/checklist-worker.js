'use strict';

// Keeps the list of one workday on the phone, with its style and script, so that it opens without a connection. Its
// reach is that list's address; the server comes first, and what it says of the list decides: a list that it refuses,
// or that asks for signing in, is kept no more. Ticks are none of its business, they wait in the page's own store.
const PATH = new URL(self.registration.scope).pathname;
const NAME = 'leafward-list ' + PATH;
const UNTIL = PATH + '?kept-until';
const PATIENCE = 6000;
const PARTS = ['style', 'script', 'image', 'font'];

self.addEventListener('install', () => self.skipWaiting());
self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()));

self.addEventListener('message', (event) => {
	const said = event.data || {};
	if (said.what === 'keep') {
		event.waitUntil(keep(said.parts || [], said.until));
	}
	else if (said.what === 'forget') {
		event.waitUntil(forget());
	}
});

self.addEventListener('fetch', (event) => {
	const request = event.request;
	const address = new URL(request.url);
	if (request.method !== 'GET' || address.origin !== self.location.origin) {
		return;
	}
	if (request.mode === 'navigate' && address.pathname === PATH) {
		event.respondWith(page(event));
	}
	else if (PARTS.includes(request.destination)) {
		event.respondWith(part(request));
	}
});

async function keep(parts, until) {
	const cache = await caches.open(NAME);
	await cache.put(UNTIL, new Response(String(until)));
	await ask(new Request(PATH, { credentials: 'same-origin', cache: 'no-store' })).catch(() => null);
	for (const one of parts) {
		const address = new URL(one, self.location.origin);
		if (address.origin === self.location.origin) {
			const answer = await fetch(address.href, { credentials: 'same-origin' }).catch(() => null);
			if (answer && answer.ok) {
				await cache.put(address.href, answer);
			}
		}
	}
}

async function forget() {
	await caches.delete(NAME);
	await self.registration.unregister();
}

// Asks the server for the list, and keeps the answer or forgets the list.
async function ask(request) {
	const answer = await fetch(request);
	if (answer.ok && !answer.redirected) {
		const cache = await caches.open(NAME);
		await cache.put(PATH, answer.clone());
	}
	else if (answer.status < 500) {
		await caches.delete(NAME);
	}
	return answer;
}

async function kept() {
	const cache = await caches.open(NAME);
	const until = await cache.match(UNTIL);
	if (until && Date.now() > Number(await until.text())) {
		await forget();
		return undefined;
	}
	return cache.match(PATH);
}

async function page(event) {
	const asked = ask(event.request);
	const copy = await kept();
	if (!copy) {
		return asked;
	}
	event.waitUntil(asked.catch(() => null));
	const late = new Promise((resolve) => setTimeout(resolve, PATIENCE, copy));
	return Promise.race([asked.catch(() => copy), late]);
}

async function part(request) {
	try {
		return await fetch(request);
	}
	catch (trouble) {
		const cache = await caches.open(NAME);
		const copy = await cache.match(request.url);
		if (copy) {
			return copy;
		}
		throw trouble;
	}
}
