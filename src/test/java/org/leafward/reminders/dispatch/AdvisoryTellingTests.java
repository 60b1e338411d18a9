package org.leafward.reminders.dispatch;

import jakarta.mail.internet.MimeMessage;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.PersonId;
import org.leafward.advisories.Advisory;
import org.leafward.advisories.AdvisoryState;
import org.leafward.advisories.Deliveries.Delivered;
import org.leafward.advisories.Severity;
import org.leafward.advisories.Urgency;
import org.leafward.reminders.AdvisoriesInMemory;
import org.leafward.reminders.Manner;
import org.leafward.reminders.RowFixture;
import org.leafward.reminders.Series;
import org.leafward.reminders.TaskFixture;
import org.leafward.reminders.Topic;
import org.leafward.reminders.Wish;
import org.leafward.reminders.Wishes;
import org.leafward.reminders.store.AdvisoryTable;
import org.leafward.reminders.store.AdvisoryTable.Kind;
import org.leafward.reminders.store.QueueTable;
import org.leafward.reminders.store.WishesTable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.leafward.reminders.dispatch.DispatchFixture.DAY;
import static org.leafward.reminders.dispatch.DispatchFixture.DUE;

/** Advisories from their event to the mail server, with a real SMTP conversation. */
class AdvisoryTellingTests {

	/** After the morning's mails. */
	private static final Instant NOON = DAY.atTime(LocalTime.NOON).atZone(RowFixture.ZONE).toInstant();

	private static final UUID ID = new UUID(9, 9);

	private DispatchFixture house;

	@BeforeEach
	void open() {
		this.house = new DispatchFixture();
		this.house.clock.set(NOON);
	}

	@AfterEach
	void close() {
		this.house.close();
	}

	private Advisory severe() {
		return AdvisoriesInMemory.with(
				AdvisoriesInMemory.moderate(ID, NOON, NOON.plusSeconds(86_400 * 2), NOON.plusSeconds(86_400 * 4)),
				"hot-dry-wind", Severity.SEVERE, Urgency.FUTURE);
	}

	private Advisory sent(Advisory advisory, Kind kind, PersonId... concerned) {
		this.house.garden.advisories.latest.put(advisory.id(), advisory);
		this.house.garden.advisories.concerned.put(advisory.id(), List.of(concerned));
		this.house.node().telling().begin(advisory.id().value(), advisory.message(), kind, advisory.sent());
		return advisory;
	}

	private int go() {
		Node node = this.house.node();
		node.telling().run();
		return node.dispatcher().run();
	}

	private Map<String, Long> states() {
		Map<String, Long> states = new TreeMap<>();
		this.house.database
			.sql("select state, count(*) as n from reminders.reminder where advisory is not null group by state")
			.query((row) -> {
				states.put(row.getString("state"), row.getLong("n"));
			});
		return states;
	}

	private static String plain(MimeMessage mail) throws Exception {
		return (String) ((jakarta.mail.Multipart) mail.getContent()).getBodyPart(0).getContent();
	}

	@Test
	void oneThatCantWaitLeavesAtOnceAsAMailOfItsOwn() throws Exception {
		Advisory advisory = sent(severe(), Kind.ISSUED, TaskFixture.ADA);
		assertThat(go()).isOne();
		MimeMessage mail = this.house.received()[0];
		assertThat(mail.getSubject()).isEqualTo(advisory.english().headline());
		assertThat(plain(mail).replaceAll("\\s+", " ")).contains("Wind of 30 mph (13 m/s) at 96 °F (36 °C).",
				"Where: Alder County", "When: Thursday to Saturday evening", "What to do", "Water deeply at sunrise",
				"You go before any plant", "/advisories/" + ID);
		String thread = "<advisory-%s@example.org>".formatted(ID);
		assertThat(mail.getHeader("In-Reply-To")).containsExactly(thread);
		assertThat(mail.getHeader("References")).containsExactly(thread);
		assertThat(mail.getHeader("List-Id")[0]).contains("advisory.reminders.example.org");
		assertThat(mail.getHeader("List-Unsubscribe")).hasSize(1);
		assertThat(mail.getHeader("List-Unsubscribe-Post")).containsExactly("List-Unsubscribe=One-Click");
		assertThat(mail.getHeader("Auto-Submitted")).containsExactly("auto-generated");
		assertThat(go()).as("the second time nothing happens").isZero();
	}

