package org.leafward.feeds.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Clock;
import java.util.Optional;
import org.leafward.feeds.FeedDocument;
import org.leafward.feeds.FeedDocuments;
import org.leafward.feeds.FeedForm;
import org.leafward.feeds.FeedState;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestMethod;

/**
 * The address that calendars subscribe to. It answers with the stored octets whatever the
 * client accepts, never redirects, never asks for a sign-in and sets no cookie.
 */
@Controller
class FeedHttp {

	private final FeedDocuments documents;

	private final CalendarAnswer answer;

	FeedHttp(FeedDocuments documents, Clock clock) {
		this.documents = documents;
		// The address is a secret, which no shared cache may keep.
		this.answer = new CalendarAnswer(clock, "private, max-age=900");
	}

	@RequestMapping(path = "/f/{token}/tasks.ics", method = { RequestMethod.GET, RequestMethod.HEAD })
	void tasks(@PathVariable String token, HttpServletRequest request, HttpServletResponse response)
			throws IOException {
		calendar(token, FeedForm.EVENTS, request, response);
	}

	@RequestMapping(path = "/f/{token}/todo.ics", method = { RequestMethod.GET, RequestMethod.HEAD })
	void todos(@PathVariable String token, HttpServletRequest request, HttpServletResponse response)
			throws IOException {
		calendar(token, FeedForm.TODOS, request, response);
	}

	private void calendar(String token, FeedForm form, HttpServletRequest request, HttpServletResponse response)
			throws IOException {
		response.setHeader("X-Robots-Tag", "noindex, nofollow");
		response.setHeader("Referrer-Policy", "no-referrer");
		Optional<FeedState> found = this.documents.find(token, form);
		if (found.isEmpty()) {
			CalendarAnswer.refuse(request, response, HttpServletResponse.SC_NOT_FOUND,
					"There is no calendar at this address.\n");
		}
		else if (found.get().revoked()) {
			CalendarAnswer.refuse(request, response, HttpServletResponse.SC_GONE,
					found.get().expired() ? "This calendar ended, as no program had fetched it for 18 months.\n"
							: "This calendar address was revoked. Ask its owner for a new one.\n");
		}
		else {
			answer(found.get(), request, response);
		}
	}

	private void answer(FeedState state, HttpServletRequest request, HttpServletResponse response) throws IOException {
		if (state.etag() != null && state.lastModified() != null
				&& this.answer.unchanged(request, response, state.etag(), state.lastModified())) {
			return;
		}
		Optional<FeedDocument> document = this.documents.read(state);
		if (document.isEmpty()) {
			CalendarAnswer.refuse(request, response, HttpServletResponse.SC_GONE,
					"This calendar address was revoked just now.\n");
			return;
		}
		this.answer.send(request, response, document.get(), state.form().file());
	}

}
