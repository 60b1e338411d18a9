package org.leafward.care.pack;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leafward.accounts.People;
import org.leafward.care.PackVersion;
import org.leafward.care.Replanning;
import org.leafward.care.RulePreview;
import org.leafward.care.RulePreviews;
import org.leafward.care.store.PackTable;
import org.leafward.care.workshop.Author;
import org.leafward.care.workshop.PackDrafted;
import org.leafward.care.workshop.PackHistory;
import org.leafward.care.workshop.PublishConflict;
import org.leafward.care.workshop.Workshop;
import org.leafward.climate.Observations;
import org.leafward.climate.Station;
import org.leafward.climate.StationId;
import org.leafward.climate.Stations;
import org.leafward.knowledge.BrokenKnowledge;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.measure.BadInput;
import org.leafward.measure.GeoPoint;
import org.leafward.plants.Catalogue;
import org.leafward.plants.SpeciesId;
import org.leafward.register.NewPlanting;
import org.leafward.register.NewSite;
import org.leafward.register.Placement;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SoilTexture;
import org.leafward.register.Sun;
import org.leafward.register.Wind;
import org.leafward.support.TestDatabase;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.ContextConfiguration;
import org.springframework.transaction.PlatformTransactionManager;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.awaitility.Awaitility.await;

/** Versions of packs against the database: published, seen by all nodes, taken back. */
// The name gives it a database of its own: it counts all sites.
@SpringBootTest(properties = { "spring.quartz.auto-startup=false", "leafward.test=published-packs" })
@ContextConfiguration(initializers = TestDatabase.class)
class PublishedPacksTests {

	private static final String PACK = "boxwood";

	private static final String RULE = "winter-thinning";

	private static final Author ADA = new Author("Ada", UUID.fromString("00000000-0000-4000-8000-000000000002"));

	@Autowired
	private Workshop workshop;

	@Autowired
	private PackHistory history;

	@Autowired
	private RulePreviews previews;

	@Autowired
	private PublishedRulePacks packs;

	@Autowired
	private Replanning replanning;

	@Autowired
	private KnowledgeFiles files;

	@Autowired
	private KnowledgeReader reader;

	@Autowired
	private Catalogue catalogue;

	@Autowired
	private PackTable table;

	@Autowired
	private Clock clock;

	@Autowired
	private PlatformTransactionManager transactions;

	@Autowired
	private JdbcClient database;

	@Autowired
	private Register register;

	@Autowired
	private People people;

	@Autowired
	private Stations stations;

	@Autowired
	private Observations observations;

	@BeforeEach
	void plant() throws Exception {
		if (!this.register.sites(0, 1).isEmpty()) {
			return;
		}
		StationId station = new StationId("XX000000007");
		GeoPoint point = new GeoPoint(45, -90, 200);
		this.stations.register(new Station(station, "Made up", point, true));
		this.observations.load(station, new ByteArrayInputStream(record(station)), "record.csv");
		for (String county : List.of("Elm County", "Fir County", "Elm County")) {
			Site site = this.register.addSite(
					this.people.join("Ada", UUID.randomUUID() + "@example.org", ZoneId.of("America/Chicago")).id(),
					new NewSite("Garden", county, point, ZoneId.of("America/Chicago"), SoilTexture.LOAM, Sun.FULL_SUN,
							Wind.AVERAGE));
			this.register.addPlantings(site.id(), List.of(new NewPlanting(new SpeciesId("buxus-sempervirens"), "hedge",
					3, LocalDate.of(2015, 5, 20), Placement.GROUND, false, false)));
		}
	}