	@Test
	void aChangeAndTheEndGoToThoseToldBeforeAndToNobodyElseWhoWasLeftOut() throws Exception {
		PersonId ben = this.house.garden.person("ben", RowFixture.ZONE);
		PersonId cleo = this.house.garden.person("cleo", RowFixture.ZONE);
		sent(severe(), Kind.ISSUED, TaskFixture.ADA);
		assertThat(go()).isOne();
		String first = this.house.receivedIds().get(0);
		this.house.clock.advance(Duration.ofDays(1));
		// Ada's garden is no longer in it, and Ben's is.
		Advisory changed = sent(AdvisoriesInMemory.next(severe(), AdvisoryState.AHEAD, NOON.plusSeconds(86_400),
				"The wind comes farther north."), Kind.UPDATED, ben);
		assertThat(go()).isEqualTo(2);
		Map<String, String> subjects = new TreeMap<>();
		Set<String> before = new HashSet<>(this.house.receivedIds());
		for (MimeMessage mail : this.house.received()) {
			if (mail.getMessageID().equals(first)) {
				continue;
			}
			subjects.put(mail.getAllRecipients()[0].toString().replaceAll(".*<|>", ""), mail.getSubject());
			assertThat(mail.getHeader("References")).containsExactly("<advisory-%s@example.org>".formatted(ID));
		}
		assertThat(subjects).hasSize(2)
			.containsEntry("ada@example.org", "Changed: " + changed.english().headline())
			.containsEntry("ben@example.org", changed.english().headline());
		this.house.clock.advance(Duration.ofDays(1));
		// Cleo moved in meanwhile: what was called off before she heard of it isn't told.
		sent(AdvisoriesInMemory.next(changed, AdvisoryState.CANCELLED, NOON.plusSeconds(2 * 86_400), "It calmed down."),
				Kind.CANCELLED, ben, cleo);
		assertThat(go()).isEqualTo(2);
		List<String> ends = new ArrayList<>();
		for (MimeMessage mail : this.house.received()) {
			if (before.contains(mail.getMessageID())) {
				continue;
			}
			ends.add(mail.getAllRecipients()[0].toString().replaceAll(".*<|>", ""));
			assertThat(mail.getSubject()).isEqualTo("Called off: " + changed.english().headline());
			assertThat(plain(mail)).contains("Why it was called off: It calmed down.").doesNotContain("What it can do");
		}
		assertThat(ends).containsExactlyInAnyOrder("ada@example.org", "ben@example.org");
	}

	@Test
	void whatWaitsIsToldAsItIsWhenItLeaves() {
		Advisory first = AdvisoriesInMemory.with(severe(), "hot-dry-wind", Severity.MODERATE, Urgency.FUTURE);
		sent(first, Kind.ISSUED, TaskFixture.ADA);
		assertThat(go()).as("it waits for the morning").isZero();
		Advisory changed = sent(AdvisoriesInMemory.next(first, AdvisoryState.AHEAD, NOON.plusSeconds(60), "Later."),
				Kind.UPDATED, TaskFixture.ADA);
		go();
		assertThat(states()).isEqualTo(Map.of("WITHDRAWN", 1L, "PENDING", 1L));
		this.house.clock.set(DUE.plusSeconds(86_400));
		assertThat(go()).isOne();
		assertThat(this.house.mails().get(0).subject()).as("she never heard of the first")
			.isEqualTo(changed.english().headline());
		sent(AdvisoriesInMemory.next(AdvisoriesInMemory.moderate(new UUID(9, 10), NOON, NOON.plusSeconds(300_000),
				NOON.plusSeconds(400_000)), AdvisoryState.CANCELLED, NOON.plusSeconds(90_000), "No."), Kind.CANCELLED,
				TaskFixture.ADA);
		assertThat(go()).as("called off before anybody was told").isZero();
	}

	@Test
	void aDayHasOneMailAndTheMorningTellsBoth() throws Exception {
		this.house.clock.set(DUE.minusSeconds(3600));
		this.house.planned("one");
		sent(AdvisoriesInMemory.with(severe(), "hot-dry-wind", Severity.SEVERE, Urgency.FUTURE), Kind.ISSUED,
				TaskFixture.ADA);
		this.house.node().telling().run();
		this.house.clock.set(DUE);
		assertThat(go()).isOne();
		MimeMessage mail = this.house.received()[0];
		assertThat(mail.getSubject()).startsWith("Advisory: Hot, dry wind").contains("Thu 12 Nov 2026:");
		assertThat(plain(mail)).contains("Advisories\r\n", "Today's reminders",
				"Hot, dry wind: water young trees early");
		assertThat(mail.getHeader("References")).as("a digest stands alone").isNull();
		this.house.clock.set(NOON);
		sent(AdvisoriesInMemory.with(AdvisoriesInMemory.moderate(new UUID(9, 11), NOON, NOON.plusSeconds(200_000),
				NOON.plusSeconds(300_000)), "hot-dry-wind", Severity.SEVERE, Urgency.IMMEDIATE), Kind.ISSUED,
				TaskFixture.ADA);
		assertThat(go()).as("the mail of the day has left").isZero();
		sent(AdvisoriesInMemory.with(
				AdvisoriesInMemory.moderate(new UUID(9, 12), NOON, NOON.plusSeconds(40_000), NOON.plusSeconds(70_000)),
				"late-freeze", Severity.MODERATE, Urgency.EXPECTED), Kind.ISSUED, TaskFixture.ADA);
		assertThat(go()).as("but for a frost").isOne();
		// What came up at noon leaves with tomorrow's.
		this.house.clock.set(DUE.plusSeconds(86_400));
		assertThat(go()).isOne();
	}

