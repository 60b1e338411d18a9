package org.leafward.reminders.web;

import java.net.URI;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.leafward.accounts.People;
import org.leafward.accounts.PersonId;
import org.leafward.care.CareTask;
import org.leafward.care.NewObservation;
import org.leafward.care.Observation;
import org.leafward.care.PhenologyLog;
import org.leafward.care.TaskCalendar;
import org.leafward.care.TaskKind;
import org.leafward.measure.DayWindow;
import org.leafward.measure.GeoPoint;
import org.leafward.plants.SpeciesId;
import org.leafward.register.NewPlanting;
import org.leafward.register.NewSite;
import org.leafward.register.Placement;
import org.leafward.register.PlantingId;
import org.leafward.register.Register;
import org.leafward.register.SiteId;
import org.leafward.register.SoilTexture;
import org.leafward.register.Sun;
import org.leafward.register.Wind;
import org.leafward.reminders.Series;
import org.leafward.reminders.core.Links.Act;
import org.leafward.reminders.links.SignedLinks;
import org.springframework.jdbc.core.simple.JdbcClient;

import static java.time.Duration.ofSeconds;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

/** People with lilacs that have just bloomed, and messages to them that told of it. */
class LinkFixture {

	static final ZoneId CHICAGO = ZoneId.of("America/Chicago");

	private final Register register;

	private final People people;

	private final PhenologyLog phenology;

	private final TaskCalendar calendar;

	private final SignedLinks links;

	private final JdbcClient database;

	private final Clock clock;

	LinkFixture(Register register, People people, PhenologyLog phenology, TaskCalendar calendar, SignedLinks links,
			JdbcClient database, Clock clock) {
		this.register = register;
		this.people = people;
		this.phenology = phenology;
		this.calendar = calendar;
		this.links = links;
		this.database = database;
		this.clock = clock;
	}

	PersonId person(String name) {
		PersonId person = this.people.join(name, name.toLowerCase().replace(' ', '.') + "@example.org", CHICAGO).id();
		this.people.confirm(person);
		return person;
	}

	/**
	 * Tasks of some lilacs on one site, alike but for the planting, in the order of the
	 * labels. Without a station only what was seen gives dates.
	 */
	List<CareTask> lilacs(PersonId owner, String... labels) {
		SiteId site = this.register
			.addSite(owner,
					new NewSite("Elm Street", "Alder County", new GeoPoint(45.037, -97.512, 203), CHICAGO,
							SoilTexture.LOAM, Sun.FULL_SUN, Wind.AVERAGE))
			.id();
		List<PlantingId> plantings = new ArrayList<>();
		for (String label : labels) {
			PlantingId planting = planting(site, label);
			bloomed(site, planting, today().minusDays(2));
			plantings.add(planting);
		}
		List<CareTask> tasks = pruning(site).stream()
			.sorted(Comparator.comparing((task) -> plantings.indexOf(task.planting())))
			.toList();
		assertThat(tasks).hasSize(labels.length);
		assertThat(tasks).extracting(CareTask::window).containsOnly(tasks.get(0).window());
		return tasks;
	}

	/**
	 * A task of the same site and rule with other days: another lilac, later in bloom.
	 */
	CareTask other(CareTask than) {
		PlantingId late = planting(than.site(), "late");
		bloomed(than.site(), late, today().minusDays(1));
		CareTask other = pruning(than.site()).stream()
			.filter((task) -> late.equals(task.planting()))
			.findFirst()
			.orElseThrow();
		assertThat(other.window()).isNotEqualTo(than.window());
		return other;
	}

	private PlantingId planting(SiteId site, String label) {
		return this.register
			.addPlantings(site, List.of(new NewPlanting(new SpeciesId("syringa-vulgaris"), label, 1,
					LocalDate.of(2015, 4, 20), Placement.GROUND, false, false)))
			.get(0)
			.id();
	}

