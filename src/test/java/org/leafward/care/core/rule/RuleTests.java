package org.leafward.care.core.rule;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskText;
import org.leafward.climate.MarkerKey;
import org.leafward.climate.MarkerKind;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.measure.DayWindow;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;
import org.leafward.plants.SpeciesId;
import org.leafward.register.Placement;
import org.leafward.register.SoilTexture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

class RuleTests {

	private static final Season NORTH = new Season(2026, Hemisphere.NORTH);

	private static final Season SOUTH = new Season(2026, Hemisphere.SOUTH);

	private static final MarkerKey FALL = new MarkerKey(MarkerKind.FIRST_FALL_FREEZE, TemperatureThreshold.parse("32F"),
			50);

	private static final SpeciesId BOXWOOD = new SpeciesId("buxus-sempervirens");

	private static final SiteFacts LOAM = new SiteFacts("US-MI", "Washtenaw", SoilTexture.LOAM, Set.of());

	private static final Concern ALL = new Concern(Set.of(), Set.of(), Set.of(), Set.of(), Set.of(), null, null, null,
			YearsSincePlanting.ANY, Set.of(), Where.ANYWHERE, Set.of(), null);

	private static PlantFacts boxwood(Placement placement, boolean indoors, boolean salt, int years) {
		return new PlantFacts(BOXWOOD, Set.of("boxwood", "evergreen"), Set.of("salt-sensitive"), placement, indoors,
				salt, years, LOAM);
	}

	private static final PlantFacts PLAIN = boxwood(Placement.GROUND, false, false, 3);

	@Test
	void namesAreAlternativesAndTraitsAreNot() {
		assertThat(ALL.appliesTo(PLAIN)).isTrue();
		assertThat(concern(Set.of("oak", "boxwood"), Set.of(), Set.of()).appliesTo(PLAIN)).isTrue();
		assertThat(concern(Set.of("oak"), Set.of(), Set.of()).appliesTo(PLAIN)).isFalse();
		assertThat(concern(Set.of("oak"), Set.of(BOXWOOD), Set.of()).appliesTo(PLAIN)).isTrue();
		assertThat(concern(Set.of(), Set.of(), Set.of("salt-sensitive")).appliesTo(PLAIN)).isTrue();
		assertThat(concern(Set.of("boxwood"), Set.of(), Set.of("salt-sensitive", "thin-bark")).appliesTo(PLAIN))
			.isFalse();
	}

	private static Concern concern(Set<String> groups, Set<SpeciesId> species, Set<String> traits) {
		return new Concern(groups, species, traits, Set.of(), Set.of(), null, null, null, YearsSincePlanting.ANY,
				Set.of(), Where.ANYWHERE, Set.of(), null);
	}

	@Test
	void exceptionsWinOverNames() {
		assertThat(new Concern(Set.of("evergreen"), Set.of(), Set.of(), Set.of("boxwood"), Set.of(), null, null, null,
				YearsSincePlanting.ANY, Set.of(), Where.ANYWHERE, Set.of(), null)
			.appliesTo(PLAIN)).isFalse();
		assertThat(new Concern(Set.of("evergreen"), Set.of(), Set.of(), Set.of(), Set.of(BOXWOOD), null, null, null,
				YearsSincePlanting.ANY, Set.of(), Where.ANYWHERE, Set.of(), null)
			.appliesTo(PLAIN)).isFalse();
	}

	@Test
	void conditionsThatAreLeftOutHoldEitherWay() {
		Concern potIndoorsSalt = new Concern(Set.of(), Set.of(), Set.of(), Set.of(), Set.of(), Placement.CONTAINER,
				true, false, YearsSincePlanting.ANY, Set.of(), Where.ANYWHERE, Set.of(), null);
		assertThat(potIndoorsSalt.appliesTo(boxwood(Placement.CONTAINER, true, false, 0))).isTrue();
		assertThat(potIndoorsSalt.appliesTo(boxwood(Placement.GROUND, true, false, 0))).isFalse();
		assertThat(potIndoorsSalt.appliesTo(boxwood(Placement.CONTAINER, false, false, 0))).isFalse();
		assertThat(potIndoorsSalt.appliesTo(boxwood(Placement.CONTAINER, true, true, 0))).isFalse();
	}

	@ParameterizedTest
	@CsvSource({ "-1, false", "0, true", "1, true", "2, false" })
	void yearsCountFromTheSeasonOfPlanting(int years, boolean applies) {
		Concern young = new Concern(Set.of(), Set.of(), Set.of(), Set.of(), Set.of(), null, null, null,
				new YearsSincePlanting(0, 2), Set.of(), Where.ANYWHERE, Set.of(), null);
		assertThat(young.appliesTo(boxwood(Placement.GROUND, false, false, years))).isEqualTo(applies);
		assertThat(ALL.appliesTo(boxwood(Placement.GROUND, false, false, years))).isEqualTo(years >= 0);
	}

