package org.leafward.accounts.web;

import java.time.Duration;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.session.web.http.CookieSerializer;
import org.springframework.session.web.http.DefaultCookieSerializer;

/**
 * The one cookie. Where readers come by TLS its name begins with {@code __Host-}, so that
 * no neighbouring host can set it (RFC 6265bis, section 4.1.3.2).
 */
@Configuration(proxyBeanMethods = false)
class SessionCookie {

	@Bean
	CookieSerializer sessionCookieSerializer(@Value("${leafward.base-url}") String baseUrl,
			@Value("${spring.session.timeout}") Duration lasts) {
		DefaultCookieSerializer cookie = new DefaultCookieSerializer();
		cookie.setUseHttpOnlyCookie(true);
		cookie.setSameSite("Lax");
		cookie.setCookiePath("/");
		cookie.setCookieMaxAge((int) lasts.toSeconds());
		if (baseUrl.startsWith("https:")) {
			cookie.setCookieName("__Host-SESSION");
			cookie.setUseSecureCookie(true);
		}
		return cookie;
	}

}
