package org.leafward.advisories.core.watch;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.advisories.Figure;
import org.leafward.advisories.conditions.ConfiguredConditions;
import org.leafward.advisories.core.watch.WatchCondition.Moved;

import static org.assertj.core.api.Assertions.assertThat;

/** The conditions that come with the server, on scenes that are made up. */
class WatchTests {

	private static Watch.Outcome look(String code, SceneFixture scene, Moved... set) {
		WatchCondition condition = ConfiguredConditions.get(code);
		return Watch.look(condition, new Limits(condition, "us-ia-alder-county", "US-IA", List.of(set)), scene.scene());
	}

	private static SceneFixture hot(double high, double wind, double humidity) {
		return new SceneFixture("2026-07-10").usual(18.0, 28.0, 0.0).day(1, 20.0, high, 0.0, wind, humidity);
	}

	/**
	 * 90 °F with wind or dry air after less than half an inch of rain: from memory, the
	 * same as the state of the weather of that name. 97 °F by itself: common practice, no
	 * source.
	 */
	@ParameterizedTest
	@CsvSource({ "32.2, 4.5, 60, true", "32.2, 4.4, 60, false", "32.1, 8, 20, false", "33, 2, 30, true",
			"33, 2, 31, false", "36.1, 1, 70, true" })
	void hotDryWind(double high, double wind, double humidity, boolean holds) {
		assertThat(look("hot-dry-wind", hot(high, wind, humidity)).holds()).isEqualTo(holds);
	}

	@Test
	void rainOfTheWeekSettlesIt() {
		assertThat(look("hot-dry-wind", hot(35, 8, 20).day(-3, 18.0, 24.0, 12.7, 2.0, 80.0)).holds()).isTrue();
		assertThat(look("hot-dry-wind", hot(35, 8, 20).day(-3, 18.0, 24.0, 13.0, 2.0, 80.0)).holds()).isFalse();
	}

	@Test
	void whatIsNotKnownIsNeverAHit() {
		SceneFixture unmeasured = hot(35, 8, 20).day(-3, 18.0, 24.0, null, 2.0, 80.0);
		assertThat(look("hot-dry-wind", unmeasured)).isEqualTo(new Watch.Outcome(null, null));
		assertThat(look("hot-dry-wind", hot(35, 8, 20).noForecast())).isEqualTo(new Watch.Outcome(null, null));
		SceneFixture noHumidity = new SceneFixture("2026-07-10").usual(18.0, 28.0, 0.0)
			.day(1, 20.0, 33.0, 0.0, 2.0, null);
		assertThat(look("hot-dry-wind", noHumidity)).isEqualTo(new Watch.Outcome(null, null));
		SceneFixture ground = winter().frozen(null);
		assertThat(look("cold-dry-wind", ground)).isEqualTo(new Watch.Outcome(null, null));
		assertThat(look("dry-before-freeze", beforeFreeze().used(null))).isEqualTo(new Watch.Outcome(null, null));
		assertThat(look("dry-before-freeze", new SceneFixture("2026-11-20").used(110.0)).hit()).as("no marker")
			.isNull();
		assertThat(look("weed-barrier",
				new SceneFixture("2026-04-05").usual(3.0, 11.0, 0.0)
					.marker("upper-soil-warms-to 50F p50", "2026-04-08")
					.soil(null))
			.hit()).isNull();
	}

	/** An unknown figure does no harm where another one settles it. */
	@Test
	void oneOfTwoIsEnough() {
		SceneFixture noHumidity = new SceneFixture("2026-07-10").usual(18.0, 28.0, 0.0)
			.day(1, 20.0, 33.0, 0.0, 5.0, null);
		assertThat(look("hot-dry-wind", noHumidity).holds()).isTrue();
	}

	@Test
	void thresholdsOfTheCountyGoFirst() {
		SceneFixture mild = hot(31.2, 8, 20);
		assertThat(look("hot-dry-wind", mild).holds()).isFalse();
		assertThat(look("hot-dry-wind", mild, new Moved("high", "US-IA", 88)).holds()).isTrue();
		assertThat(
				look("hot-dry-wind", mild, new Moved("high", "US-IA", 88), new Moved("high", "us-ia-alder-county", 92))
					.holds())
			.isFalse();
		assertThat(look("hot-dry-wind", mild, new Moved("high", "US-MI", 88)).holds()).isFalse();
	}

	@Test
	void figuresAndReasonsSayWhy() {
		Hit hit = look("hot-dry-wind", hot(35, 8, 20).day(2, 20.0, 36.0, 0.0, 8.0, 20.0)).hit();
		assertThat(hit.from()).isEqualTo("2026-07-11");
		assertThat(hit.to()).isEqualTo("2026-07-12");
		assertThat(hit.figures()).first().extracting(Figure::code, Figure::value).containsExactly("high", 36.0);
		assertThat(hit.reasons()).contains(
				"Highest temperature on Sun 12 Jul 2026: 36 °C (97 °F), at least 32 °C (90 °F).",
				"Rain and melted snow of the last 7 days: 0 mm (0.0 in), at most 13 mm (0.5 in).");
	}

