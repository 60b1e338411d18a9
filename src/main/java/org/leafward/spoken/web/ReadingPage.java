package org.leafward.spoken.web;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Duration;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.leafward.language.Language;
import org.leafward.language.Speech;
import org.leafward.language.Units;
import org.leafward.measure.Findings;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseCookie;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Takes the language and the units in which somebody wants to read. */
@Controller
class ReadingPage {

	/** A path of this server: what begins with two slashes is another one. */
	private static final Pattern HERE = Pattern.compile("/(?:[^/\\\\\\p{Cntrl}][^\\\\\\p{Cntrl}]{0,500})?");

	private static final Duration KEPT = Duration.ofDays(365);

	@PostMapping("/reading")
	String read(@RequestParam(defaultValue = "") String language, @RequestParam(defaultValue = "") String units,
			@RequestParam(defaultValue = "/") String back, HttpServletResponse response) {
		Findings all = new Findings();
		Supplier<Language> tongue = all.read(() -> Language.of("language", language));
		Supplier<Units> measures = all.read(() -> Units.of("units", units));
		Speech speech = all.give(() -> new Speech(tongue.get(), measures.get()));
		response.addHeader(HttpHeaders.SET_COOKIE,
				ResponseCookie.from(Reader.COOKIE, Reader.write(speech))
					.path("/")
					.httpOnly(true)
					.sameSite("Lax")
					.maxAge(KEPT)
					.build()
					.toString());
		return "redirect:" + (HERE.matcher(back).matches() ? back : "/");
	}

}
