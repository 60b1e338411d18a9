// Asks the browser for a subscription and puts it into the form, which is then sent like any other.
"use strict";

(() => {
	const form = document.getElementById("add");
	const state = document.getElementById("push-state");
	const words = document.getElementById("push-words").dataset;
	if (!("serviceWorker" in navigator) || !("PushManager" in window) || !("Notification" in window)) {
		// Safari on telephones has it only for sites on the home screen.
		say(/iPhone|iPad/.test(navigator.userAgent) ? words.install : words.unsupported);
		return;
	}
	look().catch(() => say(words.failed));

	function say(text) {
		state.textContent = text;
	}

	// What is known here already: the row of this browser, and whether it may show anything.
	async function look() {
		const known = await subscription();
		const row = known ? document.querySelector("[data-print='" + await print(known.endpoint) + "']") : null;
		if (row) {
			row.querySelector(".here").hidden = false;
			row.addEventListener("submit", (event) => leave(event, row));
			say(words.here);
			return;
		}
		say(Notification.permission === "denied" ? words.denied : words.ready);
		form.hidden = Notification.permission === "denied";
		form.addEventListener("submit", add);
	}

	// Nothing is put into the browser before its owner asks for it.
	async function subscription() {
		const worker = await navigator.serviceWorker.getRegistration(form.dataset.worker);
		return worker ? worker.pushManager.getSubscription() : null;
	}

	function add(event) {
		event.preventDefault();
		const label = document.getElementById("label");
		if (!label.reportValidity()) {
			return;
		}
		say(words.asking);
		subscribe().then((made) => {
			const keys = made.toJSON().keys;
			document.getElementById("endpoint").value = made.endpoint;
			document.getElementById("p256dh").value = keys.p256dh;
			document.getElementById("auth").value = keys.auth;
			form.submit();
		}).catch(() => say(Notification.permission === "denied" ? words.denied : words.failed));
	}

	async function subscribe() {
		if (await Notification.requestPermission() !== "granted") {
			throw new Error("not allowed");
		}
		await navigator.serviceWorker.register(form.dataset.worker);
		const push = (await navigator.serviceWorker.ready).pushManager;
		// One that the server does not know, or one made with another key, is made anew.
		const old = await push.getSubscription();
		if (old) {
			await old.unsubscribe();
		}
		return push.subscribe({ userVisibleOnly: true, applicationServerKey: octets(form.dataset.key) });
	}

	function leave(event, row) {
		event.preventDefault();
		subscription().then((known) => known && known.unsubscribe()).finally(() => row.submit());
	}

	function octets(base64url) {
		return Uint8Array.from(atob(base64url.replace(/-/g, "+").replace(/_/g, "/")), (one) => one.charCodeAt(0));
	}

	async function print(text) {
		const hash = await crypto.subtle.digest("SHA-256", new TextEncoder().encode(text));
		return Array.from(new Uint8Array(hash), (one) => one.toString(16).padStart(2, "0")).join("");
	}
})();
