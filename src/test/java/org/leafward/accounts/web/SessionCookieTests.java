package org.leafward.accounts.web;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.session.web.http.CookieSerializer.CookieValue;

import static org.assertj.core.api.Assertions.assertThat;

class SessionCookieTests {

	/** RFC 6265bis, section 4.1.3.2: secure, no domain, path of the whole host. */
	@Test
	void theCookieIsBoundToTheHostWhereThereIsTls() {
		assertThat(cookie("https://care.example.org")).startsWith("__Host-SESSION=")
			.contains("; Secure", "; HttpOnly", "; SameSite=Lax", "; Path=/")
			.doesNotContain("Domain=");
	}

	@Test
	void withoutTlsItStillIsForTheServerOnly() {
		assertThat(cookie("http://localhost:8080")).startsWith("SESSION=")
			.contains("; HttpOnly", "; SameSite=Lax")
			.doesNotContain("Secure");
	}

	private static String cookie(String baseUrl) {
		MockHttpServletResponse response = new MockHttpServletResponse();
		new SessionCookie().sessionCookieSerializer(baseUrl, Duration.ofDays(14))
			.writeCookieValue(new CookieValue(new MockHttpServletRequest(), response, "one"));
		return response.getHeader("Set-Cookie");
	}

}