	@Test
	void boundsMoveADateThatFallsOutside() {
		MarkerAnchor bounded = new MarkerAnchor(FALL, Days.of(-56), false,
				new Bounds(new FixedDay(MonthDay.of(8, 10)), new FixedDay(MonthDay.of(8, 20))));
		assertThat(bounded.bounds().keep(LocalDate.of(2026, 10, 8).minusDays(56), NORTH)).isEqualTo("2026-08-13");
		assertThat(bounded.bounds().keep(LocalDate.of(2026, 9, 20).minusDays(56), NORTH)).isEqualTo("2026-08-10");
		assertThat(bounded.bounds().keep(LocalDate.of(2026, 11, 20).minusDays(56), NORTH)).isEqualTo("2026-08-20");
	}

	@Test
	void fixedDaysLieSixMonthsLaterInTheSouth() {
		FixedDay april = new FixedDay(MonthDay.of(4, 1));
		FixedDay november = new FixedDay(MonthDay.of(11, 1));
		assertThat(april.in(NORTH)).isEqualTo("2026-04-01");
		assertThat(april.in(SOUTH)).isEqualTo("2026-10-01");
		assertThat(november.in(NORTH)).isEqualTo("2026-11-01");
		assertThat(november.in(SOUTH)).isEqualTo("2027-05-01");
		assertThat(Season.containing(november.in(SOUTH), Hemisphere.SOUTH)).isEqualTo(SOUTH);
	}

	@Test
	void anchorsSpeakForThemselves() {
		assertThat(new MarkerAnchor(FALL, Days.of(-56), false, Bounds.NONE).words())
			.isEqualTo("56 days before the middle date of the first fall freeze at 32 °F (0 °C)");
		assertThat(new MarkerAnchor(new MarkerKey(MarkerKind.GROUND_THAW, null, 50), Days.of(1), true, Bounds.NONE)
			.words()).isEqualTo("1 day after the middle date of the ground thawing of the following season");
		assertThat(new MarkerAnchor(new MarkerKey(MarkerKind.LAST_SPRING_FREEZE, FALL.threshold(), 10), Days.of(10),
				false, Bounds.NONE)
			.words())
			.isEqualTo("10 days after the late date (in 10 of 100 seasons it comes on or after it) of the last spring "
					+ "freeze at 32 °F (0 °C)");
		assertThat(new Bounds(new FixedDay(MonthDay.of(8, 31)), null).words()).isEqualTo("not before 31 August");
		assertThat(new PlantingDateAnchor(0).words()).isEqualTo("on the planting date");
		assertThat(new CalendarAnchor(new FixedDay(MonthDay.of(11, 1)), false, "the law names it").words())
			.isEqualTo("1 November, a fixed date: the law names it");
	}

	@Test
	void aRampHandsOutItsStepsDayByDay() {
		Ramp ramp = new Ramp(new PlantingDateAnchor(-1), true,
				List.of(new RampStep(2, "shade", 2.0, "Out."), new RampStep(3, "sun", null, "Stay out.")));
		assertThat(ramp.days()).isEqualTo(5);
		assertThat(List.of(1, 2, 3, 5)).extracting((day) -> ramp.stepOn(day).place())
			.containsExactly("shade", "shade", "sun", "sun");
		assertThatIllegalArgumentException().isThrownBy(() -> ramp.stepOn(0));
		assertThatIllegalArgumentException().isThrownBy(() -> ramp.stepOn(6));
	}

	@Test
	void windowsAboutPlantingEndWithThePlanting() {
		DayWindow window = new DayWindow(LocalDate.of(2026, 8, 27), LocalDate.of(2026, 10, 15));
		Anchor anchor = new PlantingDateAnchor(0);
		Span planting = new Span(anchor, anchor, 0, 1, true);
		assertThat(planting.keeps(window, LocalDate.of(2026, 9, 5))).isTrue();
		assertThat(planting.keeps(window, LocalDate.of(2027, 4, 1))).isTrue();
		assertThat(planting.keeps(window, LocalDate.of(2026, 8, 26))).isFalse();
		assertThat(new Span(anchor, anchor, 0, 51).keeps(window, LocalDate.of(2020, 1, 1))).isFalse();
		assertThat(new Span(anchor, anchor, 0, 50).keeps(window, LocalDate.of(2020, 1, 1))).isTrue();
	}

	@Test
	void aRuleWithoutSourceOrWithTheWrongTimingIsRefused() {
		Span span = new Span(new PlantingDateAnchor(0), new PlantingDateAnchor(1), 0, 1);
		Source source = new Source("Sample", null, null, Grade.FROM_MEMORY);
		assertThatIllegalArgumentException().isThrownBy(() -> rule(TaskKind.DO, span, List.of()));
		assertThatIllegalArgumentException().isThrownBy(() -> rule(TaskKind.RAMP_DAY, span, List.of(source)));
		assertThatIllegalArgumentException()
			.isThrownBy(() -> rule(TaskKind.DO, new DayByDay(span.from(), span.to(), 0), List.of(source)));
	}

	private static Rule rule(TaskKind kind, Timing timing, List<Source> sources) {
		TaskText text = new TaskText("Do it", "Do it.", null, "It helps.", null, null);
		return new Rule("one", kind, Work.PRUNE, ALL, timing, List.of(), Weather.ANY, Set.of(), Effort.UNKNOWN, text,
				Map.of(), sources);
	}

}
