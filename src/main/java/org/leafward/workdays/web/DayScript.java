package org.leafward.workdays.web;

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
 * The scripts of the checklist: one keeps ticks on the phone until they are sent, the
 * other keeps the list itself. Browsers look for a new worker while nobody is signed in,
 * too.
 */
@RestController
class DayScript {

	private static final MediaType JAVASCRIPT = MediaType.parseMediaType("text/javascript;charset=UTF-8");

	private final byte[] script = read("checklist.js");

	private final byte[] worker = read("checklist-worker.js");

	private static byte[] read(String name) {
		try (InputStream in = new ClassPathResource("static/js/" + name).getInputStream()) {
			return in.readAllBytes();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	@GetMapping("/js/checklist.js")
	ResponseEntity<byte[]> script() {
		return answer().body(this.script);
	}

	/**
	 * In the folder of workdays, since a worker's reach is the folder that it lies in.
	 */
	@GetMapping("/workdays/checklist-worker.js")
	ResponseEntity<byte[]> worker() {
		return answer().header("Content-Security-Policy", "default-src 'none'; connect-src 'self'").body(this.worker);
	}

	private static ResponseEntity.BodyBuilder answer() {
		return ResponseEntity.ok().contentType(JAVASCRIPT).cacheControl(CacheControl.noCache());
	}

}
