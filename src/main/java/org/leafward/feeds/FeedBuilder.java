package org.leafward.feeds;

import java.net.URI;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.care.CareTask;
import org.leafward.care.TaskCalendar;
import org.leafward.feeds.content.EntrySource;
import org.leafward.feeds.content.FeedSites;
import org.leafward.feeds.core.FeedEntry;
import org.leafward.feeds.core.FeedWindow;
import org.leafward.feeds.core.TaskEntries;
import org.leafward.feeds.ical.CalendarWriter;
import org.leafward.feeds.ical.CalendarWriter.Before;
import org.leafward.feeds.ical.CalendarWriter.Component;
import org.leafward.feeds.ical.CalendarWriter.Head;
import org.leafward.feeds.ical.CalendarWriter.Written;
import org.leafward.language.Phrasebook;
import org.leafward.language.Phrasebooks;
import org.leafward.language.Speech;
import org.leafward.feeds.store.DocumentTable.Claimed;
import org.leafward.measure.BadInput;
import org.leafward.register.Bed;
import org.leafward.register.BedId;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.leafward.workdays.Group;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Service;

/** Builds documents from the tasks of the day. */
@Service
class FeedBuilder {

	private final TaskCalendar tasks;

	private final Register register;

	private final People people;

	private final Phrasebooks books;

	private final List<EntrySource> others;

	private final FeedSites sites;

	private final String base;

	private final CalendarWriter writer = new CalendarWriter();

	private final Map<Speech, Spoken> words = new ConcurrentHashMap<>();

	/** Words and the book that they come from. */
	private record Spoken(Phrasebook book, TaskEntries entries) {
	}

	/*
	 * Links must not depend on who asks, or the octets would: the address is a setting.
	 */
	FeedBuilder(TaskCalendar tasks, Register register, People people, Phrasebooks books, List<EntrySource> others,
			FeedSites sites, @Value("${leafward.base-url:http://localhost:8080}") String base) {
		this.tasks = tasks;
		this.register = register;
		this.people = people;
		this.books = books;
		this.others = List.copyOf(others);
		this.sites = sites;
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
	 * @param before the document before
	 * @return the same for the same tasks, day and document before
	 */
	Written build(Claimed feed, LocalDate day, Before before) {
		FeedOptions options = feed.options();
		FeedWindow window = new FeedWindow(day, options.behind(), options.ahead());
		List<CareTask> found = tasks(feed, window);
		TaskEntries words = words(options.speech());
		List<FeedEntry> entries = new ArrayList<>(
				words.of(found.stream().filter((task) -> options.has(task.kind())).toList(), window));
		if (feed.form() == FeedForm.TODOS) {
			entries.removeIf((entry) -> !entry.todo());
		}
		else {
			this.others.forEach((other) -> entries.addAll(other.entries(feed, window, words, this.base)));
			entries.sort(TaskEntries.ORDER);
		}
		if (entries.isEmpty()) {
			entries.add(words.nothingPlanned(feed.id().value(), feed.life().created()));
		}
		if (feed.life().announcedOn(day)) {
			entries.add(words.ending(feed.id().value(), feed.life()));
		}
		String name = name(feed);
		return this.writer.write(new Head(words.name(name), words.about(name), options.speech().language().code()),
				entries, (feed.form() == FeedForm.TODOS) ? Component.TODO : Component.EVENT, options.alarm(), before);
	}

	/** Words remember what they said, until the book says something else. */
	private TaskEntries words(Speech speech) {
		Phrasebook book = this.books.of(speech.language());
		return this.words.compute(speech, (same, known) -> (known != null && known.book() == book) ? known
				: new Spoken(book, new TaskEntries(book, speech.units(), this.base)))
			.entries();
	}

	private List<CareTask> tasks(Claimed feed, FeedWindow window) {
		return switch (feed.kind()) {
			case PERSON -> this.tasks.ofPerson(new PersonId(feed.what()), window.days());
			case SITE -> this.tasks.ofSite(new SiteId(feed.what()), window.days());
			case GROUP -> this.sites.of(feed)
				.stream()
				.flatMap((site) -> this.tasks.ofSite(site, window.days()).stream())
				.toList();
			case BED -> this.tasks.ofBed(new BedId(feed.what()), window.days());
		};
	}

	private String name(Claimed feed) {
		return switch (feed.kind()) {
			case PERSON -> this.people.find(new PersonId(feed.what())).map(Person::name).orElse("all sites");
			case SITE -> this.register.find(new SiteId(feed.what())).map(Site::name).orElse("a site");
			case GROUP -> this.sites.group(feed).map(Group::name).orElse("a group");
			case BED -> this.sites.bed(feed).map(Bed::name).orElse("a bed");
		};
	}

}
