package org.leafward.care.core.plan;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.leafward.care.TaskKind;
import org.leafward.care.core.rule.PlantingDateAnchor;
import org.leafward.care.core.rule.Ramp;
import org.leafward.care.core.rule.RampStep;
import org.leafward.care.core.rule.RulePack;
import org.leafward.care.core.rule.Span;
import org.leafward.measure.DayWindow;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leafward.care.core.plan.PlanFixture.FALL;
import static org.leafward.care.core.plan.PlanFixture.GROUND;
import static org.leafward.care.core.plan.PlanFixture.SPRING;
import static org.leafward.care.core.plan.PlanFixture.THAW;
import static org.leafward.care.core.plan.PlanFixture.boxwoodPlantedOn;
import static org.leafward.care.core.plan.PlanFixture.markers;
import static org.leafward.care.core.plan.PlanFixture.on;
import static org.leafward.care.core.plan.PlanFixture.onNext;
import static org.leafward.care.core.plan.PlanFixture.pack;
import static org.leafward.care.core.plan.PlanFixture.rule;

class PlannerTests {

	private static final List<Season> ONE = List.of(new Season(2027, Hemisphere.NORTH));

	@Test
	void hangsAWindowOnMarkersWithOffsets() {
		// 56 days before the first freeze of 15 October is 20 August: the shearing
		// cut-off of common practice.
		Plan plan = plan(ONE, pack(rule("hold", TaskKind.HOLD_OFF, new Span(on(FALL, -56), on(GROUND, 0), 0, 1))));
		assertThat(plan.tasks()).singleElement().satisfies((task) -> {
			assertThat(task.window()).isEqualTo(window("2027-08-20", "2027-12-10"));
			assertThat(task.rule()).isEqualTo("test/hold");
			assertThat(task.plant()).isEqualTo("hedge by the gate (common boxwood)");
		});
	}

	@Test
	void reachesIntoTheNextSeasonOverTheNewYear() {
		Plan plan = plan(ONE, pack(rule("winter", TaskKind.DO, new Span(on(GROUND, 0), onNext(THAW, 0), 0, 1))));
		assertThat(plan.tasks().get(0).window()).isEqualTo(window("2027-12-10", "2028-03-05"));
	}

	@Test
	void cutsAWindowIntoRepeatsWithoutGapOrOverlap() {
		Plan plan = plan(ONE, pack(rule("water", TaskKind.DO, new Span(on(FALL, 0), on(FALL, 17), 7, 1))));
		assertThat(plan.tasks()).extracting(PlannedTask::window)
			.containsExactly(window("2027-10-15", "2027-10-21"), window("2027-10-22", "2027-10-28"),
					window("2027-10-29", "2027-11-01"));
		assertThat(plan.tasks()).extracting(PlannedTask::occurrence).containsExactly(1, 2, 3);
	}

	@Test
	void joinsALastRepeatOfLessThanHalfTheLengthToTheOneBefore() {
		Plan plan = plan(ONE, pack(rule("water", TaskKind.DO, new Span(on(FALL, 0), on(FALL, 16), 7, 1))));
		assertThat(plan.tasks()).extracting(PlannedTask::window)
			.containsExactly(window("2027-10-15", "2027-10-21"), window("2027-10-22", "2027-10-31"));
	}

	@Test
	void dropsAWindowThatEndsBeforeItBeginsOrIsTooShort() {
		assertThat(plan(ONE, pack(rule("a", TaskKind.DO, new Span(on(GROUND, 0), on(FALL, 0), 0, 1)))).tasks())
			.isEmpty();
		assertThat(plan(ONE, pack(rule("b", TaskKind.DO, new Span(on(FALL, 0), on(FALL, 3), 0, 5)))).tasks()).isEmpty();
		assertThat(plan(ONE, pack(rule("c", TaskKind.DO, new Span(on(FALL, 0), on(FALL, 4), 0, 5)))).tasks())
			.hasSize(1);
	}

	@Test
	void saysWhyARuleCantBeDatedInsteadOfGuessing() {
		Plan plan = new Planner(
				List.of(pack(rule("hold", TaskKind.HOLD_OFF, new Span(on(FALL, -56), on(GROUND, 0), 0, 1)))))
			.plan(boxwoodPlantedOn("2015-04-01"), markers().without(GROUND), ONE);
		assertThat(plan.tasks()).isEmpty();
		assertThat(plan.gaps()).singleElement()
			.satisfies((gap) -> assertThat(gap.reason()).isEqualTo("No station tells ground-freeze p50."));
	}

