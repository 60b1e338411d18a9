package org.leafward.advisories.desk;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledIfSystemProperty;
import org.leafward.accounts.AuditLog;
import org.leafward.accounts.Deed;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.Role;
import org.leafward.accounts.Roles;
import org.leafward.accounts.signin.SignedIn;
import org.leafward.advisories.Advisories;
import org.leafward.advisories.Advisory;
import org.leafward.advisories.AdvisoryId;
import org.leafward.advisories.AdvisoryState;
import org.leafward.advisories.Deliveries;
import org.leafward.advisories.Deliveries.Delivered;
import org.leafward.advisories.Proposals;
import org.leafward.advisories.cap.CapSchema;
import org.leafward.advisories.core.chain.Message;
import org.leafward.advisories.core.chain.MessageType;
import org.leafward.advisories.shelf.Chains;
import org.leafward.advisories.store.DraftTable;
import org.leafward.advisories.store.SentTable;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.pages.Viewers;
import org.leafward.regions.Regions;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.reminders.Outbox;
import org.leafward.reminders.Series;
import org.leafward.reminders.dispatch.AdvisoryTelling;
import org.leafward.reminders.dispatch.Dispatcher;
import org.leafward.support.WalkServer;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.core.env.Environment;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.core.context.SecurityContextHolder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;

/**
 * From a blank form to what people get, and on to its end, in the demo, where Odile Marsh
 * serves Merrow and Sable County.
 */
@WalkServer
class DeskTests {

	private static final String MERROW = "us-ia-merrow-county";

	private static final String SABLE = "us-ia-sable-county";

	private static final ZoneId ZONE = ZoneId.of("America/Chicago");

	@Autowired
	private Desk desk;

	@Autowired
	private Advisories advisories;

	@Autowired
	private People people;

	@Autowired
	private Roles roles;

	@Autowired
	private Register register;

	@Autowired
	private SentTable sent;

	@Autowired
	private AuditLog audit;

	@Autowired
	private JdbcClient database;

	@Autowired
	private Clock clock;

	@Autowired
	private DraftTable drafts;

	@Autowired
	private DraftReader reader;

	@Autowired
	private Prefilled prefilled;

	@Autowired
	private Issuing issuing;

	@Autowired
	private Chains chains;

	@Autowired
	private Proposals proposals;

	@Autowired
	private Regions regions;

	@Autowired
	private Viewers viewers;

	@Autowired
	private ReachPreview reach;

	@Autowired
	private AfterReport after;

	@Autowired
	private Environment environment;

	@Autowired
	private Deliveries delivered;

	@Autowired
	private AdvisoryTelling telling;

	@Autowired
	private Dispatcher dispatcher;

	@Autowired
	private Outbox outbox;

	@Autowired
	private Preview preview;

	@BeforeEach
	void isOdile() {
		become("odile.marsh@example.org");
	}

	@AfterEach
	void isNobody() {
		SecurityContextHolder.clearContext();
	}

	private void become(String email) {
		Person person = this.people.withAddress(email).orElseThrow();
		SecurityContextHolder.getContext().setAuthentication(SignedIn.person(person, this.roles.of(person.id())));
	}

	private PersonId id(String email) {
		return this.people.withAddress(email).orElseThrow().id();
	}

	private DraftFields fields(String... counties) {
		Map<String, List<String>> values = new HashMap<>();
		values.put("counties", List.of(counties));
		values.put("groups", List.of("broadleaf-evergreen"));
		values.put("works", List.of("water"));
		values.put("responses", List.of("Prepare"));
		Map.of("event", "Cold wind", "category", "Met", "urgency", "Future", "severity", "Moderate", "certainty",
				"Likely", "onset", time(2), "expires", time(30), "headline", "Cold wind tomorrow: screen rhododendrons",
				"what", "Gusts of 30 mph (13 m/s) at 14 °F (−10 °C).", "where", "The ridge.")
			.forEach((name, value) -> values.put(name, List.of(value)));
		Map.of("when", "From tomorrow on.", "impacts", "Leaves dry out & brown.", "toDo",
				"Put screens up on the windy side.")
			.forEach((name, value) -> values.put(name, List.of(value)));
		return new DraftFields(values);
	}

	private String time(int hours) {
		return LocalDateTime.ofInstant(this.clock.instant().plus(Duration.ofHours(hours)), ZONE)
			.truncatedTo(ChronoUnit.MINUTES)
			.toString();
	}

