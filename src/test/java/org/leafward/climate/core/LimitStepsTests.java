package org.leafward.climate.core;

import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.leafward.climate.MarkerKind;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * The steps against the searches themselves, limit by limit, on made-up records with gaps
 * and snow.
 */
class LimitStepsTests {

	private static final SeasonPeriod PERIOD = new SeasonPeriod(1991, 2008);

	@ParameterizedTest
	@EnumSource(value = MarkerKind.class, mode = EnumSource.Mode.EXCLUDE,
			names = { "DEGREE_DAYS", "DAYLIGHT_LENGTHENS_TO", "DAYLIGHT_SHORTENS_TO" })
	void stepsSayWhatTheSearchSays(MarkerKind kind) {
		int dated = 0;
		int without = 0;
		int leftOut = 0;
		for (Hemisphere hemisphere : Hemisphere.values()) {
			for (double gaps : new double[] { 0, 0.01, 0.04 }) {
				DailyRecord record = gappy(hemisphere, gaps);
				SoilTemperature soil = SoilTemperature.estimate(record);
				LimitSteps steps = StationSteps.of(kind, record, () -> soil, hemisphere, PERIOD, LimitSteps.Window.ALL);
				LimitSteps.Window window = new LimitSteps.Window(-300, 200);
				LimitSteps some = StationSteps.of(kind, record, () -> soil, hemisphere, PERIOD, window);
				assertThat(some.bytes()).isLessThanOrEqualTo(steps.bytes());
				int stride = (kind == MarkerKind.GROUND_FREEZE || kind == MarkerKind.GROUND_THAW) ? 17 : 37;
				for (int limit = -2500; limit <= 3500; limit += stride) {
					int asked = limit;
					List<SeasonOutcome> outcomes = PERIOD.stream(hemisphere)
						.map((season) -> search(kind, record, soil, season, asked))
						.toList();
					Sample expected = Sample.ofDates(outcomes);
					assertThat(steps.at(StationSteps.limit(kind, limit))).as("%s, limit %d", kind, limit)
						.usingRecursiveComparison()
						.isEqualTo(expected);
					int counted = StationSteps.limit(kind, limit);
					if (window.has(counted)) {
						assertThat(some.at(counted)).as("%s, limit %d in a window", kind, limit)
							.usingRecursiveComparison()
							.isEqualTo(expected);
					}
					dated += expected.used();
					without += expected.without();
					leftOut += expected.leftOut();
				}
			}
		}
		assertThat(List.of(dated, without, leftOut)).allMatch((count) -> count > 100);
	}

	private static SeasonOutcome search(MarkerKind kind, DailyRecord record, SoilTemperature soil, Season season,
			int limit) {
		return switch (kind) {
			case LAST_SPRING_FREEZE -> FreezeSearch.lastSpring(record, season, limit);
			case FIRST_FALL_FREEZE -> FreezeSearch.firstFall(record, season, limit);
			case NIGHTS_WARM_TO -> NightSearch.warmTo(record, season, limit);
			case NIGHTS_COOL_TO -> NightSearch.coolTo(record, season, limit);
			case DAYS_COOL_TO -> CrossingSearch.fall(DailyTemperature.MAXIMUM.of(record), 5, limit, season);
			case SOIL_WARMS_TO, UPPER_SOIL_WARMS_TO -> CrossingSearch.rise(soil::celsius, 5, limit * 5 / 100.0, season);
			case SOIL_COOLS_TO, UPPER_SOIL_COOLS_TO -> CrossingSearch.fall(soil::celsius, 5, limit * 5 / 100.0, season);
			case GROUND_FREEZE -> GroundSearch.freeze(soil, season, limit / 100.0);
			case GROUND_THAW -> GroundSearch.thaw(soil, season, limit / 100.0);
			case DE_ICING_END -> IcyDays.lastSpring(record, season, limit);
			case DEGREE_DAYS, DAYLIGHT_LENGTHENS_TO, DAYLIGHT_SHORTENS_TO -> throw new IllegalArgumentException();
		};
	}

	/**
	 * Single days missing by chance, and three weeks in each season of a year in four.
	 */
	private static DailyRecord gappy(Hemisphere hemisphere, double gaps) {
		Random random = new Random(7);
		DailyRecord.Builder builder = DailyRecord.builder();
		for (LocalDate day = LocalDate.of(1990, 1, 1); day.getYear() < 2010; day = day.plusDays(1)) {
			double wave = Math.cos(2 * Math.PI * (day.getDayOfYear() - 20) / 365.25);
			int low = (int) Math
				.round(10 * (3 + ((hemisphere == Hemisphere.NORTH) ? -12 : 12) * wave + 4 * random.nextGaussian()));
			boolean hole = gaps > 0 && day.getYear() % 4 == 0 && day.getDayOfYear() % 90 < 21;
			if (!hole && random.nextDouble() >= gaps) {
				builder.set(Element.TMIN, day, low);
			}
			if (!hole && random.nextDouble() >= gaps) {
				builder.set(Element.TMAX, day, low + 60 + random.nextInt(60));
			}
			if (!hole && random.nextDouble() >= gaps) {
				builder.set(Element.PRCP, day, Math.max(0, random.nextInt(100) - 60));
			}
			if (low < -20 && random.nextBoolean()) {
				builder.set(Element.SNWD, day, random.nextInt(200));
			}
		}
		return builder.build();
	}

}