	private void bloomed(SiteId site, PlantingId planting, LocalDate day) {
		this.phenology.observe(site, new NewObservation(planting, Observation.Kind.PHASE, "bloom-end", day), null);
	}

	private List<CareTask> pruning(SiteId site) {
		return this.calendar.ofSite(site, DayWindow.of(today()))
			.stream()
			.filter((task) -> task.kind() == TaskKind.DO && task.rule().equals("shrubs/prune-after-bloom"))
			.toList();
	}

	private LocalDate today() {
		return LocalDate.ofInstant(this.clock.instant(), ZoneOffset.UTC);
	}

	CareTask now(CareTask task) {
		return this.calendar.find(task.id()).orElseThrow();
	}

	UUID message(PersonId person, Series series) {
		UUID message = UUID.randomUUID();
		this.database.sql("""
				insert into reminders.message (id, person_id, sender, recipient, recipient_name, subject, body_text,
					body_html, message_id, state, created_at, channel, series)
				values (?, ?, 'a@example.org', 'b@example.org', 'B', 'Prune', 'Prune.', '', ?, 'SENT', ?, 'mail', ?)
				""")
			.params(message, person.value(), "<%s@example.org>".formatted(message), now(), series.code())
			.update();
		return message;
	}

	/** A reminder that went out with a message. */
	UUID told(CareTask task, UUID message) {
		UUID reminder = UUID.randomUUID();
		LocalDate first = task.window().from();
		this.database.sql("""
				insert into reminders.reminder (id, person_id, task_id, first_day, dedup_key, due_at, expires_at, state,
					next_try_at, message_id, channel, topic, bundle)
				values (?, ?, ?, ?, ?, ?, ?, 'SENT', ?, ?, 'mail', 'to-do', ?)
				on conflict (dedup_key) do update set id = excluded.id, state = 'SENT', message_id = excluded.message_id
				""")
			.params(reminder, task.person().value(), task.id().value(), first, "mail:%s@%s".formatted(task.id(), first),
					now(), now(), now(), message, "morning:" + first)
			.update();
		return reminder;
	}

	/** The path of a link that was just sent. */
	String act(CareTask task, Act act) {
		settle();
		return path(this.links.act(told(task, message(task.person(), Series.MORNING)), act));
	}

	String act(UUID reminder, Act act) {
		return path(this.links.act(reminder, act));
	}

	String stop(PersonId person, Series series) {
		return path(this.links.stop(person, "mail", series));
	}

	private static String path(String address) {
		return URI.create(address).getPath();
	}

	private OffsetDateTime now() {
		return Instant.now(this.clock).atOffset(ZoneOffset.UTC);
	}

	/** Waits until all that listens has heard. */
	void settle() {
		await().atMost(ofSeconds(30))
			.until(() -> this.database.sql("select count(*) from events.event_publication").query(Long.class).single(),
					(open) -> open == 0);
	}

	/** What all tables hold: name to a fingerprint of their rows. */
	Map<String, String> tables() {
		settle();
		Map<String, String> all = new TreeMap<>();
		this.database.sql("""
				select quote_ident(table_schema) || '.' || quote_ident(table_name) from information_schema.tables
				where table_type = 'BASE TABLE' and table_schema not in ('pg_catalog', 'information_schema', 'quartz')
				""")
			.query(String.class)
			.list()
			.forEach((table) -> all.put(table, this.database.sql(
					"select count(*) || ' ' || coalesce(md5(string_agg(one::text, '|' order by one::text)), '') from %s one"
						.formatted(table))
				.query(String.class)
				.single()));
		return all;
	}

	/** With a table away, whoever asks it fails. */
	void without(String table, Runnable what) {
		String name = table.substring(table.indexOf('.') + 1);
		this.database.sql("alter table %s rename to %s".formatted(table, name + "_away")).update();
		try {
			what.run();
		}
		finally {
			this.database.sql("alter table %s rename to %s".formatted(table + "_away", name)).update();
		}
	}

}
