package org.leafward.counties;

import java.lang.ref.SoftReference;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.care.CareTask;
import org.leafward.care.TaskCalendar;
import org.leafward.counties.core.CountyAddress;
import org.leafward.counties.core.CountyEntries;
import org.leafward.counties.core.Grown;
import org.leafward.feeds.FeedDocument;
import org.leafward.feeds.core.FeedEntry;
import org.leafward.feeds.core.FeedWindow;
import org.leafward.feeds.core.TaskEntries;
import org.leafward.feeds.ical.CalendarWriter;
import org.leafward.feeds.ical.CalendarWriter.Before;
import org.leafward.feeds.ical.CalendarWriter.Component;
import org.leafward.feeds.ical.CalendarWriter.Head;
import org.leafward.feeds.ical.CalendarWriter.Written;
import org.leafward.language.Phrasebooks;
import org.leafward.measure.NotThere;
import org.leafward.plants.Catalogue;
import org.leafward.plants.Species;
import org.leafward.quick.core.PlantKinds;
import org.leafward.regions.County;
import org.leafward.regions.Regions;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.Register;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Service;

/** Builds the calendars of counties from the tasks of the model gardens. */
@Service
class CountyBuilder {

	/** Enough of the past for programs that ask once a month. */
	private static final int BEHIND = 60;

	private static final int AHEAD = 365;

	private static final int COMING = 3;

	/**
	 * Sequence numbers of a new calendar count from the hours since then, so that one
	 * that was dropped and is asked for again goes on above what it had.
	 */
	private static final Instant COUNTED_FROM = Instant.parse("2026-01-01T00:00:00Z");

	private final Regions regions;

	private final Catalogue catalogue;

	private final Register register;

	private final TaskCalendar tasks;

	private final Phrasebooks books;

	private final Clock clock;

	private final String base;

	private final CalendarWriter writer = new CalendarWriter();

	/** Tasks of the garden that was read last, as calendars of one are built in a row. */
	private volatile SoftReference<Read> lately = new SoftReference<>(null);

	private record Read(String county, long version, LocalDate day, List<Grown> grown) {
	}

	CountyBuilder(Regions regions, Catalogue catalogue, Register register, TaskCalendar tasks, Phrasebooks books,
			Clock clock, @Value("${leafward.base-url:http://localhost:8080}") String base) {
		this.regions = regions;
		this.catalogue = catalogue;
		this.register = register;
		this.tasks = tasks;
		this.books = books;
		this.clock = clock;
		this.base = base.isBlank() ? "http://localhost:8080" : base.strip().replaceFirst("/+$", "");
	}

	/**
	 * A calendar just built.
	 *
	 * @param calendar what is known of it
	 * @param document its octets
	 */
	record Built(CountyCalendar calendar, FeedDocument document) {
	}

