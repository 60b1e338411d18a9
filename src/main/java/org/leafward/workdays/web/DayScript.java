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

/** The script of the checklist, which keeps ticks on the phone until they are sent. */
@RestController
class DayScript {

	private static final MediaType JAVASCRIPT = MediaType.parseMediaType("text/javascript;charset=UTF-8");

	private final byte[] script;

	DayScript() {
		try (InputStream in = new ClassPathResource("static/js/checklist.js").getInputStream()) {
			this.script = in.readAllBytes();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	@GetMapping("/js/checklist.js")
	ResponseEntity<byte[]> script() {
		return ResponseEntity.ok().contentType(JAVASCRIPT).cacheControl(CacheControl.noCache()).body(this.script);
	}

}
