package org.leafward.counties;

import java.lang.ref.SoftReference;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.care.CareTask;
import org.leafward.care.TaskCalendar;
import org.leafward.counties.core.CountyAddress;
import org.leafward.counties.core.CountyEntries;
import org.leafward.counties.core.Grown;
import org.leafward.counties.store.CalendarTable;
import org.leafward.counties.store.GardenTable;
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
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.plants.Catalogue;
import org.leafward.plants.Species;
import org.leafward.quick.core.PlantKinds;
import org.leafward.regions.County;
import org.leafward.regions.Regions;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.Register;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * The calendars of counties. A calendar of one kind of plants is always at hand; others
 * are built when somebody asks for the first time, and kept up to date from then on.
 */
@Service
public class CountyCalendars {

	private static final Logger LOG = LoggerFactory.getLogger(CountyCalendars.class);

	/**
	 * Calendars of a county that are kept beside those of one kind; the ones that nobody
	 * asked for the longest time go.
	 */
	public static final int MOST = 500;

	/** Enough of the past for programs that ask once a month. */
	private static final int BEHIND = 60;

	private static final int AHEAD = 365;

	private static final int COMING = 3;

	private static final Duration RETRY = Duration.ofMinutes(5);

	private static final int WAIT_SECONDS = 10;

	/**
	 * Sequence numbers of a new calendar count from the hours since then, so that one
	 * that was dropped and is asked for again goes on above what it had.
	 */
	private static final Instant COUNTED_FROM = Instant.parse("2026-01-01T00:00:00Z");

	private final GardenTable gardens;

	private final CalendarTable table;

	private final Regions regions;

	private final Catalogue catalogue;

	private final Register register;

	private final TaskCalendar tasks;

	private final Phrasebooks books;

	private final TransactionTemplate transaction;

	private final Clock clock;

	private final String base;

	private final CalendarWriter writer = new CalendarWriter();

	/** Strangers can ask for many calendars; they get the processor one at a time. */
	private final Semaphore building = new Semaphore(1, true);

	/** Tasks of the garden that was read last, as calendars of one are built in a row. */
	private volatile SoftReference<Read> lately = new SoftReference<>(null);

	private record Read(String county, long version, LocalDate day, List<Grown> grown) {
	}

	CountyCalendars(GardenTable gardens, CalendarTable table, Regions regions, Catalogue catalogue, Register register,
			TaskCalendar tasks, Phrasebooks books, TransactionTemplate transaction, Clock clock,
			@Value("${leafward.base-url:http://localhost:8080}") String base) {
		this.gardens = gardens;
		this.table = table;
		this.regions = regions;
		this.catalogue = catalogue;
		this.register = register;
		this.tasks = tasks;
		this.books = books;
		this.transaction = transaction;
		this.clock = clock;
		this.base = base.isBlank() ? "http://localhost:8080" : base.strip().replaceFirst("/+$", "");
	}

	/** It can't be built now; later it can. */
	public static final class NotYet extends RuntimeException {

		/**
		 * Says why.
		 * @param message a sentence for whoever asked
		 */
		public NotYet(String message) {
			super(message);
		}

	}

	/**
	 * The kinds of plants that a calendar can have.
	 * @return in the order of addresses
	 */
	public List<PlantKinds.Kind> kinds() {
		return PlantKinds.of(this.catalogue.all());
	}

	/**
	 * Codes of the kinds.
	 * @return in the order of addresses
	 */
	public List<String> codes() {
		return kinds().stream().map(PlantKinds.Kind::code).toList();
	}

	/**
	 * A calendar that is up to date to a minute or so. One that is not at hand is built.
	 * @param address its address
	 * @return what is known of it
	 * @throws NotThere when there is no such county
	 * @throws NotYet when its garden isn't made yet, or many others ask for calendars
	 * that are not at hand
	 */
	public CountyCalendar find(CountyAddress address) {
		county(address.county());
		Optional<CountyCalendar> stored = this.table.find(address.path());
		Instant now = this.clock.instant();
		if (stored.isPresent()) {
			if (stored.get().askedAt().isBefore(now.minus(1, ChronoUnit.HOURS))) {
				this.table.asked(address.path(), now);
			}
			return stored.get();
		}
		if (this.gardens.find(address.county()).isEmpty()) {
			throw new NotYet("The calendars of this county are being made. Ask again in some minutes.");
		}
		enter();
		try {
			build(address);
		}
		finally {
			this.building.release();
		}
		return this.table.find(address.path()).orElseThrow(() -> new NotYet("Ask again in some minutes."));
	}