	@Test
	void endsARampOnThePlantingDateOnceAndNamesEachDay() {
		Ramp ramp = new Ramp(new PlantingDateAnchor(-1), true,
				List.of(new RampStep(3, "bright shade", 2.0, "Out for two hours."),
						new RampStep(2, "morning sun", 4.5, "Out for the morning.")));
		Subject subject = boxwoodPlantedOn("2027-05-15");
		Plan plan = new Planner(List.of(pack(rule("ramp", TaskKind.RAMP_DAY, ramp)))).plan(subject, markers(),
				List.of(ONE.get(0).previous(), ONE.get(0), ONE.get(0).next()));
		assertThat(plan.tasks()).extracting((task) -> task.window().from())
			.containsExactly(day("2027-05-10"), day("2027-05-11"), day("2027-05-12"), day("2027-05-13"),
					day("2027-05-14"));
		assertThat(plan.tasks().get(3).text().title()).isEqualTo("Day 4 of 5: Do ramp");
		assertThat(plan.tasks().get(3).text().amount()).isEqualTo("morning sun, for 4.5 hours");
		assertThat(plan.tasks().get(0).text().what()).isEqualTo("Out for two hours.");
	}

	@Test
	void asksNothingOfAPlantingBeforeItWasPlanted() {
		RulePack rules = pack(rule("hold", TaskKind.HOLD_OFF, new Span(on(FALL, -56), on(GROUND, 0), 0, 1)));
		Plan before = new Planner(List.of(rules)).plan(boxwoodPlantedOn("2028-03-01"), markers(), ONE);
		assertThat(before.tasks()).isEmpty();
		Plan during = new Planner(List.of(rules)).plan(boxwoodPlantedOn("2027-10-01"), markers(), ONE);
		assertThat(during.tasks().get(0).window()).isEqualTo(window("2027-10-01", "2027-12-10"));
	}

	@Test
	void mirrorsTheYearInTheSouth() {
		Subject north = boxwoodPlantedOn("2015-04-01");
		Subject south = new Subject(north.planting(), north.species(), Hemisphere.SOUTH, PlanFixture.LOAM);
		PlanFixture.FixedMarkers markers = new PlanFixture.FixedMarkers().with(SPRING, "10-20");
		Plan plan = new Planner(List.of(pack(rule("sow", TaskKind.DO, new Span(on(SPRING, 0), on(SPRING, 10), 0, 1)))))
			.plan(south, markers, List.of(new Season(2027, Hemisphere.SOUTH)));
		assertThat(plan.tasks().get(0).window()).isEqualTo(window("2027-10-20", "2027-10-30"));
	}

	@Test
	void opensToTheRuleTheMarkersAndTheSources() {
		Plan plan = plan(ONE, pack(rule("hold", TaskKind.HOLD_OFF, new Span(on(FALL, -56), on(GROUND, 0), 0, 1))));
		assertThat(plan.tasks().get(0).explanation().steps()).extracting((step) -> step.label())
			.containsExactly("Rule", "Begins", "Ends", "Common practice, no single source");
		assertThat(plan.tasks().get(0).explanation().steps().get(1).steps()).extracting((step) -> step.label())
			.containsExactly("first-fall-freeze 32F p50", "The rule goes back 56 days");
	}

	@Test
	void givesTheSameIdentifiersAnywhereAndNeverTwice() {
		RulePack rules = pack(rule("water", TaskKind.DO, new Span(on(FALL, 0), on(FALL, 60), 7, 1)),
				rule("hold", TaskKind.HOLD_OFF, new Span(on(FALL, -56), on(GROUND, 0), 0, 1)));
		List<Season> three = List.of(ONE.get(0).previous(), ONE.get(0), ONE.get(0).next());
		Plan once = plan(three, rules);
		assertThat(plan(three, rules)).isEqualTo(once);
		Set<UUID> ids = new HashSet<>();
		once.tasks().forEach((task) -> ids.add(task.id().value()));
		assertThat(ids).hasSameSizeAs(once.tasks());
	}

	@Test
	void identifiersAreVersion5() {
		// RFC 9562, appendix A.4: name "www.example.com" in the DNS name space of section
		// 6.6.
		assertThat(TaskIdentity.named(UUID.fromString("6ba7b810-9dad-11d1-80b4-00c04fd430c8"), "www.example.com"))
			.isEqualTo(UUID.fromString("2ed6657d-e927-568b-95e1-2665a8aea6a2"));
	}

	private static Plan plan(List<Season> seasons, RulePack pack) {
		return new Planner(List.of(pack)).plan(boxwoodPlantedOn("2015-04-01"), markers(), seasons);
	}

	private static DayWindow window(String from, String to) {
		return new DayWindow(day(from), day(to));
	}

	private static LocalDate day(String date) {
		return LocalDate.parse(date);
	}

}
