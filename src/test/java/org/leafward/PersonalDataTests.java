package org.leafward;

import biweekly.Biweekly;
import biweekly.ICalendar;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.AuditLog;
import org.leafward.accounts.Brought;
import org.leafward.accounts.Deed;
import org.leafward.accounts.People;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.PersonalRecords;
import org.leafward.accounts.Role;
import org.leafward.accounts.Roles;
import org.leafward.accounts.archive.PersonalArchive;
import org.leafward.amounts.calculator.Calculations;
import org.leafward.care.CareLog;
import org.leafward.care.CareTask;
import org.leafward.care.KeptCalculations;
import org.leafward.care.Replanning;
import org.leafward.care.TaskCalendar;
import org.leafward.care.WorkDone;
import org.leafward.climate.Microclimate;
import org.leafward.feeds.FeedOptions;
import org.leafward.feeds.Feeds;
import org.leafward.language.Language;
import org.leafward.language.Speech;
import org.leafward.language.Units;
import org.leafward.lookalikes.CaseDesk;
import org.leafward.lookalikes.CaseEnds;
import org.leafward.lookalikes.CaseId;
import org.leafward.lookalikes.Cases;
import org.leafward.lookalikes.NewCase;
import org.leafward.measure.BadInput;
import org.leafward.measure.DayWindow;
import org.leafward.measure.GeoPoint;
import org.leafward.plants.Catalogue;
import org.leafward.plants.SpeciesId;
import org.leafward.register.NewPlanting;
import org.leafward.register.NewSite;
import org.leafward.register.NewSoilTest;
import org.leafward.register.NewWatering;
import org.leafward.register.Placement;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.PlantingSize;
import org.leafward.register.Raised;
import org.leafward.register.RaisedIn;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SiteFeature;
import org.leafward.register.SoilDrainage;
import org.leafward.register.SoilExtract;
import org.leafward.register.SoilFigures;
import org.leafward.register.SoilTests;
import org.leafward.register.SoilTexture;
import org.leafward.register.Sun;
import org.leafward.register.Waterings;
import org.leafward.register.Wind;
import org.leafward.reminders.HowToTell;
import org.leafward.reminders.Manner;
import org.leafward.reminders.QuietHours;
import org.leafward.reminders.Series;
import org.leafward.reminders.Topic;
import org.leafward.reminders.Wish;
import org.leafward.reminders.Wishes;
import org.leafward.support.TestDatabase;
import org.leafward.workdays.Checklists;
import org.leafward.workdays.GroupDesk;
import org.leafward.workdays.GroupId;
import org.leafward.workdays.GroupLinks;
import org.leafward.workdays.Groups;
import org.leafward.workdays.PlanTerms;
import org.leafward.workdays.SignUps;
import org.leafward.workdays.WalkStop;
import org.leafward.workdays.WorkdayDesk;
import org.leafward.workdays.WorkdayId;
import org.leafward.workdays.WorkdayTask;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.ContextConfiguration;

import static java.time.Duration.ofSeconds;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.awaitility.Awaitility.await;

/** What is kept about people, in all tables there are. */
@SpringBootTest
@ContextConfiguration(initializers = TestDatabase.class)
class PersonalDataTests {

	private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");

	/** Texts that spreadsheets, tables and calendars stumble over. */
	private static final List<String> HOSTILE = List.of("=1+1", "+cmd|' /C calc'!A0", "-2", "@SUM(A1)", "'quoted'",
			"''=1", "a \"b\", c", "semi;colon", "Größe 🌱", "<b>bold</b>", "\u05d0\u05d1 right to left", "null", "true",
			"x,y\\n", "  spaced  out".strip());

	@Autowired
	private People people;

	@Autowired
	private Roles roles;

	@Autowired
	private AuditLog audit;

	@Autowired
	private PersonalRecords records;

	@Autowired
	private PersonalArchive archive;

	@Autowired
	private Register register;

	@Autowired
	private Waterings waterings;

	@Autowired
	private SoilTests soilTests;

	@Autowired
	private TaskCalendar calendar;

	@Autowired
	private CareLog log;

	@Autowired
	private Feeds feeds;

	@Autowired
	private HowToTell howToTell;

	@Autowired
	private Replanning replanning;

	@Autowired
	private Calculations calculations;

	@Autowired
	private KeptCalculations kept;

	@Autowired
	private Cases cases;

	@Autowired
	private CaseDesk caseDesk;

	@Autowired
	private CaseEnds caseEnds;

	@Autowired
	private Catalogue catalogue;