	private Message send(String... counties) {
		Draft draft = this.desk.begin(null);
		Draft saved = this.desk.save(draft.id(), draft.version(), fields(counties));
		return this.desk.send(saved.id(), saved.version());
	}

	@Test
	void halfAFormIsKeptAndTellsAllThatIsMissing() {
		Draft draft = this.desk.begin(null);
		Draft saved = this.desk.save(draft.id(), draft.version(),
				new DraftFields(Map.of("headline", List.of("Cold wind tomorrow"), "onset", List.of("tomorrow"),
						"whatEs", List.of("Viento frío mañana por la tarde"))));
		assertThat(saved.fields().text("headline")).isEqualTo("Cold wind tomorrow");
		assertThatThrownBy(() -> this.desk.content(saved)).isInstanceOfSatisfying(BadInput.class,
				(ex) -> assertThat(ex.byField()).containsKeys("counties", "event", "responses", "severity", "onset",
						"expires", "what", "toDo", "headlineEs", "toDoEs"));
		assertThatThrownBy(() -> this.desk.send(saved.id(), saved.version())).isInstanceOf(BadInput.class);
		this.desk.drop(saved.id(), saved.version());
		assertThat(this.desk.open()).noneMatch((one) -> one.id().equals(saved.id()));
	}

	@Test
	void whatIsSentIsReadAtOnceAndNotedAndCounted() throws Exception {
		Message message = send(MERROW);
		Advisory advisory = this.advisories.find(new AdvisoryId(message.advisory())).orElseThrow();
		assertThat(advisory.state()).isEqualTo(AdvisoryState.AHEAD);
		assertThat(this.advisories.current(MERROW)).extracting(Advisory::id).contains(advisory.id());
		assertThat(this.advisories.current(SABLE)).extracting(Advisory::id).doesNotContain(advisory.id());
		byte[] cap = this.sent.document(message.id()).orElseThrow();
		CapSchema.check(cap);
		assertThat(new String(cap, StandardCharsets.UTF_8)).contains("<status>Test</status>",
				"<msgType>Alert</msgType>", "Leaves dry out &amp; brown.", "<areaDesc>Merrow County, US-IA</areaDesc>",
				"<polygon>42.25,-91.82 ");
		assertThat(this.audit.all(0, 5))
			.anyMatch((one) -> one.deed() == Deed.SENT_ALERT && one.what().equals("Alert 1: Cold wind; Merrow County")
					&& id("odile.marsh@example.org").equals(one.actor()));
		await().atMost(Duration.ofSeconds(20)).until(() -> this.sent.reach(message.id()).isPresent());
		// Tamsin Library garden has hollies, pieris and mountain laurel; the school
		// garden
		// in the same county has none of these.
		assertThat(this.advisories.concerned(advisory.id(), null, 100)).contains(id("tobias.wren@example.org"))
			.doesNotContain(id("bram.ostrand@example.org"), id("odile.marsh@example.org"), PersonId.SERVER);
		assertThat(this.sent.reach(message.id()).orElseThrow().people())
			.isEqualTo(this.advisories.concerned(advisory.id(), null, 100).size());
	}

	/** From the form to the outbox, and back to the desk. */
	@Test
	void whoIsConcernedIsToldAndTheDeskSeesIt() {
		Message message = send(MERROW);
		AdvisoryId id = new AdvisoryId(message.advisory());
		await().atMost(Duration.ofSeconds(20)).until(() -> {
			this.telling.run();
			return !this.delivered.of(id).isEmpty() && !this.delivered.making(id);
		});
		// It can wait for the morning, so none has left.
		assertThat(this.delivered.of(id)).containsEntry("E-mail", new Delivered(0, 1, 0));
		AfterReport.After seen = this.after.of(this.desk.sent(id));
		assertThat(seen.told()).isEqualTo(this.delivered.of(id));
		assertThat(seen.making()).isFalse();
		assertThat(seen.questions()).isNotNull();
		// The demo's specialist wants each at once: the one in force that concerns her is
		// in the
		// outbox.
		await().atMost(Duration.ofSeconds(40)).untilAsserted(() -> {
			this.telling.run();
			this.dispatcher.run();
			assertThat(this.outbox.ofPerson(id("odile.marsh@example.org"), 0, 50).mails())
				.anyMatch((mail) -> mail.series() == Series.ADVISORY && mail.text().contains("/advisories/"));
		});
	}

