package org.leafward.spoken.web;

import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leafward.language.Language;
import org.leafward.language.Speech;
import org.leafward.language.Units;
import org.leafward.measure.BadInput;
import org.springframework.http.HttpHeaders;
import org.springframework.web.util.WebUtils;

/**
 * How a request wants its page: as its browser was told here, else by the languages that
 * the browser asks for (RFC 9110, section 12.5.4).
 */
final class Reader {

	/** Holds a choice and nothing about a person. */
	static final String COOKIE = "reading";

	private Reader() {
	}

	static Speech of(HttpServletRequest request) {
		Cookie cookie = WebUtils.getCookie(request, COOKIE);
		return Optional.ofNullable(cookie)
			.flatMap((one) -> read(one.getValue()))
			.orElseGet(() -> new Speech(asked(request), Units.BOTH));
	}

	/** What the cookie says, for example {@code es.metric}. */
	static String write(Speech speech) {
		return speech.language().code() + "." + speech.units().code();
	}

	private static Optional<Speech> read(@Nullable String value) {
		String[] parts = (value != null) ? value.split("\\.", 3) : new String[0];
		if (parts.length != 2) {
			return Optional.empty();
		}
		try {
			return Optional.of(new Speech(Language.of(COOKIE, parts[0]), Units.of(COOKIE, parts[1])));
		}
		catch (BadInput ex) {
			// Of an older or a newer server, or somebody's own: as if there were none.
			return Optional.empty();
		}
	}

	private static Language asked(HttpServletRequest request) {
		if (request.getHeader(HttpHeaders.ACCEPT_LANGUAGE) == null) {
			return Language.ENGLISH;
		}
		List<Locale> wanted = Collections.list(request.getLocales());
		return wanted.stream()
			.flatMap((locale) -> Arrays.stream(Language.values())
				.filter((language) -> language.code().equals(locale.getLanguage())))
			.findFirst()
			.orElse(Language.ENGLISH);
	}

}
