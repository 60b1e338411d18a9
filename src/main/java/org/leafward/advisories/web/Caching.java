package org.leafward.advisories.web;

import java.time.Duration;
import org.leafward.pages.Viewer;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.http.HttpHeaders;
import org.springframework.web.filter.ShallowEtagHeaderFilter;
import jakarta.servlet.http.HttpServletResponse;

/**
 * How long others may keep what everybody may read. A page differs by who looks and by
 * the language that is asked for.
 */
@Configuration(proxyBeanMethods = false)
class Caching {

	/** Who reads it after that asks again, and mostly hears that nothing changed. */
	static final Duration SHORT = Duration.ofSeconds(60);

	static final String FOR_A_MINUTE = "public, max-age=60";

	static final String FOR_GOOD = "public, max-age=31536000, immutable";

	private static final String FOR_AN_HOUR = "public, max-age=3600";

	/**
	 * Tells by a tag whether an answer is the one that was kept (RFC 9110, section
	 * 13.1.2).
	 */
	@Bean
	FilterRegistrationBean<ShallowEtagHeaderFilter> advisoryTags() {
		ShallowEtagHeaderFilter filter = new ShallowEtagHeaderFilter();
		// Packed or not, it is the same answer.
		filter.setWriteWeakETag(true);
		FilterRegistrationBean<ShallowEtagHeaderFilter> registration = new FilterRegistrationBean<>(filter);
		registration.addUrlPatterns("/advisories", "/advisories/*", "/season-dates", "/season-dates/*");
		return registration;
	}

	/** A page that strangers get alike, but for language. */
	static void page(Viewer viewer, HttpServletResponse response) {
		if (viewer.stranger()) {
			response.setHeader(HttpHeaders.CACHE_CONTROL, FOR_A_MINUTE);
			response.addHeader(HttpHeaders.VARY, "Cookie, Accept-Language");
		}
	}

	static String anHour() {
		return FOR_AN_HOUR;
	}

}