	@Test
	void theMailIsShownAsItWillBeSent() {
		Draft draft = this.desk.begin(null);
		Draft saved = this.desk.save(draft.id(), draft.version(), fields(MERROW));
		Preview.Seen seen = this.preview.of(saved, this.desk.content(saved));
		assertThat(seen.told()).hasSize(2);
		assertThat(seen.told().get(0).subject()).isEqualTo("Cold wind tomorrow: screen rhododendrons");
		assertThat(seen.told().get(0).text().replaceAll("\\s+", " ")).contains("Gusts of 30 mph (13 m/s)",
				"Where: The ridge.", "Put screens up on the windy side.", "/u/…");
		assertThat(seen.told().get(1).text().replaceAll("\\s+", " ")).contains("Dónde: The ridge.",
				"El especialista escribió este aviso solo en inglés.");
		assertThat(seen.told().get(0).push())
			.startsWith("Cold wind tomorrow: screen rhododendrons – From tomorrow on.");
		this.desk.drop(saved.id(), saved.version());
	}

	@Test
	void sitesAreToldWhatConcernsThem() {
		Message message = send(MERROW);
		List<Site> sites = this.register.sitesOf(id("tobias.wren@example.org"));
		var found = this.advisories.currentFor(sites.stream().map(Site::id).toList());
		for (Site site : sites) {
			assertThat(found.getOrDefault(site.id(), List.of())
				.stream()
				.anyMatch((one) -> one.message().equals(message.id()))).as(site.name())
				.isEqualTo(site.name().equals("Tamsin Library garden"));
		}
		assertThat(this.advisories.of(id("bram.ostrand@example.org"), 60)).extracting(Advisory::message)
			.doesNotContain(message.id());
	}

	@Test
	void aChangeAndAnEndFollowTheChainAndReachAllWhoWereTold() {
		Message first = send(MERROW, SABLE);
		AdvisoryId id = new AdvisoryId(first.advisory());
		List<PersonId> told = this.advisories.concerned(id, null, 100);
		Draft change = this.desk.follow(id, MessageType.UPDATE);
		assertThat(change.fields().text("headline")).isEqualTo("Cold wind tomorrow: screen rhododendrons");
		Draft saved = this.desk.save(change.id(), change.version(),
				change.fields().with("counties", List.of(SABLE)).with("reason", List.of("The ridge stays calm.")));
		Message second = this.desk.send(saved.id(), saved.version());
		assertThat(second.number()).isEqualTo(2);
		assertThat(this.advisories.concerned(id, null, 100)).as("who was told hears of the change").isEqualTo(told);
		assertThat(cap(second)).contains("<msgType>Update</msgType>",
				"<note>The place and the weather are invented. The ridge",
				"<references>" + first.link().triple() + "</references>");
		assertThat(cap(first)).as("the first document is what it was").contains("<msgType>Alert</msgType>");
		Draft end = this.desk.follow(id, MessageType.CANCEL);
		assertThat(end.fields().text("headline")).startsWith("Called off: Cold wind");
		Draft why = this.desk.save(end.id(), end.version(),
				new DraftFields(Map.of("headline", end.fields().list("headline"), "what",
						List.of("The wind turned before it came."), "toDo", List.of("Screens may come down again."),
						"counties", List.of(MERROW))));
		assertThat(why.counties()).as("places stay").containsExactly(SABLE);
		Message third = this.desk.send(why.id(), why.version());
		assertThat(this.advisories.find(id).orElseThrow().state()).isEqualTo(AdvisoryState.CANCELLED);
		assertThat(cap(third)).contains("<msgType>Cancel</msgType>",
				"<references>" + first.link().triple() + " " + second.link().triple() + "</references>",
				"<responseType>AllClear</responseType>", "<urgency>Past</urgency>");
		assertThat(this.advisories.current()).extracting(Advisory::id).doesNotContain(id);
		assertThatThrownBy(() -> this.desk.follow(id, MessageType.UPDATE)).isInstanceOf(BadInput.class)
			.hasMessageContaining("called off");
	}

	private String cap(Message message) {
		return new String(this.sent.document(message.id()).orElseThrow(), StandardCharsets.UTF_8);
	}

