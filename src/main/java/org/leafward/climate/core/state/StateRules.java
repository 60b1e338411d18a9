package org.leafward.climate.core.state;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.function.DoublePredicate;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.DroughtReading;
import org.leafward.climate.GroundReading;
import org.leafward.climate.NamedState;
import org.leafward.climate.StateQuestion;
import org.leafward.climate.StateUnit;
import org.leafward.climate.WeatherOutlook;
import org.leafward.climate.WeatherState;
import org.leafward.climate.core.comfort.HeatIndex;
import org.leafward.measure.DayWords;
import org.leafward.measure.Explanation;

/**
 * Tells which states of the weather hold on a day, from the days observed before it and
 * the days forecast from it on. What is not known is answered with null, never with no.
 */
public final class StateRules implements WeatherOutlook {

	/** From memory, as the other figures of the hot dry wind. */
	private static final double HOT = StateUnit.FAHRENHEIT.figure(90);

	private static final double WINDY = StateUnit.MILES_PER_HOUR.figure(15);

	private static final double DRY_AIR = 30;

	/** Half an inch in a week, mm. */
	private static final double LITTLE_RAIN = 12.7;

	private static final int WEEK = 7;

	private final LocalDate today;

	private final int after;

	private final StateFigures figures;

	private @Nullable RainAnswers rain;

	private @Nullable DaysAhead ahead;

	/**
	 * Creates the rules for a day and the three days after it.
	 * @param today the day
	 * @param figures what is known; asked for when a question needs it
	 */
	public StateRules(LocalDate today, StateFigures figures) {
		this(today, DaysAhead.DAYS, figures);
	}

	private StateRules(LocalDate today, int after, StateFigures figures) {
		this.today = today;
		this.after = after;
		this.figures = figures;
	}

	private RainAnswers rain() {
		if (this.rain == null) {
			this.rain = new RainAnswers(this.today, this.figures.observed(), this.figures.forecast());
		}
		return this.rain;
	}

	private DaysAhead ahead() {
		if (this.ahead == null) {
			this.ahead = new DaysAhead(this.today, this.after, this.figures.forecast());
		}
		return this.ahead;
	}

	@Override
	public List<WeatherState> named() {
		return Arrays.stream(NamedState.values())
			.map((state) -> answer(state.code(), state.words(), state.question()))
			.toList();
	}

	@Override
	public WeatherState answer(StateQuestion question) {
		return answer(question.code(), question.words(), question);
	}

	@Override
	public WeatherState on(LocalDate day, StateQuestion question) {
		return new StateRules(day, 0, this.figures).answer(question);
	}

	@Override
	public OptionalDouble lowest(LocalDate day) {
		return this.figures.forecast()
			.stream()
			.filter((one) -> one.day().equals(day))
			.map(DayFigures::minimum)
			.filter(Objects::nonNull)
			.mapToDouble(Objects::requireNonNull)
			.findFirst();
	}

	private WeatherState answer(String code, String words, StateQuestion question) {
		Finding finding = find(question);
		String holds = (finding.holds() == null) ? "not known" : finding.holds() ? "yes" : "no";
		return new WeatherState(code, question, finding.holds(),
				Explanation.of(words, holds).withDetail("on " + DayWords.of(this.today)).withSteps(finding.steps()));
	}

	private Finding find(StateQuestion question) {
		double limit = question.figure();
		return switch (question.kind()) {
			case FORECAST_MIN_AT_MOST -> ahead("minimum", DayFigures::minimum, (low) -> low <= limit, -1, limit);
			case FORECAST_MIN_AT_LEAST -> noneAhead("minimum", DayFigures::minimum, (low) -> low < limit, -1, limit);
			case FORECAST_MAX_AT_LEAST -> ahead("maximum", DayFigures::maximum, (high) -> high >= limit, 1, limit);
			case FORECAST_MAX_AT_MOST -> noneAhead("maximum", DayFigures::maximum, (high) -> high > limit, 1, limit);
			case HEAT_INDEX_AT_LEAST -> ahead("heat index", StateRules::heatIndex, (index) -> index >= limit, 1, limit);
			case HEAT_INDEX_AT_MOST ->
				noneAhead("heat index", StateRules::heatIndex, (index) -> index > limit, 1, limit);
			case FORECAST_WIND_AT_MOST -> Finding.of(
					Finding.not(ahead().any(DayFigures::wind, (wind) -> wind > limit)), Finding
						.figure("Strongest mean wind " + ahead().words(), ahead().extreme(DayFigures::wind, 1), "m/s"),
					Finding.limit("At most", limit, "m/s"));
			case FORECAST_WIND_AT_LEAST -> Finding.of(
					ahead().any(DayFigures::wind, (wind) -> wind >= limit), Finding
						.figure("Strongest mean wind " + ahead().words(), ahead().extreme(DayFigures::wind, 1), "m/s"),
					Finding.limit("At or above", limit, "m/s"));
			case DRY_AHEAD -> rain().dryAhead((int) limit);
			case DRY_DAYS -> rain().dryDays((int) limit);
			case NEW_SNOW_AT_LEAST ->
				today("New snow", DayFigures::newSnow, (snow) -> snow >= limit, "At least", limit, "mm");
			case DAY_MAX_ABOVE -> today("Maximum", DayFigures::maximum, (high) -> high > limit, "Above", limit, "°C");
			case HOT_DRY_WIND -> hotDryWind();
			case RAIN_WEEK_AT_LEAST -> rain().fell(WEEK, limit);
			case GROUND_FROZEN -> groundFrozen();
			case DROUGHT_AT_LEAST -> drought((int) limit);
		};
	}