	@Test
	void thePreviewCountsWhatPublishingWritesAndGoingBackUndoesIt() throws Exception {
		settle();
		PackVersion before = newest();
		String changed = before.content().replaceFirst("days: -1, season: next", "days: -8, season: next");
		PackDrafted draft = this.workshop.draft(PACK, changed);
		assertThat(draft.changed()).containsExactly(RULE);
		assertThat(draft.version()).isEqualTo(before.version() + 1);
		RulePreview preview = this.previews.of(draft.packs());
		assertThat(preview.whole()).isTrue();
		assertThat(preview.sites()).isEqualTo(3);
		assertThat(preview.total().changed()).isPositive();
		assertThat(preview.counties().get("Elm County").changed())
			.isEqualTo(2 * preview.counties().get("Fir County").changed());
		assertThat(preview.samples()).allMatch((one) -> one.before() != null && one.after() != null
				&& one.after().to().equals(one.before().to().minusDays(7)));
		Map<UUID, Row> rows = rows();
		PackVersion published = this.workshop.publish(PACK, before.version(), changed, "a week shorter", ADA);
		settle();
		assertThat(written(rows, rows())).isEqualTo(preview.total());
		assertThat(published.changed()).containsExactly(RULE);
		assertThat(this.database.sql("select distinct pack_version from care.task where rule = ? and sequence > 0")
			.param(PACK + "/" + RULE)
			.query(Integer.class)
			.list()).containsExactly(published.version());
		assertThat(this.database
			.sql("select count(*) from care.task where rule like 'boxwood/%' and rule <> ? and pack_version = ?")
			.param(PACK + "/" + RULE)
			.param(published.version())
			.query(Long.class)
			.single()).as("tasks of the pack's other rules stay as they are").isZero();

		PackVersion back = this.workshop.goBack(PACK, published.version(), before.version(), "it was right", ADA);
		settle();
		assertThat(back.version()).isEqualTo(published.version() + 1);
		assertThat(withoutVersion(back)).isEqualTo(withoutVersion(before));
		rows().forEach((id, row) -> assertThat(row.window()).isEqualTo(rows.get(id).window()));
		assertThat(this.history.of(PACK, RULE)).extracting((one) -> one.version().version())
			.startsWith(back.version(), published.version());
		assertThat(this.history.of(PACK, RULE).get(0).lines()).extracting((line) -> line.change().name())
			.contains("GONE", "NEW");
	}

	private static String withoutVersion(PackVersion version) {
		return version.content().replaceFirst("(?m)^version: \\d+$", "");
	}

	@Test
	void anotherNodeSeesWhatWasPublished() {
		PublishedRulePacks other = node(new KnowledgeFiles(""));
		PackVersion before = newest();
		PackVersion published = this.workshop.publish(PACK, before.version(),
				before.content().replaceFirst("title: Thin it.*", "title: Thin it out by hand"), "clearer", ADA);
		assertThat(other.latest().find("boxwood/winter-thinning").orElseThrow().title())
			.isEqualTo("Thin it out by hand");
		assertThat(other.latest().fingerprint()).isEqualTo(this.packs.latest().fingerprint());
		assertThat(node(new KnowledgeFiles("")).latest().fingerprint()).as("after a restart")
			.isEqualTo(this.packs.latest().fingerprint());
		assertThat(other.versionOfFile(PACK))
			.hasValueSatisfying((file) -> assertThat(file).isLessThan(published.version()));
	}

	@Test
	void aFileWithAHigherVersionWinsAndOneWithALowerDoesNot(@TempDir Path folder) throws Exception {
		PackVersion before = newest();
		PackVersion published = this.workshop.publish(PACK, before.version(),
				before.content().replaceFirst("title: Thin it.*", "title: Thin it, as published"), "published", ADA);
		Path file = Files.createDirectories(folder.resolve("rulepacks")).resolve("boxwood.yaml");
		Files.writeString(file,
				published.content()
					.replace("title: Thin it, as published", "title: Thin it, as filed")
					.replaceFirst("(?m)^version: .*", "version: " + before.version()));
		assertThat(node(new KnowledgeFiles(folder.toString())).latest()
			.find("boxwood/winter-thinning")
			.orElseThrow()
			.title()).isEqualTo("Thin it, as published");
		int higher = published.version() + 3;
		Files.writeString(file, Files.readString(file).replaceFirst("(?m)^version: .*", "version: " + higher));
		PublishedRulePacks node = node(new KnowledgeFiles(folder.toString()));
		assertThat(node.latest().find("boxwood/winter-thinning").orElseThrow().title()).isEqualTo("Thin it, as filed");
		assertThat(newest().origin()).isEqualTo(PackVersion.Origin.FILE);
		assertThat(newest().changed()).containsExactly("winter-thinning");
		assertThat(this.packs.latest().find("boxwood/winter-thinning").orElseThrow().title())
			.as("the other node takes it from the database")
			.isEqualTo("Thin it, as filed");
	}

	private PublishedRulePacks node(KnowledgeFiles own) {
		return new PublishedRulePacks(own, this.reader, this.catalogue, this.table, this.clock, this.transactions);
	}

	@Test
	void theSecondOfTwoIsToldWhatTheFirstChanged() throws Exception {
		PackVersion before = newest();
		ExecutorService both = Executors.newFixedThreadPool(2);
		CountDownLatch start = new CountDownLatch(1);
		List<Future<PackVersion>> asked = List.of("first", "second").stream().map((word) -> both.submit(() -> {
			start.await();
			return this.workshop.publish(PACK, before.version(),
					before.content().replaceFirst("title: Trim lightly.*", "title: Trim lightly, said the " + word),
					word, ADA);
		})).toList();
		start.countDown();
		int published = 0;
		for (Future<PackVersion> one : asked) {
			try {
				one.get();
				published++;
			}
			catch (ExecutionException ex) {
				assertThat(ex).hasCauseInstanceOf(PublishConflict.class);
				PublishConflict conflict = (PublishConflict) ex.getCause();
				assertThat(conflict.newest().version()).isEqualTo(before.version() + 1);
				assertThat(conflict.changes()).anyMatch((line) -> line.text().contains("said the"));
			}
		}
		both.shutdown();
		assertThat(published).isEqualTo(1);
		assertThat(newest().version()).isEqualTo(before.version() + 1);
		assertThat(newest().by()).isEqualTo("Ada");
	}