	@Test
	void tasksWaitWhenAnAdvisoryWasTheMailOfTheDay() {
		sent(severe(), Kind.ISSUED, TaskFixture.ADA);
		assertThat(go()).isOne();
		this.house.planned("one");
		assertThat(go()).isZero();
		this.house.clock.set(DUE.plusSeconds(86_400));
		assertThat(go()).isOne();
	}

	@Test
	void whoTurnedThemOffOrLeftThemHearsNothing() {
		PersonId ben = this.house.garden.person("ben", RowFixture.ZONE);
		WishesTable wishes = new WishesTable(this.house.database);
		Wishes usual = Wishes.USUAL;
		Advisory moderate = AdvisoriesInMemory.with(severe(), "hot-dry-wind", Severity.MODERATE, Urgency.FUTURE);
		sent(moderate, Kind.ISSUED, TaskFixture.ADA, ben);
		go();
		assertThat(states()).isEqualTo(Map.of("PENDING", 2L));
		// Between making and sending.
		wishes.save(ben, new Wishes(usual.speech(), usual.morning(), usual.outlookDay(), usual.quiet(), true, null,
				Map.of(Wishes.MAIL, Map.of(Topic.ADVISORY, Wish.of(Manner.OFF))), Map.of()));
		wishes.stop(TaskFixture.ADA, Wishes.MAIL, Series.ADVISORY, NOON);
		this.house.node().materialiser().person(ben);
		assertThat(states()).as("as the page of wishes does").isEqualTo(Map.of("PENDING", 1L, "WITHDRAWN", 1L));
		this.house.clock.set(DUE.plusSeconds(86_400));
		assertThat(go()).isZero();
		assertThat(states()).isEqualTo(Map.of("WITHDRAWN", 2L));
	}

	@Test
	void aNodeThatDiesInTheMiddleLeavesNobodyOutAndTellsNobodyTwice() throws Exception {
		PersonId[] all = new PersonId[2 * AdvisoryTelling.PAGE + 30];
		for (int number = 0; number < all.length; number++) {
			all[number] = this.house.garden.person("p" + number, RowFixture.ZONE);
		}
		Advisory advisory = sent(severe(), Kind.ISSUED, all);
		assertThat(this.house.node().telling().run(1)).isEqualTo(AdvisoryTelling.PAGE);
		AdvisoryTable table = new AdvisoryTable(this.house.database);
		assertThat(table.making(advisory.id())).isTrue();
		// It dies within a page: what the page wrote goes with it.
		Node dying = this.house.node();
		this.house.garden.persons.remove(all[0]);
		this.house.database.sql("""
				create function reminders.die() returns trigger language plpgsql as
				$$ begin raise exception 'killed'; end $$""").update();
		this.house.database.sql("""
				create trigger die before update on reminders.advisory_round
				for each row execute function reminders.die()""").update();
		assertThatThrownBy(() -> dying.telling().run()).hasMessageContaining("killed");
		assertThat(states()).isEqualTo(Map.of("PENDING", (long) AdvisoryTelling.PAGE));
		this.house.database.sql("drop trigger die on reminders.advisory_round").update();
		// Two nodes go on at once.
		CyclicBarrier together = new CyclicBarrier(2);
		ExecutorService threads = Executors.newFixedThreadPool(2);
		try {
			Callable<Integer> work = () -> {
				Node node = this.house.node();
				together.await();
				return node.telling().run();
			};
			List<Future<Integer>> both = List.of(threads.submit(work), threads.submit(work));
			for (Future<Integer> one : both) {
				one.get();
			}
		}
		finally {
			threads.shutdown();
		}
		this.house.node().telling().run();
		long people = this.house.database
			.sql("select count(distinct person_id) from reminders.reminder where advisory is not null")
			.query(Long.class)
			.single();
		assertThat(people).isBetween(all.length - 1L, (long) all.length);
		assertThat(states()).isEqualTo(Map.of("PENDING", people));
		assertThat(table.making(advisory.id())).isFalse();
		assertThat(this.house.node().telling().run()).isZero();
		assertThat(table.delivered(advisory.id())).isEqualTo(Map.of("mail", new Delivered(0, people, 0)));
	}

	@Test
	void whatBecameOfThemStaysKnownWhenRowsAreTidiedAway() {
		Advisory advisory = sent(severe(), Kind.ISSUED, TaskFixture.ADA);
		assertThat(go()).isOne();
		AdvisoryTable table = new AdvisoryTable(this.house.database);
		Map<String, Delivered> one = Map.of("mail", new Delivered(1, 0, 0));
		assertThat(table.delivered(advisory.id())).isEqualTo(one);
		assertThat(new QueueTable(this.house.database).purge(NOON.plusSeconds(86_400 * 400L), Duration.ofDays(100)))
			.isPositive();
		assertThat(states()).isEmpty();
		assertThat(table.delivered(advisory.id())).isEqualTo(one);
	}

}