	@Autowired
	private GroupDesk groups;

	@Autowired
	private Groups allGroups;

	@Autowired
	private GroupLinks links;

	@Autowired
	private Checklists lists;

	@Autowired
	private WorkdayDesk workdays;

	@Autowired
	private SignUps signUps;

	@Autowired
	private JdbcClient database;

	@Test
	void nothingThatNamesAPersonIsLeft() {
		PersonId gone = life("Wilhelmina Quarrington", "wilhelmina.quarrington@example.org", "Quarrington Hollow",
				43.71829);
		PersonId stays = life("Ottoline Staithes", "ottoline.staithes@example.org", "Staithes Acre", 44.29176);
		List<String> hers = traces(gone, "Quarrington", "43.71829");
		List<String> others = traces(stays, "Staithes", "44.29176");
		assertThat(rowsWith(hers)).as("the walk finds what there is")
			.containsKeys("accounts.person", "accounts.role", "accounts.audit", "accounts.session",
					"accounts.one_time_link", "register.site", "register.planting", "register.watering",
					"register.soil_test", "care.task", "care.log", "care.kept_calculation", "care.site_plan",
					"feeds.feed", "reminders.reminder", "reminders.message", "reminders.wishes", "reminders.wish",
					"reminders.stopped", "reminders.webhook", "reminders.webhook_trial", "reminders.suppressed",
					"reminders.push_subscription", "workdays.member", "workdays.sign_up", "workdays.group_site",
					"workdays.stop", "workdays.invitation", "workdays.asked", "workdays.message",
					"workdays.workday_task", "workdays.mark", "advisories.proposal_county",
					"advisories.threshold_change", "register.site_plants", "lookalikes.plant_case", "lookalikes.note");
		Map<String, Long> before = rowsWith(others);
		this.records.forget(gone);
		this.replanning.tidy();
		assertThat(rowsWith(hers)).isEmpty();
		assertThat(rowsWith(others)).isEqualTo(before);
		// The audit log stays, without the name.
		assertThat(this.audit.all(0, 200))
			.anyMatch((entry) -> entry.deed() == Deed.SAW_SITE && entry.concerns() == null);
	}

	@Test
	void onePersonOfTwo() {
		PersonId quick = life("A quick calendar", "quick.of.one@example.org", "Tansy Bank", 42.11387);
		PersonId known = this.people.join("Perpetua Lisle", "perpetua.lisle@example.org", CHICAGO).id();
		List<Site> had = this.register.sitesOf(quick);
		this.records.merge(quick, known);
		assertThat(this.people.find(quick)).isEmpty();
		assertThat(this.register.sitesOf(known)).extracting(Site::id).isEqualTo(had.stream().map(Site::id).toList());
		assertThat(this.calendar.ofPerson(known, season())).isNotEmpty();
		assertThat(this.feeds.list(known)).hasSize(2);
		assertThat(rowsWith(List.of("https://example.org/quick.of.one@"))).containsOnlyKeys("reminders.webhook");
		assertThat(rowsWith(List.of(quick.toString()))).isEmpty();
	}

	@Test
	void howToTellIsTakenAwayToo() {
		PersonId person = this.people.join("Thea Marlow", "thea.marlow@example.org", CHICAGO).id();
		chooses(person);
		Map<String, List<Map<String, Object>>> all = this.records.of(person);
		assertThat(all.get("how-to-tell")).singleElement()
			.isEqualTo(Map.of("language", "es", "units", "us", "morning", "06:30:00", "outlookDay", 5, "quietFrom",
					"21:00:00", "quietTo", "05:00:00", "urgentAnyway", false, "pausedUntil", "2126-12-01"));
		assertThat(all.get("what-to-tell")).singleElement()
			.isEqualTo(Map.of("channel", "mail", "topic", "to-do", "manner", "single", "leadDays", 3));
		assertThat(all.get("left-series")).singleElement()
			.matches((row) -> row.get("channel").equals("mail") && row.get("series").equals("outlook")
					&& row.containsKey("since"), "names channel and series");
	}

	/** How to be told, and a series that was left. */
	private void chooses(PersonId person) {
		this.howToTell.save(person,
				new Wishes(new Speech(Language.SPANISH, Units.US), LocalTime.of(6, 30), DayOfWeek.FRIDAY,
						new QuietHours(LocalTime.of(21, 0), LocalTime.of(5, 0)), false, LocalDate.of(2126, 12, 1),
						Map.of("mail", Map.of(Topic.TO_DO, new Wish(Manner.SINGLE, 3))), Map.of()));
		this.howToTell.stop(person, "mail", Series.OUTLOOK);
	}

