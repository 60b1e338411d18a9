package org.leafward.advisories.web;

import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import java.util.Arrays;
import java.util.Collections;
import java.util.Locale;
import java.util.Optional;
import org.leafward.language.Language;
import org.springframework.http.HttpHeaders;
import org.springframework.ui.Model;
import org.springframework.web.context.request.RequestContextHolder;
import org.springframework.web.context.request.ServletRequestAttributes;
import org.springframework.web.util.WebUtils;

/**
 * In which language a page is read, for words that specialists wrote in both. It is what
 * the frame of the page goes by, which lies above this module: the same cookie, else what
 * the browser asks for.
 */
final class ReaderLanguage {

	private static final String COOKIE = "reading";

	private ReaderLanguage() {
	}

	static Language of(Model model) {
		return (RequestContextHolder.getRequestAttributes() instanceof ServletRequestAttributes attributes)
				? of(attributes.getRequest()) : Language.ENGLISH;
	}

	static Language of(HttpServletRequest request) {
		return Optional.ofNullable(WebUtils.getCookie(request, COOKIE))
			.map(Cookie::getValue)
			.flatMap((value) -> code(value.split("\\.", 2)[0]))
			.orElseGet(() -> asked(request));
	}

	private static Language asked(HttpServletRequest request) {
		if (request.getHeader(HttpHeaders.ACCEPT_LANGUAGE) == null) {
			return Language.ENGLISH;
		}
		return Collections.list(request.getLocales())
			.stream()
			.map(Locale::getLanguage)
			.flatMap((code) -> code(code).stream())
			.findFirst()
			.orElse(Language.ENGLISH);
	}

	/**
	 * The language of a code.
	 * @param code for example {@code es}
	 * @return empty when there is none
	 */
	static Optional<Language> code(String code) {
		return Arrays.stream(Language.values()).filter((one) -> one.code().equalsIgnoreCase(code)).findFirst();
	}

}