	/**
	 * Builds a calendar.
	 * @param address its address
	 * @param garden the model garden of its county
	 * @param day the day to build it for, UTC
	 * @param before what was known of it; null for a first one
	 * @param octets the document before; empty for a first one
	 * @return the same for the same tasks, day and document before, but for the moment
	 */
	Built build(CountyAddress address, Garden garden, LocalDate day, @Nullable CountyCalendar before, byte[] octets) {
		Instant now = this.clock.instant().truncatedTo(ChronoUnit.SECONDS);
		FeedWindow window = new FeedWindow(day, BEHIND, AHEAD);
		List<Grown> grown = grown(garden, window);
		List<PlantKinds.Kind> kinds = PlantKinds.of(this.catalogue.all())
			.stream()
			.filter((one) -> address.kinds().contains(one.code()))
			.toList();
		Set<String> wanted = kinds.stream()
			.flatMap((one) -> one.species().stream())
			.map((one) -> one.id().value())
			.collect(Collectors.toSet());
		int aheadBy = (before != null) ? before.aheadBy() : (int) ChronoUnit.HOURS.between(COUNTED_FROM, now);
		Set<String> shown = new Before(octets, aheadBy, now).shown();
		CountyEntries words = words(address, kinds, grown);
		List<FeedEntry> entries = new ArrayList<>(words.of(address.county(),
				grown.stream().filter((one) -> wanted.contains(one.code())).toList(), window, shown));
		List<Coming> coming = entries.stream()
			.filter((entry) -> entry.standing() == FeedEntry.Standing.OPEN && !entry.window().from().isBefore(day))
			.limit(COMING)
			.map((entry) -> new Coming(entry.window(), entry.summary()))
			.toList();
		if (entries.isEmpty()) {
			entries.add(words.nothingPlanned(UUID.nameUUIDFromBytes(address.path().getBytes(StandardCharsets.UTF_8)),
					garden.madeAt()));
		}
		Set<String> gone = new HashSet<>(shown);
		entries.forEach((entry) -> gone.remove(entry.uid()));
		// What went may come back, and then above the number that it had.
		Written written = this.writer.write(
				new Head(words.name(kinds.stream().map(PlantKinds.Kind::title).toList()), words.about(),
						address.speech().language().code()),
				entries, Component.EVENT, null, new Before(octets, gone.isEmpty() ? aheadBy : aheadBy + 1, now));
		FeedDocument document = document(written.octets(), before, now);
		return new Built(new CountyCalendar(address.path(), document.etag(), document.lastModified(), written.aheadBy(),
				garden.version(), day, now, coming), document);
	}

	/**
	 * The same octets keep their tag and their date, so that a calendar that asks again
	 * is told that nothing changed.
	 */
	private static FeedDocument document(byte[] octets, @Nullable CountyCalendar before, Instant now) {
		Instant modified = now;
		if (before != null && !now.isAfter(before.lastModified())) {
			modified = before.lastModified().plusSeconds(1);
		}
		FeedDocument document = FeedDocument.of(octets, modified);
		return (before != null && before.etag().equals(document.etag()))
				? new FeedDocument(document.packed(), document.etag(), before.lastModified()) : document;
	}

	private CountyEntries words(CountyAddress address, List<PlantKinds.Kind> kinds, List<Grown> grown) {
		County county = this.regions.find(address.county())
			.orElseThrow(() -> new NotThere("There is no county '%s' here.".formatted(address.county())));
		Set<String> here = grown.stream().map(Grown::code).collect(Collectors.toSet());
		Map<String, Set<String>> species = new LinkedHashMap<>();
		kinds.forEach((kind) -> species.put(kind.title(),
				kind.species()
					.stream()
					.map((one) -> one.id().value())
					.filter(here::contains)
					.collect(Collectors.toSet())));
		return new CountyEntries(
				new TaskEntries(this.books.of(address.speech().language()), address.speech().units(), this.base),
				county.name(), this.base + "/county-calendars?county=" + county.code(), species);
	}

	/** What is for a site as a whole is for no kind of plants, so it is left out. */
	private List<Grown> grown(Garden garden, FeedWindow window) {
		Read known = this.lately.get();
		if (known != null && known.county().equals(garden.county()) && known.version() == garden.version()
				&& known.day().equals(window.day())) {
			return known.grown();
		}
		Map<PlantingId, Species> species = this.register.plantingsOf(garden.site())
			.stream()
			.filter((one) -> this.catalogue.find(one.species()).isPresent())
			.collect(Collectors.toMap(Planting::id, (one) -> this.catalogue.find(one.species()).orElseThrow()));
		List<Grown> grown = this.tasks.ofSite(garden.site(), window.days())
			.stream()
			.filter((task) -> task.planting() != null && species.containsKey(task.planting()))
			.sorted(Comparator.comparing((CareTask task) -> task.window().from()))
			.map((task) -> {
				Species one = Objects.requireNonNull(species.get(task.planting()));
				return new Grown(task, one.id().value(), one.commonName());
			})
			.toList();
		this.lately = new SoftReference<>(new Read(garden.county(), garden.version(), window.day(), grown));
		return grown;
	}

}