	/**
	 * In a group that others lead, with a site of theirs, a workday and all that comes of
	 * it.
	 */
	private void worksInAGroup(PersonId id, Site site, String words, PlantingId planting, CareTask task) {
		PersonId lead = this.people.join("Lead of " + UUID.randomUUID(), UUID.randomUUID() + "@example.org", CHICAGO)
			.id();
		GroupId group = this.groups.make(new GroupDesk.Told("Crew", "", CHICAGO, "", Set.of(DayOfWeek.values()),
				LocalTime.of(0, 0), LocalTime.of(12, 0), 10, Set.of(), PlanTerms.USUAL), lead);
		this.groups.join(group, id);
		this.groups.tell(group, id, Set.of(), Set.of(DayOfWeek.values()), Set.of(), "somebody at " + words);
		this.groups.give(group, site, words + " 1");
		this.links.make(group, id);
		this.lists.draw(site.id(), new HashMap<>(Map.of(planting, new WalkStop(1, 3))));
		LocalDate today = LocalDate.ofInstant(Instant.now(), CHICAGO);
		WorkdayId day = this.workdays.add(this.allGroups.find(group).orElseThrow(),
				new WorkdayDesk.Frame(today.plusDays(1), LocalTime.of(0, 0), LocalTime.of(12, 0), "", 10, null));
		this.workdays.addTask(day, new WorkdayTask(task.id(), site.id(), 10, true, "", 1, 1, false));
		this.workdays.fix(day);
		this.signUps.come(day, id, 1, true);
		this.database.sql("update workdays.workday_task set done_by = ?, done_at = now() where workday = ?")
			.params(id.value(), day.value())
			.update();
		this.database.sql("""
				insert into workdays.mark (key, workday, task, person_id, done, at, came_at)
				values (?, ?, ?, ?, true, now(), now())""")
			.params(UUID.randomUUID(), day.value(), task.id().value(), id.value())
			.update();
	}