	private static SceneFixture winter() {
		return new SceneFixture("2026-01-20").usual(-9.0, -3.0, 0.0).frozen(true).day(1, -15.0, -6.0, 0.0, 8.0, 35.0);
	}

	@Test
	void coldDryWindNeedsFrozenGround() {
		assertThat(look("cold-dry-wind", winter()).holds()).isTrue();
		assertThat(look("cold-dry-wind", winter().frozen(false)).holds()).isFalse();
		assertThat(look("cold-dry-wind", winter().day(1, -15.0, -6.0, 0.0, 8.0, 65.0)).holds()).isFalse();
		assertThat(look("cold-dry-wind", winter().day(1, -5.0, 3.0, 0.0, 8.0, 35.0)).holds()).isFalse();
	}

	private static SceneFixture beforeFreeze() {
		return new SceneFixture("2026-11-20").usual(-1.0, 8.0, 0.0)
			.marker("first-fall-freeze 28F p50", "2026-10-28")
			.marker("ground-freeze p50", "2026-12-10")
			.used(90.0);
	}

	/** Stress begins at 100 % by FAO-56, chapter 8; the limit of 70 % is our choice. */
	@Test
	void dryGroundBeforeItFreezes() {
		assertThat(look("dry-before-freeze", beforeFreeze()).holds()).isTrue();
		assertThat(look("dry-before-freeze", beforeFreeze().used(69.0)).holds()).isFalse();
		assertThat(look("dry-before-freeze", beforeFreeze().frozen(true)).holds()).isFalse();
		assertThat(look("dry-before-freeze", beforeFreeze().day(1, 2.0, 8.0, 11.0, 2.0, 80.0)).holds()).isFalse();
		assertThat(look("dry-before-freeze", beforeFreeze().marker("ground-freeze p50", "2026-11-01")).holds())
			.isFalse();
	}

	/**
	 * Nebraska and Colorado State extensions: above 40 °F, no snow, open ground; less
	 * than an inch in a month from memory of Fact Sheet 7.211.
	 */
	@Test
	void thawDay() {
		SceneFixture dry = new SceneFixture("2026-01-20").usual(-4.0, 3.0, 0.5).day(1, -2.0, 4.4, 0.0, 2.0, 50.0);
		assertThat(look("thaw-watering", dry).holds()).isTrue();
		assertThat(look("thaw-watering", dry.day(1, -2.0, 4.3, 0.0, 2.0, 50.0)).holds()).isFalse();
		assertThat(look("thaw-watering",
				new SceneFixture("2026-01-20").usual(-4.0, 3.0, 1.0).day(1, -2.0, 9.0, 0.0, 2.0, 50.0))
			.holds()).isFalse();
		assertThat(look("thaw-watering", new SceneFixture("2026-06-20").usual(12.0, 22.0, 0.5)).holds()).as("summer")
			.isFalse();
	}

	/** NWS Blacksburg: frost advisory from 36 °F on, freeze warning from 32 °F on. */
	@ParameterizedTest
	@CsvSource({ "2.2, true", "2.3, false", "0, true" })
	void firstFallFreeze(double low, boolean holds) {
		SceneFixture fall = new SceneFixture("2026-10-01").marker("first-fall-freeze 32F p50", "2026-10-15")
			.day(1, low, 15.0, 0.0, 1.0, 50.0);
		Watch.Outcome outcome = look("first-fall-freeze", fall);
		assertThat(outcome.holds()).isEqualTo(holds);
		if (holds) {
			assertThat(outcome.hit().from()).as("the evening before").isEqualTo("2026-10-01");
			assertThat(outcome.hit().to()).isEqualTo("2026-10-02");
		}
		assertThat(look("first-fall-freeze", fall.day(-5, -0.6, 12.0, 0.0, 1.0, 50.0)).holds())
			.as("tender plants are gone after a night of 31 °F")
			.isFalse();
	}

	@Test
	void cloudsThenSun() {
		SceneFixture may = new SceneFixture("2026-05-12").usual(10.0, 24.0, 0.0)
			.marker("last-spring-freeze 32F p50", "2026-04-28")
			.day(0, 8.0, 24.0, 0.0, 2.0, 40.0);
		assertThat(look("sudden-sun", may).holds()).as("sun all along").isFalse();
		for (int back = 1; back <= 4; back++) {
			may.day(-back, 11.0, 15.0, 3.0, 2.0, 90.0);
		}
		Watch.Outcome outcome = look("sudden-sun", may);
		assertThat(outcome.holds()).isTrue();
		assertThat(outcome.hit().figures()).filteredOn((one) -> one.code().equals("dull-days"))
			.singleElement()
			.extracting(Figure::value)
			.isEqualTo(4.0);
	}

	/** Winter begins in one year and ends in the next. */
	@Test
	void aSeasonMayPassNewYear() {
		for (String day : List.of("2026-12-05", "2026-01-05")) {
			assertThat(
					look("thaw-watering", new SceneFixture(day).usual(-4.0, 3.0, 0.5).day(1, -2.0, 6.0, 0.0, 2.0, 50.0))
						.holds())
				.as(day)
				.isTrue();
		}
	}

}
