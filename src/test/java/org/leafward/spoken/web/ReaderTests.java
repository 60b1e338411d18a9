package org.leafward.spoken.web;

import jakarta.servlet.http.Cookie;
import java.util.Locale;
import java.util.Locale.LanguageRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.language.Language;
import org.leafward.language.Speech;
import org.leafward.language.Units;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.mock.web.MockHttpServletResponse;

import static org.assertj.core.api.Assertions.assertThat;

class ReaderTests {

	@Test
	void aBrowserIsTakenAtItsWordUntilSomebodyChose() {
		assertThat(Reader.of(asking(null))).isEqualTo(Speech.USUAL);
		assertThat(Reader.of(asking("es-MX,es;q=0.9,en;q=0.5")).language()).isEqualTo(Language.SPANISH);
		assertThat(Reader.of(asking("fr,en;q=0.9,es;q=0.8")).language()).isEqualTo(Language.ENGLISH);
		MockHttpServletRequest request = asking("es");
		request.setCookies(new Cookie(Reader.COOKIE, "en.us"));
		assertThat(Reader.of(request)).isEqualTo(new Speech(Language.ENGLISH, Units.US));
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "es", "es.", "xx.us", "es.us.more", "....", "es.acres" })
	void aCookieOfNobodysMakingIsLeftAlone(String value) {
		MockHttpServletRequest request = asking("es");
		request.setCookies(new Cookie(Reader.COOKIE, value));
		assertThat(Reader.of(request)).isEqualTo(new Speech(Language.SPANISH, Units.BOTH));
	}

	@ParameterizedTest
	@ValueSource(strings = { "//other.example", "/\\other.example", "https://other.example", "other", "",
			"/x\r\nSet-Cookie: a=b" })
	void nobodyIsSentToAnotherServer(String back) {
		assertThat(new ReadingPage().read("es", "us", back, new MockHttpServletResponse())).isEqualTo("redirect:/");
	}

	@Test
	void theChoiceIsKeptInTheBrowser() {
		MockHttpServletResponse response = new MockHttpServletResponse();
		assertThat(new ReadingPage().read("es", "metric", "/sites?page=2", response))
			.isEqualTo("redirect:/sites?page=2");
		assertThat(response.getHeader("Set-Cookie")).contains("reading=es.metric", "HttpOnly", "SameSite=Lax",
				"Path=/");
	}

	private static MockHttpServletRequest asking(String languages) {
		MockHttpServletRequest request = new MockHttpServletRequest();
		if (languages != null) {
			request.addHeader("Accept-Language", languages);
			request.setPreferredLocales(LanguageRange.parse(languages)
				.stream()
				.map((range) -> Locale.forLanguageTag(range.getRange()))
				.toList());
		}
		return request;
	}

}
