package org.leafward.counties.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.leafward.advisories.Advisories;
import org.leafward.advisories.Advisory;
import org.leafward.feeds.FeedAddresses;
import org.leafward.feeds.FeedDocument;
import org.leafward.feeds.core.AdvisoryEntries;
import org.leafward.feeds.core.FeedEntry;
import org.leafward.feeds.core.TaskEntries;
import org.leafward.feeds.ical.CalendarWriter;
import org.leafward.feeds.ical.CalendarWriter.Before;
import org.leafward.feeds.ical.CalendarWriter.Component;
import org.leafward.feeds.ical.CalendarWriter.Head;
import org.leafward.feeds.web.CalendarAnswer;
import org.leafward.language.Language;
import org.leafward.language.Phrasebooks;
import org.leafward.language.Units;
import org.leafward.measure.DayWindow;
import org.leafward.regions.County;
import org.leafward.regions.Regions;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestMethod;

/**
 * The advisories of a county as a calendar for everybody, beside its Atom feed. A few
 * entries of what is in memory, so it is written for whoever asks; the same advisories
 * give the same octets on all nodes.
 */
@Controller
class CountyAdvisories {

	/** What ended is kept as long, so that a program that asks rarely sees its end. */
	private static final int DAYS_BACK = 60;

	/** A frost that is foreseen at noon comes before the next half day. */
	private static final Duration REFRESH = Duration.ofHours(1);

	/** Of a calendar in which nothing has been yet. */
	private static final Instant BEGINNING = Instant.parse("2026-01-01T00:00:00Z");

	private final Advisories advisories;

	private final Regions regions;

	private final Phrasebooks books;

	private final FeedAddresses addresses;

	private final CalendarWriter writer = new CalendarWriter();

	private final CalendarAnswer answer;

	CountyAdvisories(Advisories advisories, Regions regions, Phrasebooks books, FeedAddresses addresses, Clock clock) {
		this.advisories = advisories;
		this.regions = regions;
		this.books = books;
		this.addresses = addresses;
		// Advisories are for hours; programs that ask often are answered 304.
		this.answer = new CalendarAnswer(clock, "public, max-age=60");
	}

	@RequestMapping(path = "/advisories/{county}/advisories.ics", method = { RequestMethod.GET, RequestMethod.HEAD })
	void inEnglish(@PathVariable String county, HttpServletRequest request, HttpServletResponse response)
			throws IOException {
		answer(county, Language.ENGLISH, request, response);
	}

	@RequestMapping(path = "/advisories/{county}/es/advisories.ics", method = { RequestMethod.GET, RequestMethod.HEAD })
	void inSpanish(@PathVariable String county, HttpServletRequest request, HttpServletResponse response)
			throws IOException {
		answer(county, Language.SPANISH, request, response);
	}

	private void answer(String code, Language language, HttpServletRequest request, HttpServletResponse response)
			throws IOException {
		response.setHeader("X-Robots-Tag", "noindex, nofollow");
		response.setHeader("Referrer-Policy", "no-referrer");
		Optional<County> county = this.regions.find(code);
		if (county.isEmpty()) {
			CalendarAnswer.refuse(request, response, HttpServletResponse.SC_NOT_FOUND,
					"There is no calendar at this address. Take one from %s.\n"
						.formatted(this.addresses.absolute("/advisories")));
			return;
		}
		FeedDocument document = document(county.get(), language);
		if (!this.answer.unchanged(request, response, document.etag(), document.lastModified())) {
			this.answer.send(request, response, document, "advisories.ics");
		}
	}

	private FeedDocument document(County county, Language language) {
		List<Advisory> all = this.advisories.ofCounty(county.code(), DAYS_BACK);
		Instant modified = all.stream().map(Advisory::sent).max(Comparator.naturalOrder()).orElse(BEGINNING);
		String base = this.addresses.absolute("").replaceFirst("/+$", "");
		TaskEntries words = new TaskEntries(this.books.of(language), Units.BOTH, base);
		AdvisoryEntries entries = new AdvisoryEntries(words, language, base);
		List<FeedEntry> shown = all.isEmpty() ? List.of(none(county, words)) : all.stream().map(entries::of).toList();
		Head head = new Head(words.said("Garden advisories") + ", " + county.name(),
				words.said("Who must hear of them in time is told by mail or in a browser."), language.code(), REFRESH);
		return FeedDocument.of(this.writer.write(head, shown, Component.EVENT, null, Before.nothing(modified)).octets(),
				modified);
	}

	/** A calendar has one component at least (RFC 5545, section 3.6). */
	private FeedEntry none(County county, TaskEntries words) {
		LocalDate day = LocalDate.ofInstant(BEGINNING, ZoneOffset.UTC);
		return new FeedEntry("no-advisory-" + county.code() + TaskEntries.DOMAIN, 0, BEGINNING, BEGINNING,
				DayWindow.of(day), words.said("No advisory yet"),
				words.said("This calendar works. Advisories appear here once one is sent for the county."),
				this.addresses.absolute("/advisories/" + county.code()), null, List.of(words.said("Advisory")),
				FeedEntry.Standing.OPEN);
	}

}
