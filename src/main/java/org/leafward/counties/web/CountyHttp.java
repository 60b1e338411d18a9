package org.leafward.counties.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Clock;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leafward.counties.CountyCalendar;
import org.leafward.counties.CountyCalendars;
import org.leafward.counties.core.CountyAddress;
import org.leafward.feeds.FeedAddresses;
import org.leafward.feeds.FeedDocument;
import org.leafward.feeds.web.CalendarAnswer;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestMethod;

/**
 * The public addresses that calendars subscribe to. They answer as the secret ones do,
 * and may be kept by shared caches. What is nearly an address is told the right one in
 * words instead of being sent there, since several programs lose a subscription on a
 * redirect.
 */
@Controller
class CountyHttp {

	private static final String RETRY_SECONDS = "120";

	private final CountyCalendars calendars;

	private final FeedAddresses addresses;

	private final CalendarAnswer answer;

	CountyHttp(CountyCalendars calendars, FeedAddresses addresses, Clock clock) {
		this.calendars = calendars;
		this.addresses = addresses;
		this.answer = new CalendarAnswer(clock, "public, max-age=3600");
	}

	@RequestMapping(path = { "/c/{county}/{kinds}/tasks.ics", "/c/{county}/{kinds}/{speech}/tasks.ics" },
			method = { RequestMethod.GET, RequestMethod.HEAD })
	void tasks(@PathVariable String county, @PathVariable String kinds,
			@PathVariable(required = false) @Nullable String speech, HttpServletRequest request,
			HttpServletResponse response) throws IOException {
		// The page that tells the address may be found, the file is no page.
		response.setHeader("X-Robots-Tag", "noindex, nofollow");
		response.setHeader("Referrer-Policy", "no-referrer");
		try {
			CountyAddress address = CountyAddress.read(county, kinds, speech, this.calendars.codes());
			if (exact(address, kinds, speech)) {
				answer(this.calendars.find(address), request, response);
			}
			else {
				this.calendars.find(address);
				refuse(request, response,
						"This calendar is at %s only.\n".formatted(this.addresses.absolute(address.path())));
			}
		}
		catch (BadInput ex) {
			refuse(request, response,
					"There is no calendar at this address: %s. To mend it, %s, or take an address from %s.\n"
						.formatted(ex.what(), ex.mend(), page()));
		}
		catch (NotThere ex) {
			refuse(request, response, ex.getMessage() + " Take an address from %s.\n".formatted(page()));
		}
		catch (CountyCalendars.NotYet ex) {
			response.setHeader(HttpHeaders.RETRY_AFTER, RETRY_SECONDS);
			CalendarAnswer.refuse(request, response, HttpServletResponse.SC_SERVICE_UNAVAILABLE,
					ex.getMessage() + "\n");
		}
	}

	private static boolean exact(CountyAddress address, String kinds, @Nullable String speech) {
		boolean named = address.path().endsWith("/" + address.speechCode() + "/tasks.ics");
		return kinds.equals(address.kindsCode()) && (named ? address.speechCode().equals(speech) : speech == null);
	}

	private void answer(CountyCalendar calendar, HttpServletRequest request, HttpServletResponse response)
			throws IOException {
		if (this.answer.unchanged(request, response, calendar.etag(), calendar.lastModified())) {
			return;
		}
		Optional<FeedDocument> document = this.calendars.read(calendar);
		if (document.isEmpty()) {
			throw new CountyCalendars.NotYet("This calendar is being made anew. Ask again in some minutes.");
		}
		this.answer.send(request, response, document.get(), "tasks.ics");
	}

	private String page() {
		return this.addresses.absolute("/county-calendars");
	}

	private static void refuse(HttpServletRequest request, HttpServletResponse response, String words)
			throws IOException {
		CalendarAnswer.refuse(request, response, HttpServletResponse.SC_NOT_FOUND, words);
	}

}
