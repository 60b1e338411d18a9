package org.leafward.feeds;

import java.net.URI;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.care.CareTask;
import org.leafward.care.TaskCalendar;
import org.leafward.feeds.core.FeedEntry;
import org.leafward.feeds.core.FeedWindow;
import org.leafward.feeds.core.TaskEntries;
import org.leafward.feeds.ical.CalendarWriter;
import org.leafward.feeds.store.DocumentTable.Claimed;
import org.leafward.measure.BadInput;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/** Builds documents from the tasks of the day. */
@Component
class FeedBuilder {

	private final TaskCalendar tasks;

	private final Register register;

	private final People people;

	private final String base;

	private final CalendarWriter writer = new CalendarWriter();

	/*
	 * Links must not depend on who asks, or the octets would: the address is a setting.
	 */
	FeedBuilder(TaskCalendar tasks, Register register, People people,
			@Value("${leafward.base-url:http://localhost:8080}") String base) {
		this.tasks = tasks;
		this.register = register;
		this.people = people;
		this.base = checked(base.isBlank() ? "http://localhost:8080" : base.strip());
	}

	private static String checked(String base) {
		try {
			URI address = URI.create(base);
			if (address.getHost() != null && List.of("http", "https").contains(address.getScheme())
					&& address.getQuery() == null && address.getFragment() == null) {
				return base.replaceFirst("/+$", "");
			}
		}
		catch (IllegalArgumentException ex) {
			// told below
		}
		throw new BadInput("'%s' is not an address of a server".formatted(base), "leafward.base-url",
				"write it like https://calendar.example.org");
	}

	/**
	 * Builds a document.
	 * @param feed the feed
	 * @param day the day to build it for, UTC
	 * @return text/calendar in UTF-8; the same for the same tasks and day
	 */
	byte[] build(Claimed feed, LocalDate day) {
		FeedWindow window = new FeedWindow(day);
		UUID what = feed.what();
		List<CareTask> found = (feed.kind() == FeedKind.SITE) ? this.tasks.ofSite(new SiteId(what), window.days())
				: this.tasks.ofPerson(new PersonId(what), window.days());
		List<FeedEntry> entries = new ArrayList<>(TaskEntries.of(found, window, this.base));
		if (entries.isEmpty()) {
			entries.add(TaskEntries.nothingPlanned(feed.id().value(), feed.life().created()));
		}
		if (feed.life().announcedOn(day)) {
			entries.add(feed.life().announcement(feed.id().value()));
		}
		String name = name(feed.kind(), what);
		return this.writer.write("Plant care: " + name,
				"What to do, what to leave, and when: %s. Dates move with the weather.".formatted(name), entries);
	}

	private String name(FeedKind kind, UUID what) {
		return (kind == FeedKind.SITE) ? this.register.find(new SiteId(what)).map(Site::name).orElse("a site")
				: this.people.find(new PersonId(what)).map(Person::name).orElse("all sites");
	}

}
