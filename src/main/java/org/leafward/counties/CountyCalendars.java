package org.leafward.counties;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.leafward.counties.core.CountyAddress;
import org.leafward.counties.store.CalendarTable;
import org.leafward.counties.store.GardenTable;
import org.leafward.feeds.FeedDocument;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.plants.Catalogue;
import org.leafward.quick.core.PlantKinds;
import org.leafward.regions.County;
import org.leafward.regions.Regions;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
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

	private static final Duration RETRY = Duration.ofMinutes(5);

	private static final int WAIT_SECONDS = 10;

	/** Requests that wait for another one's calendar; more are told to come back. */
	private static final int MOST_WAITING = 8;

	private final GardenTable gardens;

	private final CalendarTable table;

	private final Regions regions;

	private final Catalogue catalogue;

	private final CountyBuilder builder;

	private final TransactionTemplate transaction;

	private final Clock clock;

	/** Strangers can ask for many calendars; they get the processor one at a time. */
	private final Semaphore building = new Semaphore(1, true);

	CountyCalendars(GardenTable gardens, CalendarTable table, Regions regions, Catalogue catalogue,
			CountyBuilder builder, TransactionTemplate transaction, Clock clock) {
		this.gardens = gardens;
		this.table = table;
		this.regions = regions;
		this.catalogue = catalogue;
		this.builder = builder;
		this.transaction = transaction;
		this.clock = clock;
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
			// Whoever waits holds a thread that somebody else's poll may need.
			if (this.building.getQueueLength() < MOST_WAITING
					&& this.building.tryAcquire(WAIT_SECONDS, TimeUnit.SECONDS)) {
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
			byte[] octets = before.flatMap((one) -> this.table.document(address.path()))
				.map(FeedDocument::octets)
				.orElse(new byte[0]);
			CountyBuilder.Built built = this.builder.build(address, garden, day, before.orElse(null), octets);
			this.table.store(address, built.calendar(), built.document());
			if (before.isEmpty() && !address.usual()) {
				this.table.drop(address.county(), MOST);
			}
		});
	}

	private LocalDate today() {
		return LocalDate.ofInstant(this.clock.instant(), ZoneOffset.UTC);
	}

}
