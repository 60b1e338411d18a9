// Shows what the server pushes, and opens the page that it is about. It keeps nothing and asks for nothing.
"use strict";

self.addEventListener("install", () => self.skipWaiting());

self.addEventListener("push", (event) => {
	const note = read(event.data);
	event.waitUntil(self.registration.showNotification(note.title, {
		body: note.body,
		tag: note.tag,
		data: { link: note.link }
	}));
});

self.addEventListener("notificationclick", (event) => {
	event.notification.close();
	event.waitUntil(open(here(event.notification.data && event.notification.data.link)));
});

// A browser takes the permission away when something pushed shows nothing, so there are words for whatever comes.
function read(data) {
	let sent = null;
	try {
		sent = data ? data.json() : null;
	}
	catch (trouble) {
		sent = null;
	}
	const text = (value, otherwise) => (typeof value === "string" && value !== "") ? value : otherwise;
	return {
		title: text(sent && sent.title, "Leafward"),
		body: text(sent && sent.body, "There is news about your plants."),
		tag: text(sent && sent.tag, "leafward"),
		link: text(sent && sent.link, "/")
	};
}

// Only pages of this server, whatever name it was reached by.
function here(link) {
	const home = new URL(self.registration.scope);
	try {
		const wanted = new URL(typeof link === "string" ? link : "/", home);
		if (wanted.protocol === "https:" || wanted.protocol === "http:") {
			return home.origin + wanted.pathname + wanted.search + wanted.hash;
		}
	}
	catch (trouble) {
		// It is no address.
	}
	return home.href;
}

async function open(address) {
	const pages = await self.clients.matchAll({ type: "window", includeUncontrolled: true });
	const same = pages.find((page) => page.url === address);
	return same ? same.focus() : self.clients.openWindow(address);
}
