package org.leafward.regions.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import org.springframework.core.io.ClassPathResource;
import org.springframework.stereotype.Component;

/**
 * The part of the style sheet that a map needs when it stands alone: a picture in a page
 * sees neither the page's style sheet nor any other file. Colours are so still written in
 * one place.
 */
@Component
class MapStyle {

	private static final String SHEET = "static/css/leafward.css";

	private final String rules;

	MapStyle() {
		String sheet = sheet();
		this.rules = between(sheet, ":root {", "/* Ground */") + between(sheet, "/* Maps */", "/* End of maps */");
	}

	private static String sheet() {
		try (InputStream stream = new ClassPathResource(SHEET).getInputStream()) {
			return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
		}
		catch (IOException ex) {
			throw new UncheckedIOException(SHEET, ex);
		}
	}

	private static String between(String sheet, String begin, String end) {
		int from = sheet.indexOf(begin);
		int to = sheet.indexOf(end, Math.max(0, from));
		if (from < 0 || to < 0) {
			throw new IllegalStateException("%s has no part from '%s' to '%s'".formatted(SHEET, begin, end));
		}
		return sheet.substring(from, to);
	}

	/**
	 * The rules.
	 * @return CSS
	 */
	String rules() {
		return this.rules;
	}

	/**
	 * What a content policy calls exactly these rules (Content Security Policy Level 3,
	 * section 2.3.1).
	 * @return for example {@code 'sha256-...'}
	 */
	String source() {
		try {
			byte[] hash = MessageDigest.getInstance("SHA-256").digest(this.rules.getBytes(StandardCharsets.UTF_8));
			return "'sha256-" + Base64.getEncoder().encodeToString(hash) + "'";
		}
		catch (NoSuchAlgorithmException ex) {
			throw new IllegalStateException("every Java platform has SHA-256", ex);
		}
	}

}