	@Test
	void aBrokenDraftIsRefusedByLineAndNothingIsWritten() {
		PackVersion before = newest();
		String broken = before.content().replaceFirst("kind: do", "kind: doo");
		BrokenKnowledge refused = catchThrowableOfType(BrokenKnowledge.class,
				() -> this.workshop.publish(PACK, before.version(), broken, "oops", ADA));
		assertThat(refused.problems()).anySatisfy((problem) -> {
			assertThat(problem.file()).isEqualTo(PACK);
			assertThat(problem.line()).isEqualTo(8);
			assertThat(problem.mend()).contains("hold-off");
		});
		assertThatThrownBy(() -> this.workshop.publish(PACK, before.version(), before.content(), " ", ADA))
			.isInstanceOf(BadInput.class);
		assertThatThrownBy(() -> this.workshop.draft("oaks", before.content())).isInstanceOf(BrokenKnowledge.class);
		assertThat(newest()).isEqualTo(before);
	}

	@Test
	void aRuleThatAnotherPackNamesCantBeTakenOut() {
		String evergreens = this.history.newest("evergreens").orElseThrow().content();
		String without = evergreens.replace("id: wait-on-winter-burn", "id: wait-a-while");
		BrokenKnowledge refused = catchThrowableOfType(BrokenKnowledge.class,
				() -> this.workshop.draft("evergreens", without));
		assertThat(refused.problems()).anyMatch((one) -> one.file().equals("the pack boxwood")
				&& one.what().contains("evergreens/wait-on-winter-burn"));
	}

	@Test
	void nothingIsPublishedWhereNothingDiffers() {
		PackVersion before = newest();
		assertThat(this.workshop.publish(PACK, before.version(), before.content().replace("\n", "\r\n"), "same", ADA))
			.isEqualTo(before);
	}

	private PackVersion newest() {
		return this.history.newest(PACK).orElseThrow();
	}

	private record Row(String state, int sequence, String window) {
	}

	private Map<UUID, Row> rows() {
		Map<UUID, Row> rows = new HashMap<>();
		this.database.sql("select id, state, sequence, from_day || ' ' || to_day from care.task").query((row) -> {
			rows.put(row.getObject(1, UUID.class), new Row(row.getString(2), row.getInt(3), row.getString(4)));
		});
		return rows;
	}

	private static RulePreview.Counts written(Map<UUID, Row> before, Map<UUID, Row> after) {
		int added = 0;
		int changed = 0;
		int withdrawn = 0;
		for (Map.Entry<UUID, Row> one : after.entrySet()) {
			Row old = before.get(one.getKey());
			if (old == null) {
				added++;
			}
			else if (old.sequence() != one.getValue().sequence()) {
				if (one.getValue().state().equals("WITHDRAWN")) {
					withdrawn++;
				}
				else {
					changed++;
				}
			}
		}
		return new RulePreview.Counts(added, changed, withdrawn);
	}

	/** Waits until the listener has queued all sites and nothing is left to derive. */
	private void settle() {
		await("the listener to hear of the published pack").atMost(Duration.ofMinutes(1))
			.pollDelay(Duration.ofMillis(500))
			.until(() -> this.database.sql("""
					select count(*) from events.event_publication where listener_id = 'care.rule-pack-published'
					""").query(Long.class).single() == 0);
		this.replanning.drain(Duration.ofMinutes(1));
	}

	/** Twenty years with a freeze-free summer, made up. */
	private static byte[] record(StationId station) {
		StringBuilder lines = new StringBuilder();
		Random random = new Random(7);
		for (LocalDate day = LocalDate.of(2004, 1, 1); day.getYear() < 2026; day = day.plusDays(1)) {
			double mean = 8 - 16 * Math.cos(2 * Math.PI * (day.getDayOfYear() - 15) / 365.25)
					+ 3 * random.nextGaussian();
			String date = day.toString().replace("-", "");
			lines.append("%s,%s,TMIN,%d,,,7,\n".formatted(station.value(), date, Math.round(10 * (mean - 5))));
			lines.append("%s,%s,TMAX,%d,,,7,\n".formatted(station.value(), date, Math.round(10 * (mean + 5))));
		}
		return lines.toString().getBytes(StandardCharsets.UTF_8);
	}

}