	/** A life with everything that the modules keep about somebody. */
	private PersonId life(String name, String email, String siteName, double latitude) {
		PersonId id = this.people.join(name, email, CHICAGO).id();
		this.people.confirm(id);
		this.roles.grant(id, Role.SPECIALIST, "Sable County");
		this.audit.note(Deed.SAW_SITE, id, "site in Alder County");
		Site site = this.register.addSite(id, new NewSite(siteName, "Alder County", new GeoPoint(latitude, -91.5, 230),
				CHICAGO, SoilTexture.LOAM, Sun.FULL_SUN, Wind.AVERAGE));
		List<Planting> plantings = this.register.addPlantings(site.id(),
				List.of(new NewPlanting(new SpeciesId("buxus-sempervirens"), siteName + " hedge", 3,
						LocalDate.of(2015, 4, 1), Placement.GROUND, false, true)));
		LocalDate today = LocalDate.ofInstant(Instant.now(), CHICAGO);
		this.waterings.record(site.id(),
				new NewWatering(plantings.get(0).id(), today.minusDays(2), 12, "of " + siteName), id);
		this.soilTests.keep(site.id(),
				new NewSoilTest(null, today.minusDays(30),
						new SoilFigures(8.1, 2, SoilExtract.SATURATED_PASTE, 18.0, null, 15.0), 15, SoilDrainage.GOOD,
						siteName),
				id);
		this.replanning.derive(site.id());
		List<CareTask> tasks = this.calendar.ofPerson(id, season());
		assertThat(tasks).isNotEmpty();
		this.log.skip(List.of(tasks.get(0).id()), "not at " + siteName, id);
		this.log.log(site.id(), plantings.get(0).id(), "mulch", new WorkDone(today, null, null, null, "at " + siteName),
				id);
		this.kept.keep(this.calculations.of("water", Map.of("what", "bed", "area", "12", "flow", "10")),
				plantings.get(0).id(), null, id);
		worksInAGroup(id, site, siteName, plantings.get(0).id(), tasks.get(0));
		CaseId looksWrong = this.cases
			.open(id,
					new NewCase(site.id(), plantings.get(0).id(), new SpeciesId("buxus-sempervirens"),
							siteName + " hedge", "Alder County", CHICAGO, today.minusDays(3), null))
			.id();
		this.caseDesk.write(looksWrong, id, false, "at " + siteName);
		this.caseDesk.ask(looksWrong);
		this.caseDesk.assign(looksWrong, null);
		this.caseEnds.followUp(looksWrong, "winter-burn");
		this.feeds.createForPerson(id, id, FeedOptions.USUAL);
		this.feeds.createForSite(site.id(), id, FeedOptions.USUAL);
		chooses(id);
		UUID mail = UUID.randomUUID();
		this.database
			.sql("""
					insert into reminders.message (id, person_id, sender, recipient, recipient_name, subject, body_text, body_html,
						message_id, state, created_at)
					values (?, ?, 'us@example.org', ?, ?, 'Today', ?, '', ?, 'SENT', now())""")
			.params(mail, id.value(), email, name, "at " + siteName, "<" + mail + "@example.org>")
			.update();
		this.database.sql("insert into reminders.suppressed (address, reason, since) values (lower(?), 'gone', now())")
			.param(email)
			.update();
		this.database.sql("""
				insert into reminders.reminder (id, person_id, task_id, first_day, dedup_key, due_at, expires_at, state,
					next_try_at, message_id)
				values (?, ?, ?, current_date, ?, now(), now(), 'SENT', now(), ?)""")
			.params(UUID.randomUUID(), id.value(), tasks.get(0).id().value(), "mail:%s@%s".formatted(mail, today), mail)
			.update();
		this.database.sql("""
				insert into reminders.webhook (person_id, address, secret, created_at)
				values (?, ?, sha256(?::text::bytea), now())""")
			.params(id.value(), "https://example.org/" + email, name)
			.update();
		UUID proposal = UUID.randomUUID();
		this.database
			.sql("insert into advisories.proposal (id, condition, content, made_at) values (?, 'hot', '{}', now())")
			.param(proposal)
			.update();
		this.database.sql("""
				insert into advisories.proposal_county (proposal, county, name, region, zone, from_day, to_day, figures,
					reasons, standing, decided_by, decided_person, decided_at, why)
				values (?, 'c', 'Alder County', 'US-IA', 'UTC', current_date, current_date, '[]', '{}', 'DISMISSED', ?,
					?, now(), ?)""").params(proposal, name, id.value(), "not at " + siteName).update();
		this.database.sql("""
				insert into advisories.threshold_change (condition, threshold, scope, value, note, changed_by,
					changed_person, changed_at) values ('hot', 'high', 'c', 88, ?, ?, ?, now())""")
			.params("at " + siteName, name, id.value())
			.update();
		this.database.sql("insert into reminders.webhook_trial (person_id, since, trials) values (?, now(), 1)")
			.param(id.value())
			.update();
		this.database.sql("""
				insert into reminders.push_subscription (id, person_id, endpoint, p256dh, auth, label, created_at)
				values (?, ?, ?, decode(repeat('04', 65), 'hex'), decode(repeat('00', 16), 'hex'), ?, now())""")
			.params(UUID.randomUUID(), id.value(), "https://push.example.net/" + UUID.randomUUID(), "at " + siteName)
			.update();
		this.database.sql("""
				insert into accounts.one_time_link (token_hash, email, person, expires_at)
				values (sha256(?::text::bytea), ?, null, now() + interval '1 day')""").params(name, email).update();
		this.database.sql("""
				insert into accounts.session (primary_id, session_id, creation_time, last_access_time,
					max_inactive_interval, expiry_time, principal_name) values (?, ?, 0, 0, 0, 0, ?)""")
			.params(UUID.randomUUID().toString(), UUID.randomUUID().toString(), id.toString())
			.update();
		return id;
	}

	private List<String> traces(PersonId person, String name, String latitude) {
		List<String> all = new ArrayList<>(List.of(person.toString(), name, name.toLowerCase(), latitude));
		for (Site site : this.register.sitesOf(person)) {
			all.add(site.id().toString());
			this.register.plantingsOf(site.id()).forEach((one) -> all.add(one.id().toString()));
		}
		return all;
	}

	/** All tables of all schemas, every row as text. */
	private Map<String, Long> rowsWith(List<String> traces) {
		settle();
		Map<String, Long> found = new TreeMap<>();
		List<String> tables = this.database.sql("""
				select quote_ident(table_schema) || '.' || quote_ident(table_name) from information_schema.tables
				where table_type = 'BASE TABLE' and table_schema not in ('pg_catalog', 'information_schema')
				""").query(String.class).list();
		assertThat(tables).hasSizeGreaterThan(40);
		for (String table : tables) {
			long rows = this.database
				.sql("select count(*) from %s one where one::text like any (:traces)".formatted(table))
				.param("traces", traces.stream().map((trace) -> "%" + trace + "%").toArray(String[]::new))
				.query(Long.class)
				.single();
			if (rows > 0) {
				found.put(table, rows);
			}
		}
		return found;
	}

