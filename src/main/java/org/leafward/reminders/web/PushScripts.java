package org.leafward.reminders.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.springframework.core.io.ClassPathResource;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/**
 * The two scripts of the house: one asks the browser for a subscription, one runs in the
 * browser and shows what is pushed. Browsers look for a new worker while nobody is signed
 * in too, so both are open to everybody.
 */
@RestController
class PushScripts {

	private static final MediaType JAVASCRIPT = MediaType.parseMediaType("text/javascript;charset=UTF-8");

	private final byte[] page = read("push.js");

	private final byte[] worker = read("push-worker.js");

	@GetMapping("/js/push.js")
	ResponseEntity<byte[]> page() {
		return answer().body(this.page);
	}

	/** At the top, since a worker's reach is the folder that it lies in. */
	@GetMapping("/push-worker.js")
	ResponseEntity<byte[]> worker() {
		return answer().header("Service-Worker-Allowed", "/").body(this.worker);
	}

	private static ResponseEntity.BodyBuilder answer() {
		return ResponseEntity.ok().contentType(JAVASCRIPT).cacheControl(CacheControl.noCache());
	}

	private static byte[] read(String name) {
		try (InputStream in = new ClassPathResource("static/js/" + name).getInputStream()) {
			return in.readAllBytes();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

}
