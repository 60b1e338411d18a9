package org.leafward.pages.web;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.leafward.pages.NotForYou;
import org.springframework.boot.webmvc.error.ErrorController;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.RequestMapping;

/**
 * Answers what filters refused before any controller was found: addresses with tricks in
 * them, forms without their secret, methods that nobody knows.
 */
@Controller
class UnhandledErrors implements ErrorController {

	private final ErrorAnswers answers;

	UnhandledErrors(ErrorAnswers answers) {
		this.answers = answers;
	}

	@RequestMapping("/error")
	Object answer(HttpServletRequest request, HttpServletResponse response) {
		// Security marks pages, but not what it refuses to look at.
		if (!response.containsHeader(HttpHeaders.CACHE_CONTROL)) {
			SecretAddresses.mark(response);
		}
		Object code = request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE);
		HttpStatus status = (code instanceof Integer number) ? HttpStatus.resolve(number) : HttpStatus.NOT_FOUND;
		Object thrown = request.getAttribute(RequestDispatcher.ERROR_EXCEPTION);
		HttpStatus known = (status != null) ? status : HttpStatus.BAD_REQUEST;
		// The server's own exceptions say nothing here; its status does.
		Trouble trouble = (thrown instanceof Exception ex && !Trouble.of(ex).status().is5xxServerError())
				? Trouble.of(ex) : Trouble.of(known);
		if (request.getAttribute(NotForYou.ATTRIBUTE) instanceof NotForYou refused && known == HttpStatus.FORBIDDEN) {
			trouble = Trouble.of(known, refused.what(), null, refused.mend());
		}
		Object address = request.getAttribute(RequestDispatcher.ERROR_REQUEST_URI);
		String path = (address != null) ? address.toString() : "";
		if (!forProgram(path)) {
			return this.answers.page(trouble, request, response);
		}
		HttpStatus answered = HttpStatus.valueOf(trouble.status().value());
		return ResponseEntity.status(answered)
			.contentType(MediaType.APPLICATION_PROBLEM_JSON)
			.body(ProblemText.of(answered, trouble));
	}

	/** The address may be anything here, so only its beginning is looked at. */
	static boolean forProgram(String path) {
		return path.matches("/+api(?:[/;%].*)?");
	}

}