	@Test
	void whatWasSentCantBeChangedInTheDatabaseEither() {
		Message message = send(SABLE);
		assertThatThrownBy(() -> this.database.sql("update advisories.message set cap = ? where id = ?")
			.params(new byte[] { 1 }, message.id())
			.update()).hasMessageContaining("is never changed");
		assertThatThrownBy(() -> this.database
			.sql("update advisories.message set expires = expires + interval '1 day' where id = ?")
			.param(message.id())
			.update()).hasMessageContaining("is never changed");
	}

	@Test
	void nobodyWritesForCountiesOfOthers() {
		Draft draft = this.desk.begin(null);
		assertThatThrownBy(() -> this.desk.save(draft.id(), draft.version(), fields(MERROW, "us-ia-alder-county")))
			.isInstanceOfSatisfying(BadInput.class, (ex) -> assertThat(ex.byField()).containsKey("counties"));
		Draft merrow = this.desk.save(draft.id(), draft.version(), fields(MERROW));
		Message message = send(SABLE);
		become("tobias.wren@example.org");
		assertThatThrownBy(() -> this.desk.draft(merrow.id())).isInstanceOf(NotThere.class);
		assertThatThrownBy(() -> this.desk.send(merrow.id(), merrow.version())).isInstanceOf(NotThere.class);
		assertThatThrownBy(() -> this.desk.follow(new AdvisoryId(message.advisory()), MessageType.CANCEL))
			.isInstanceOf(NotThere.class);
		assertThat(this.desk.open()).noneMatch((one) -> one.id().equals(merrow.id()));
		SecurityContextHolder.getContext().setAuthentication(SignedIn.operator());
		assertThat(this.desk.draft(merrow.id()).fields().text("event")).isEqualTo("Cold wind");
	}

	@Test
	void whoeverWasOvertakenIsTold() {
		Draft draft = this.desk.begin(null);
		Draft saved = this.desk.save(draft.id(), draft.version(), fields(MERROW));
		assertThatThrownBy(() -> this.desk.save(draft.id(), draft.version(), fields(SABLE)))
			.isInstanceOf(Desk.Overtaken.class);
		assertThatThrownBy(() -> this.desk.send(saved.id(), draft.version())).isInstanceOf(Desk.Overtaken.class);
		this.desk.send(saved.id(), saved.version());
		assertThatThrownBy(() -> this.desk.send(saved.id(), saved.version())).as("sent once")
			.isInstanceOf(BadInput.class);
	}

	@Test
	@DisabledIfSystemProperty(named = "leafward.days-ahead", matches = "[1-9].*",
			disabledReason = "PostgreSQL has the machine’s clock")
	void aMessageGoesOutAtItsTimeOnceOrSaysWhyNot() {
		Draft good = schedule(fields(MERROW), time(1));
		assertThat(this.desk.sendDue(good.id())).as("not yet").isFalse();
		long before = this.sent.latest();
		itIsTime(good);
		assertThat(this.desk.due()).contains(good.id());
		assertThat(this.desk.sendDue(good.id())).isTrue();
		assertThat(this.desk.sendDue(good.id())).isFalse();
		assertThat(this.sent.latest()).isEqualTo(before + 1);
		Draft late = schedule(fields(MERROW), time(1));
		this.database.sql(
				"update advisories.draft set fields = jsonb_set(fields, '{expires}', '[\"2020-01-01T00:00\"]') where id = ?")
			.param(late.id())
			.update();
		itIsTime(late);
		assertThat(this.desk.sendDue(late.id())).isFalse();
		Draft back = this.desk.draft(late.id());
		assertThat(back.state()).isEqualTo(Draft.State.WRITING);
		assertThat(back.trouble()).contains("ends");
		assertThatThrownBy(() -> schedule(fields(MERROW), time(-3))).isInstanceOf(BadInput.class);
	}

	private Draft schedule(DraftFields fields, String at) {
		Draft draft = this.desk.begin(null);
		Draft saved = this.desk.save(draft.id(), draft.version(), fields);
		return this.desk.schedule(saved.id(), saved.version(), at);
	}

	private void itIsTime(Draft draft) {
		this.database.sql("update advisories.draft set send_at = now() - interval '1 minute' where id = ?")
			.param(draft.id())
			.update();
	}

