// Runs the two scripts of the house in a browser that is made up here, as Push API, Service Workers and Notifications
// API (W3C, WHATWG) describe it, and tells what they did. Arguments: folder of the scripts, name of the scene.
// Node alone is enough.
import { readFileSync } from "node:fs";
import { webcrypto } from "node:crypto";
import vm from "node:vm";

const [folder, scene] = process.argv.slice(2);
const source = (name) => readFileSync(folder + "/" + name, "utf8");
const done = [];

function worker(open) {
	const listeners = {};
	const self = {
		addEventListener: (kind, listener) => { listeners[kind] = listener; },
		skipWaiting: () => done.push(["skipWaiting"]),
		registration: {
			scope: "https://leafward.example/",
			showNotification: async (title, options) => { done.push(["show", title, options]); }
		},
		clients: {
			matchAll: async () => open.map((url) => ({ url, focus: async () => { done.push(["focus", url]); } })),
			openWindow: async (url) => { done.push(["open", url]); }
		}
	};
	vm.runInNewContext(source("push-worker.js"), { self, URL });
	return async (kind, event) => {
		const waits = [];
		listeners[kind]({ ...event, waitUntil: (promise) => waits.push(promise) });
		await Promise.all(waits);
	};
}

const data = (text) => ({ json: () => JSON.parse(text), text: () => text });

const pressed = (link) => ({ notification: { data: { link }, close: () => done.push(["close"]) } });

/** A page with the elements that the template has; says what is there, and what the script made of it. */
function page(browser) {
	const element = (more) => ({ hidden: false, textContent: "", value: "", listeners: {}, dataset: {},
		addEventListener(kind, listener) { this.listeners[kind] = listener; }, reportValidity: () => true,
		submit() { done.push(["submit", this.name]); }, ...more });
	const here = element({ hidden: true });
	const row = element({ name: "row", querySelector: () => here });
	const words = {};
	for (const one of ["unsupported", "install", "denied", "ready", "here", "asking", "failed"]) {
		words[one] = one;
	}
	const elements = {
		"add": element({ name: "add", hidden: true, dataset: { key: "BAEC_-8", worker: "/push-worker.js" } }),
		"push-state": element({ textContent: "no script" }),
		"push-words": element({ dataset: words }),
		"label": element({ value: "phone" }),
		"endpoint": element({}), "p256dh": element({}), "auth": element({})
	};
	const subscription = (endpoint) => ({
		endpoint,
		toJSON: () => ({ endpoint, keys: { p256dh: "point", auth: "secret" } }),
		unsubscribe: async () => { done.push(["unsubscribe", endpoint]); browser.subscribed = null; return true; }
	});
	const pushManager = {
		getSubscription: async () => browser.subscribed ? subscription(browser.subscribed) : null,
		subscribe: async (options) => {
			done.push(["subscribe", options.userVisibleOnly, Array.from(options.applicationServerKey)]);
			if (browser.broken) {
				throw new Error("no push service");
			}
			return subscription("https://push.example.net/new");
		}
	};
	const registration = { pushManager };
	const navigator = { userAgent: browser.agent || "Firefox" };
	const Notification = {
		permission: browser.permission || "default",
		requestPermission: async () => { done.push(["ask"]); Notification.permission = browser.answer; return browser.answer; }
	};
	const window = {};
	if (!browser.old) {
		window.PushManager = {};
		window.Notification = Notification;
		navigator.serviceWorker = {
			getRegistration: async () => browser.subscribed ? registration : undefined,
			register: async (address) => { done.push(["register", address]); return registration; },
			ready: Promise.resolve(registration)
		};
	}
	const document = {
		getElementById: (id) => elements[id],
		querySelector: (selector) => selector === "[data-print='" + browser.print + "']" ? row : null
	};
	vm.runInNewContext(source("push.js"), { window, navigator, document, Notification, crypto: webcrypto, TextEncoder,
		atob });
	return { elements, row, here };
}

const settled = () => new Promise((resolve) => setTimeout(resolve, 50));

const said = (shown) => done.push(["state", shown.elements["push-state"].textContent],
	["form", shown.elements.add.hidden ? "hidden" : "shown"]);

const submit = async (form) => {
	await form.listeners.submit({ preventDefault: () => done.push(["prevented"]) });
	await settled();
};

const scenes = {
	async note() {
		const happens = worker([]);
		await happens("push", { data: data('{"title":"Frost tonight","body":"Cover it.","link":"/tasks/1","tag":"t1"}') });
	},
	async rubbish() {
		const happens = worker([]);
		for (const sent of [null, data("no json"), data("null"), data("7"), data('{"title":1,"body":{},"tag":""}')]) {
			await happens("push", { data: sent });
		}
	},
	async press() {
		const happens = worker([]);
		for (const link of ["https://leafward.example/tasks/1?a=b", "/tasks/2", "https://elsewhere.example/x",
			"javascript:alert(1)", "//elsewhere.example/y", undefined, "https://["]) {
			await happens("notificationclick", pressed(link));
		}
	},
	async pressAgain() {
		const happens = worker(["https://leafward.example/sites", "https://leafward.example/tasks/1"]);
		await happens("notificationclick", pressed("/tasks/1"));
	},
	async old() {
		said(page({ old: true }));
		said(page({ old: true, agent: "Mozilla/5.0 (iPhone; CPU iPhone OS 18_0 like Mac OS X)" }));
	},
	async add() {
		const shown = page({ answer: "granted" });
		await settled();
		said(shown);
		await submit(shown.elements.add);
		done.push(["values", ...["endpoint", "p256dh", "auth"].map((id) => shown.elements[id].value)]);
	},
	async refused() {
		const shown = page({ answer: "denied" });
		await settled();
		await submit(shown.elements.add);
		said(shown);
	},
	async deniedBefore() {
		const shown = page({ permission: "denied" });
		await settled();
		said(shown);
	},
	async noService() {
		const shown = page({ answer: "granted", broken: true });
		await settled();
		await submit(shown.elements.add);
		said(shown);
	},
	async unknownHere() {
		const shown = page({ answer: "granted", permission: "granted", subscribed: "https://push.example.net/old" });
		await settled();
		said(shown);
		await submit(shown.elements.add);
	},
	async knownHere() {
		const print = process.argv[4];
		const shown = page({ permission: "granted", subscribed: "https://push.example.net/mine", print });
		await settled();
		said(shown);
		done.push(["here", !shown.here.hidden]);
		await submit(shown.row);
	}
};

await scenes[scene]();
console.log(JSON.stringify(done));
