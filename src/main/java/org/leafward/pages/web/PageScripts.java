package org.leafward.pages.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.Duration;
import org.springframework.core.io.ClassPathResource;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/**
 * The scripts of pages that change in place: htmx as its makers published it, from its
 * web jar, and a few lines of the house. No page needs them, and strangers' pages have
 * none.
 */
@RestController
class PageScripts {

	private static final String HTMX = "META-INF/resources/webjars/htmx.org/2.0.8/dist/htmx.min.js";

	private static final MediaType JAVASCRIPT = MediaType.parseMediaType("text/javascript;charset=UTF-8");

	private final byte[] htmx = read(HTMX);

	private final byte[] live = read("static/js/live.js");

	/** Its address has its version, so it may be kept for as long as caches like. */
	@GetMapping("/js/htmx-2.0.8.min.js")
	ResponseEntity<byte[]> htmx() {
		return ResponseEntity.ok()
			.contentType(JAVASCRIPT)
			.cacheControl(CacheControl.maxAge(Duration.ofDays(365)).cachePublic().immutable())
			.body(this.htmx);
	}

	@GetMapping("/js/live.js")
	ResponseEntity<byte[]> live() {
		return ResponseEntity.ok().contentType(JAVASCRIPT).cacheControl(CacheControl.noCache()).body(this.live);
	}

	private static byte[] read(String name) {
		try (InputStream in = new ClassPathResource(name).getInputStream()) {
			return in.readAllBytes();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

}