	@Test
	void whereTwoPeopleAreWantedTheWriterDoesntSend() {
		Desk strict = new Desk(this.drafts, this.reader, this.prefilled, this.issuing, this.chains, this.proposals,
				this.regions, this.viewers, new AdvisorySettings("", "", "", "", true, this.environment), this.clock);
		Draft draft = this.desk.begin(null);
		Draft saved = this.desk.save(draft.id(), draft.version(), fields(MERROW));
		assertThat(strict.maySend(saved)).isFalse();
		Draft waits = strict.ask(saved.id(), saved.version());
		assertThat(strict.maySend(waits)).as("the writer").isFalse();
		SecurityContextHolder.getContext().setAuthentication(SignedIn.operator());
		assertThat(strict.maySend(waits)).as("another one").isTrue();
		Draft changed = strict.save(waits.id(), waits.version(), fields(MERROW));
		assertThat(strict.maySend(changed)).as("who changes it is its writer").isFalse();
	}

	@Test
	void anOutlineLeavesOutWhoLiesOutside() {
		// Around Tamsin, north of the ridge road.
		DraftFields part = fields(MERROW, SABLE).with("groups", List.of())
			.with("polygon", List.of("42.29, -91.45\n42.29, -91.35\n42.36, -91.35\n42.36, -91.45"));
		Draft draft = this.desk.begin(null);
		Draft saved = this.desk.save(draft.id(), draft.version(), part);
		var content = this.desk.content(saved);
		ReachPreview.Reach counted = this.reach.of(content.area(), content.plants());
		assertThat(counted.people()).isEqualTo(1);
		assertThat(counted.leftOut()).anyMatch((one) -> one.contains("outside of the outline"));
		Message message = this.desk.send(saved.id(), saved.version());
		assertThat(this.advisories.concerned(new AdvisoryId(message.advisory()), null, 10))
			.containsExactly(id("tobias.wren@example.org"));
		assertThat(cap(message)).contains("<areaDesc>Part of Merrow County, Sable County</areaDesc>",
				"<polygon>42.29,-91.45 42.29,-91.35 42.36,-91.35 42.36,-91.45 42.29,-91.45</polygon>");
	}

	@Test
	void peopleComeInPagesWithoutGapsOrRepeats() {
		Message message = this.issuing.send(UUID.randomUUID(), MessageType.ALERT,
				this.desk.content(
						this.desk.save(this.desk.begin(null).id(), 1, fields(MERROW, SABLE).with("groups", List.of()))),
				null, new Issuing.Hands(null, null));
		AdvisoryId id = new AdvisoryId(message.advisory());
		List<PersonId> whole = this.advisories.concerned(id, null, 1000);
		assertThat(whole).hasSizeGreaterThan(2).doesNotHaveDuplicates();
		List<PersonId> pages = new ArrayList<>();
		PersonId last = null;
		for (List<PersonId> page = this.advisories.concerned(id, last, 1); !page.isEmpty(); page = this.advisories
			.concerned(id, last, 1)) {
			pages.addAll(page);
			last = page.get(page.size() - 1);
		}
		assertThat(pages).isEqualTo(whole);
	}

	@Test
	void whatBecameOfItCountsTasksOfTheWork() {
		Instant now = this.clock.instant();
		Message message = send(MERROW);
		AfterReport.After report = this.after.of(this.chains.find(message.advisory()).orElseThrow());
		assertThat(report.tasks()).isNotNull();
		long tasks = this.database
			.sql("""
					select count(*) from care.task where person = ? and work = 'WATER' and state in ('PLANNED', 'DONE', 'SKIPPED')
						and kind <> 'HOLD_OFF' and from_day <= ? and to_day >= ?
					""")
			.param(id("tobias.wren@example.org").value())
			.param(now.plus(Duration.ofHours(30)).atZone(ZONE).toLocalDate())
			.param(now.atZone(ZONE).toLocalDate())
			.query(Long.class)
			.single();
		assertThat(report.tasks().all()).isEqualTo(tasks);
	}

	@Test
	void aRoleThatEndsEndsTheDesk() {
		PersonId odile = id("odile.marsh@example.org");
		this.roles.withdraw(odile, Role.SPECIALIST, "Sable County");
		try {
			become("odile.marsh@example.org");
			Draft draft = this.desk.begin(null);
			assertThatThrownBy(() -> this.desk.save(draft.id(), draft.version(), fields(SABLE)))
				.isInstanceOf(BadInput.class);
		}
		finally {
			this.roles.grant(odile, Role.SPECIALIST, "Sable County");
		}
	}

}