	private Finding ahead(String what, Function<DayFigures, @Nullable Double> figure, DoublePredicate meets, int sign,
			double limit) {
		return Finding.of(ahead().any(figure, meets), extreme(what, figure, sign, "°C"),
				Finding.limit((sign < 0) ? "At or below" : "At or above", limit, "°C"));
	}

	private Finding noneAhead(String what, Function<DayFigures, @Nullable Double> figure, DoublePredicate breaks,
			int sign, double limit) {
		return Finding.of(Finding.not(ahead().any(figure, breaks)), extreme(what, figure, sign, "°C"),
				Finding.limit((sign < 0) ? "Nowhere below" : "Nowhere above", limit, "°C"));
	}

	private Explanation extreme(String what, Function<DayFigures, @Nullable Double> figure, int sign, String unit) {
		return Finding.figure("%s %s %s".formatted((sign < 0) ? "Lowest" : "Highest", what, ahead().words()),
				ahead().extreme(figure, sign), unit);
	}

	private Finding today(String what, Function<DayFigures, @Nullable Double> figure, DoublePredicate meets,
			String comparison, double limit, String unit) {
		Double value = ahead().todays(figure);
		return Finding.of(
				(value != null) ? meets.test(value) : null, Finding
					.figure(what + ((this.after == 0) ? " forecast for the day" : " forecast for today"), value, unit),
				Finding.limit(comparison, limit, unit));
	}

	/** Of the maximum and the lowest humidity, which come together in the afternoon. */
	private static @Nullable Double heatIndex(DayFigures day) {
		return (day.maximum() != null && day.lowestHumidity() != null)
				? HeatIndex.celsius(day.maximum(), day.lowestHumidity()) : null;
	}

	private Finding hotDryWind() {
		Double recent = rain().of(WEEK);
		Boolean day = ahead().any(StateRules::hotAndDry);
		Boolean holds = (recent != null && recent >= LITTLE_RAIN) || Boolean.FALSE.equals(day) ? Boolean.FALSE
				: (recent == null || day == null) ? null : Boolean.TRUE;
		return Finding.of(holds, extreme("maximum", DayFigures::maximum, 1, "°C"),
				Finding.figure("Strongest mean wind forecast", ahead().extreme(DayFigures::wind, 1), "m/s"),
				Finding.figure("Lowest humidity forecast", ahead().extreme(DayFigures::lowestHumidity, -1), "%"),
				Finding.figure("Rain of the last seven days", recent, "mm"),
				Explanation.of("Holds with",
						"a day of at least %.0f °C with wind of %.1f m/s or air below %.0f %%, after less than %.1f mm"
							.formatted(HOT, WINDY, DRY_AIR, LITTLE_RAIN))
					.withSource("from memory, to be checked"));
	}

	/** Null when the day's figures don't settle it. */
	private static @Nullable Boolean hotAndDry(DayFigures day) {
		if (day.maximum() == null || day.maximum() < HOT) {
			return (day.maximum() == null) ? null : false;
		}
		boolean windy = day.wind() != null && day.wind() >= WINDY;
		boolean dryAir = day.lowestHumidity() != null && day.lowestHumidity() <= DRY_AIR;
		if (windy || dryAir) {
			return true;
		}
		return (day.wind() == null || day.lowestHumidity() == null) ? null : false;
	}

	private Finding drought(int least) {
		DroughtReading reading = this.figures.drought();
		if (reading == null) {
			return Finding.of(null, Explanation.of("Drought by a station's rain", "not known")
				.withDetail("No station near enough has twenty years of rain and the last ninety days."));
		}
		return Finding.of(reading.severity() != null && reading.severity() >= least, reading.explanation(),
				Explanation.of("At least", "D" + least));
	}

	private Finding groundFrozen() {
		GroundReading reading = this.figures.ground();
		return (reading != null) ? Finding.of(reading.frozen(), reading.explanation())
				: Finding.of(null, Explanation.of("Ground at 4 inches", "not known")
					.withDetail("No station near enough has the temperatures of late."));
	}

}