	/**
	 * Waits until all that listens has heard: what is told on names people until then,
	 * and who hears of it late must not bring anybody back.
	 */
	private void settle() {
		await().atMost(ofSeconds(30))
			.until(() -> this.database.sql("select count(*) from events.event_publication").query(Long.class).single(),
					(open) -> open == 0);
	}

	private static DayWindow season() {
		LocalDate today = LocalDate.now();
		return new DayWindow(today.minusDays(400), today.plusDays(500));
	}

	@Test
	void whatIsTakenAwayComesBackEqual() throws Exception {
		Random random = new Random(20261126);
		List<SpeciesId> species = this.catalogue.all().stream().map((one) -> one.id()).toList();
		for (int round = 0; round < 12; round++) {
			PersonId from = this.people.join("From " + round, "from%d@example.org".formatted(round), CHICAGO).id();
			for (int i = 0; i <= random.nextInt(3); i++) {
				site(from, random, species);
			}
			byte[] zip = this.archive.pack(this.records.of(from), this.records.files(from));
			for (boolean tables : List.of(true, false)) {
				PersonId into = this.people.join("Into", "into%d%s@example.org".formatted(round, tables), CHICAGO).id();
				this.records.bring(into,
						this.archive.unpack(tables ? without(zip, "leafward.json") : only(zip, "leafward.json")));
				assertThat(garden(into)).as("round %d, from %s", round, tables ? "CSV" : "JSON")
					.isEqualTo(garden(from));
			}
			ICalendar ics = Biweekly.parse(new String(entries(zip).get("calendar.ics"), StandardCharsets.UTF_8))
				.first();
			assertThat(ics.getEvents()).isNotEmpty();
		}
	}

	private void site(PersonId owner, Random random, List<SpeciesId> species) {
		Site site = this.register.addSite(owner, new NewSite(any(random, HOSTILE), any(random, HOSTILE),
				new GeoPoint(42 + random.nextDouble(), -91 + random.nextDouble(), 200 + random.nextInt(200)), CHICAGO,
				any(random, List.of(SoilTexture.values())), any(random, List.of(Sun.values())),
				any(random, List.of(Wind.values())),
				random.nextBoolean() ? Microclimate.NONE
						: new Microclimate(any(random, List.of(Microclimate.Lie.values())), random.nextBoolean(),
								random.nextBoolean(), random.nextBoolean() ? 1.5 : null),
				random.nextBoolean() ? "" : "US-MI", random.nextBoolean() ? Set.of() : Set.of(SiteFeature.IRRIGATION),
				random.nextBoolean() ? null : 12.5));
		List<NewPlanting> plantings = new ArrayList<>();
		for (int i = 0; i < 1 + random.nextInt(4); i++) {
			plantings.add(new NewPlanting(any(random, species), any(random, HOSTILE), 1 + random.nextInt(9),
					LocalDate.of(2010 + random.nextInt(16), 1 + random.nextInt(12), 1 + random.nextInt(28)),
					any(random, List.of(Placement.values())), random.nextBoolean(), random.nextBoolean(),
					random.nextBoolean() ? PlantingSize.UNKNOWN
							: new PlantingSize(3.25, 51.0, random.nextBoolean() ? null : 19.5),
					random.nextBoolean() ? null : new Raised(RaisedIn.LAMPS, 200.0, 14.0)));
		}
		List<Planting> added = this.register.addPlantings(site.id(), plantings);
		LocalDate today = LocalDate.ofInstant(Instant.now(), CHICAGO);
		for (int i = 0; i < random.nextInt(4); i++) {
			this.waterings.bringBack(site.id(), new NewWatering(random.nextBoolean() ? null : any(random, added).id(),
					today.minusDays(10 + i * 300L), 1 + random.nextInt(40), any(random, HOSTILE)), owner);
		}
		for (int i = 0; i < random.nextInt(3); i++) {
			this.kept.keep(this.calculations.of("salt", Map.of("area", (100 + i) + " sq ft", "walk", "true")),
					any(random, added).id(), null, owner);
		}
		if (random.nextBoolean()) {
			this.soilTests.keep(site.id(),
					new NewSoilTest(any(random, added).id(), today.minusDays(random.nextInt(900)),
							new SoilFigures(7.4, 1.25, SoilExtract.ONE_TO_TWO, null, 9.5, null), 20, SoilDrainage.SLOW,
							any(random, HOSTILE)),
					owner);
		}
	}