	private void enter() {
		try {
			if (this.building.tryAcquire(WAIT_SECONDS, TimeUnit.SECONDS)) {
				return;
			}
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
		}
		throw new NotYet("Many calendars are being made just now. Ask again in some minutes.");
	}

	/**
	 * The octets of a calendar.
	 * @param calendar the calendar
	 * @return empty when it was dropped meanwhile
	 */
	public Optional<FeedDocument> read(CountyCalendar calendar) {
		return this.table.document(calendar.path());
	}

	private County county(String code) {
		return this.regions.find(code).orElseThrow(() -> new NotThere("There is no county '%s' here.".formatted(code)));
	}

	/**
	 * Builds what is missing or stale, one transaction each. One that can't be built
	 * keeps its last document, waits five minutes and holds up no other.
	 * @param timeBox when to stop, counted from now
	 * @return how many were tried
	 */
	public int rebuildStale(Duration timeBox) {
		Instant end = this.clock.instant().plus(timeBox);
		int tried = buildMissing(end);
		Set<String> counties = this.regions.counties().stream().map(County::code).collect(Collectors.toSet());
		while (this.clock.instant().isBefore(end)) {
			Optional<CalendarTable.Waiting> next = this.table.stale(counties, today(), this.clock.instant());
			if (next.isEmpty()) {
				break;
			}
			tried++;
			rebuild(next.get());
		}
		return tried;
	}

	private int buildMissing(Instant end) {
		int tried = 0;
		for (Garden garden : this.gardens.all()) {
			Set<String> there = this.table.usual(garden.county());
			for (String kind : codes()) {
				if (!there.contains(kind) && this.regions.find(garden.county()).isPresent()
						&& this.clock.instant().isBefore(end)) {
					tried++;
					build(CountyAddress.read(garden.county(), kind, null, codes()));
				}
			}
		}
		return tried;
	}

	private void rebuild(CalendarTable.Waiting waiting) {
		CountyAddress address;
		try {
			address = CountyAddress.read(waiting.county(), waiting.kinds(), waiting.speech(), codes());
		}
		catch (BadInput ex) {
			// A kind that the catalogue no longer has.
			this.table.remove(waiting.path());
			return;
		}
		try {
			build(address);
		}
		catch (RuntimeException ex) {
			LOG.warn("The calendar {} was not built; its last document is served and it is tried again in {}",
					waiting.path(), RETRY, ex);
			this.table.retry(waiting.path(), this.clock.instant().plus(RETRY));
		}
	}

	private void build(CountyAddress address) {
		this.transaction.executeWithoutResult((status) -> {
			this.table.lock(address.path());
			// Read before the tasks, so that a calendar can be older than it says, which
			// costs another look, and never newer.
			Garden garden = this.gardens.find(address.county()).orElseThrow();
			LocalDate day = today();
			Optional<CountyCalendar> before = this.table.find(address.path());
			if (before.isPresent() && before.get().version() == garden.version() && before.get().day().equals(day)) {
				return;
			}
			store(address, garden, day, before.orElse(null));
			if (before.isEmpty() && !address.usual()) {
				this.table.drop(address.county(), MOST);
			}
		});
	}

	private void store(CountyAddress address, Garden garden, LocalDate day, @Nullable CountyCalendar before) {
		Instant now = this.clock.instant().truncatedTo(ChronoUnit.SECONDS);
		FeedWindow window = new FeedWindow(day, BEHIND, AHEAD);
		List<Grown> grown = grown(garden, window);
		List<PlantKinds.Kind> kinds = kinds().stream().filter((one) -> address.kinds().contains(one.code())).toList();
		Set<String> wanted = kinds.stream()
			.flatMap((one) -> one.species().stream())
			.map((one) -> one.id().value())
			.collect(Collectors.toSet());
		byte[] octets = (before != null)
				? this.table.document(address.path()).map(FeedDocument::octets).orElse(new byte[0]) : new byte[0];
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
		this.table.store(address, new CountyCalendar(address.path(), document.etag(), document.lastModified(),
				written.aheadBy(), garden.version(), day, now, coming), document);
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
		County county = county(address.county());
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
				county.name(), URI.create(this.base + "/county-calendars?county=" + county.code()), species);
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

	private LocalDate today() {
		return LocalDate.ofInstant(this.clock.instant(), ZoneOffset.UTC);
	}

}
