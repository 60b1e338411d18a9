package org.leafward.care.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.PersonId;
import org.leafward.care.CareTask;
import org.leafward.care.TaskId;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.care.TaskText;
import org.leafward.measure.DayWindow;
import org.leafward.measure.GeoPoint;
import org.leafward.pages.Mark;
import org.leafward.pages.TaskLine;
import org.leafward.pages.YearStrip;
import org.leafward.plants.SpeciesId;
import org.leafward.register.Placement;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.leafward.register.SoilTexture;
import org.leafward.register.Sun;
import org.leafward.register.Wind;

/** What the strip of a site shows, the words being ours. */
class SiteStripTests {

	private static final Site SITE = new Site(new SiteId(new UUID(1, 1)), new PersonId(new UUID(1, 2)), "Library",
			"Elm County", new GeoPoint(42.3, -91.4, 388), ZoneId.of("America/Chicago"), SoilTexture.LOAM, Sun.FULL_SUN,
			Wind.AVERAGE);

	private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

	private static final DayWindow YEAR = new DayWindow(LocalDate.of(2026, 10, 1), LocalDate.of(2027, 9, 30));

	private final List<Planting> plantings = new ArrayList<>();

	private final List<CareTask> tasks = new ArrayList<>();

	@Test
	void plantingsWithTheSameCareShareARow() {
		plant(1, "hollies at the door");
		plant(2, "pieris");
		plant(3, "white pine");
		plant(4, "stepping stones");
		for (int planting : List.of(1, 2, 3)) {
			task(planting, TaskKind.DO, "Water deeply", "2026-11-01", "2026-11-14");
		}
		task(3, TaskKind.HOLD_OFF, "Leave it unpruned", "2026-10-01", "2026-12-01");
		YearStrip strip = strip();
		assertThat(strip.rows()).extracting(YearStrip.Row::label)
			.as("a planting without care needs no row")
			.containsExactly("hollies at the door; pieris", "white pine");
		assertThat(SiteStrip.inWords(strip).keySet()).containsExactly("hollies at the door; pieris", "white pine");
		assertThat(strip.lines()).extracting((line) -> line.mark().word() + " " + line.label() + " " + line.when())
			.containsExactly("Do Water deeply 1 Nov – 14 Nov", "Hold off Leave it unpruned 1 Oct – 1 Dec",
					"Do Water deeply 1 Nov – 14 Nov");
	}

	@Test
	void whatIsDoneStaysAndIsToldApart() {
		plant(1, "hollies");
		task(1, TaskKind.DO, "Water deeply", "2026-11-01", "2026-11-14");
		task(1, TaskKind.DO, "Water deeply", "2026-11-15", "2026-11-28");
		CareTask first = this.tasks.get(0);
		this.tasks.set(0, done(first));
		YearStrip strip = strip();
		assertThat(strip.lines()).extracting((line) -> line.mark().word() + " " + line.label() + " " + line.when())
			.containsExactly("Done Water deeply 1 Nov – 14 Nov", "Do Water deeply 15 Nov – 28 Nov");
		assertThat(strip.svg()).contains("class=\"mark-done\"", "class=\"tick\"", "Done: Water deeply, hollies");
	}

	private static CareTask done(CareTask task) {
		return new CareTask(task.id(), task.planting(), task.plant(), task.site(), task.siteName(), task.person(),
				task.rule(), task.season(), task.occurrence(), task.kind(), task.window(), task.text(), TaskState.DONE,
				null, 1, Instant.EPOCH, Instant.EPOCH);
	}

	@Test
	void theDaysOfARampAreOneEntryWithoutTheirNumber() {
		plant(1, "lemon tree");
		task(1, TaskKind.RAMP_DAY, "Day 1 of 2: Move it outdoors", "2027-05-20", "2027-05-20");
		task(1, TaskKind.RAMP_DAY, "Day 2 of 2: Move it outdoors", "2027-05-21", "2027-05-21");
		assertThat(strip().lines()).singleElement().satisfies((line) -> {
			assertThat(line.label()).isEqualTo("Move it outdoors");
			assertThat(line.when()).isEqualTo("20 May – 21 May 2027");
		});
	}

	@Test
	void whatEndsFirstIsToldFirst() {
		List<TaskLine> lines = List.of(line("since summer", "2026-08-01", "2027-03-01"),
				line("until tomorrow", "2026-11-20", "2026-11-26"), line("next week", "2026-12-01", "2026-12-02"));
		assertThat(lines.stream().sorted(Gathered.byUrgency(TODAY))).extracting(TaskLine::title)
			.containsExactly("until tomorrow", "since summer", "next week");
	}

	private static TaskLine line(String title, String from, String to) {
		return new TaskLine(Mark.DO, title, "plant", SITE.name(), LocalDate.parse(from), LocalDate.parse(to), "/t",
				null, false);
	}

	private YearStrip strip() {
		return SiteStrip.of(SITE, YEAR, TODAY, this.plantings, this.tasks, List.of());
	}

	private void plant(int number, String label) {
		this.plantings.add(new Planting(new PlantingId(new UUID(2, number)), SITE.id(), new SpeciesId("ilex-opaca"),
				label, 1, LocalDate.of(2015, 5, 1), Placement.GROUND, false, false));
	}

	private void task(int planting, TaskKind kind, String title, String from, String to) {
		this.tasks.add(new CareTask(new TaskId(new UUID(3, this.tasks.size())), new PlantingId(new UUID(2, planting)),
				"plant", SITE.id(), SITE.name(), SITE.owner(), "pack/rule-" + kind, 2026, 0, kind,
				new DayWindow(LocalDate.parse(from), LocalDate.parse(to)),
				new TaskText(title, "How.", null, "Why.", null, null), TaskState.PLANNED, null, 0, Instant.EPOCH,
				Instant.EPOCH));
	}

}