	private static <T> T any(Random random, List<T> some) {
		return some.get(random.nextInt(some.size()));
	}

	/** The register of a person without identifiers and times of entry. */
	private List<Object> garden(PersonId person) {
		Map<String, List<Map<String, Object>>> all = this.records.of(person);
		Map<Object, Object> names = new LinkedHashMap<>();
		List<Object> garden = new ArrayList<>();
		for (String table : List.of("sites", "plantings", "waterings", "soil-tests", "kept-calculations")) {
			List<String> rows = new ArrayList<>();
			for (Map<String, Object> row : all.get(table)) {
				Map<String, Object> plain = new LinkedHashMap<>(row);
				Object id = plain.remove("id");
				List.of("owner", "by", "enteredAt", "keptAt").forEach(plain::remove);
				plain.replaceAll((key, value) -> names.getOrDefault(value, value));
				names.put(id, plain.toString());
				rows.add(plain.toString());
			}
			garden.add(rows.stream().sorted().toList());
		}
		return garden;
	}

	@Test
	void aRowThatCantBeUsedIsNamedAndNothingIsAdded() throws Exception {
		PersonId person = this.people.join("Half", "half@example.org", CHICAGO).id();
		String good = "1,Garden,42,-91,200,America/Chicago";
		byte[] zip = zip(Map.of("sites.csv",
				"id,name,latitude,longitude,elevationMetres,zone\r\n%s\r\n2,Other,142,-91,200,America/Chicago\r\n"
					.formatted(good)));
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> this.records.bring(person, this.archive.unpack(zip)))
			.matches((ex) -> ex.where().equals("sites.csv, row 3, latitude"), "names row and column");
		assertThat(this.register.sitesOf(person)).isEmpty();
		Brought lone = this.archive.unpack(zip(Map.of("plantings.csv",
				"id,site,species,label,plantedOn\r\n9,1,buxus-sempervirens,hedge,2015-04-01\r\n")));
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> this.records.bring(person, lone))
			.matches((ex) -> ex.what().contains("in none of the tables"), "says what is missing");
	}

	@Test
	void filesThatAreNoneAreRefused() throws Exception {
		List<byte[]> bad = List.of("no zip".getBytes(StandardCharsets.UTF_8), new byte[0],
				zip(Map.of("readme.txt", "hello")), zip(Map.of("sites.csv", "id,name\r\n1,\"open")),
				zip(Map.of("leafward.json", "{")), zip(Map.of("sites.csv", "id,name\r\n1\r\n")));
		for (byte[] file : bad) {
			assertThatExceptionOfType(BadInput.class).isThrownBy(() -> this.archive.unpack(file));
		}
		// 40 MB of nothing in a few kB.
		byte[] bomb = zip(Map.of("sites.csv", "0".repeat(40 << 20)));
		assertThat(bomb.length).isLessThan(PersonalArchive.MOST);
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> this.archive.unpack(bomb))
			.matches((ex) -> ex.what().contains("32 MB"), "is not unpacked");
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> this.archive.unpack(new byte[PersonalArchive.MOST + 1]));
	}

	private static Map<String, byte[]> entries(byte[] zip) throws Exception {
		Map<String, byte[]> entries = new LinkedHashMap<>();
		try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
			for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
				entries.put(entry.getName(), in.readAllBytes());
			}
		}
		return entries;
	}

	private static byte[] without(byte[] zip, String name) throws Exception {
		Map<String, byte[]> entries = entries(zip);
		entries.remove(name);
		return write(entries);
	}

	private static byte[] only(byte[] zip, String name) throws Exception {
		return write(Map.of(name, entries(zip).get(name)));
	}

	private static byte[] zip(Map<String, String> files) throws Exception {
		Map<String, byte[]> entries = new LinkedHashMap<>();
		files.forEach((name, text) -> entries.put(name, text.getBytes(StandardCharsets.UTF_8)));
		return write(entries);
	}

	private static byte[] write(Map<String, byte[]> entries) throws Exception {
		ByteArrayOutputStream octets = new ByteArrayOutputStream();
		try (ZipOutputStream out = new ZipOutputStream(octets)) {
			for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
				out.putNextEntry(new ZipEntry(entry.getKey()));
				out.write(entry.getValue());
				out.closeEntry();
			}
		}
		return octets.toByteArray();
	}

}
