package org.leafward.care.core.rule;

import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.NamedState;
import org.leafward.climate.StateKind;
import org.leafward.climate.StateQuestion;
import org.leafward.climate.StateUnit;
import org.leafward.measure.BadInput;

/**
 * A state of the weather that a rule asks about.
 *
 * @param state its code, as in the rule pack schema
 * @param bound the bound as written, for example {@code 34F}, {@code 3in} or {@code D1};
 * null when the state needs none
 * @param days the number of days, 0 when the state needs none
 */
public record Condition(String state, @Nullable String bound, int days) {

	private static final Pattern BOUND = Pattern.compile("(D?)(-?[0-9.]+)(F|C|in|mm|cm|mph|m/s|)");

	/**
	 * The question to the climate.
	 * @return empty for the water in the root zone, which is the site's own
	 * @throws BadInput when the bound is outside what may be asked
	 */
	public Optional<StateQuestion> question() {
		return switch (this.state) {
			case "low-ahead" -> Optional.of(bounded(StateKind.FORECAST_MIN_AT_MOST));
			case "high-ahead" -> Optional.of(bounded(StateKind.FORECAST_MAX_AT_LEAST));
			case "cool-days" -> Optional.of(bounded(StateKind.FORECAST_MAX_AT_MOST));
			case "wind-ahead" -> Optional.of(bounded(StateKind.FORECAST_WIND_AT_LEAST));
			case "heat-index" -> Optional.of(bounded(StateKind.HEAT_INDEX_AT_LEAST));
			case "hot-dry-wind" -> Optional.of(NamedState.HOT_DRY_WIND.question());
			case "dry-days" -> Optional.of(new StateQuestion(StateKind.DRY_DAYS, this.days, StateUnit.DAYS));
			case "drought" -> Optional.of(bounded(StateKind.DROUGHT_AT_LEAST));
			case "thaw-day" -> Optional.of(NamedState.THAW_DAY.question());
			case "new-snow" -> Optional.of(bounded(StateKind.NEW_SNOW_AT_LEAST));
			case "rain-week" -> Optional.of(bounded(StateKind.RAIN_WEEK_AT_LEAST));
			case "ground-frozen" -> Optional.of(new StateQuestion(StateKind.GROUND_FROZEN, 0, StateUnit.NONE));
			default -> Optional.empty();
		};
	}

	private StateQuestion bounded(StateKind kind) {
		String written = Objects.requireNonNullElse(this.bound, "");
		Matcher matcher = BOUND.matcher(written);
		if (!matcher.matches()) {
			throw new BadInput("'%s' is no bound of %s".formatted(written, this.state), this.state,
					"write a number with its unit");
		}
		double number = Double.parseDouble(matcher.group(2));
		return switch (matcher.group(1) + matcher.group(3)) {
			case "D" -> new StateQuestion(kind, number, StateUnit.DROUGHT);
			case "F" -> new StateQuestion(kind, number, StateUnit.FAHRENHEIT);
			case "C" -> new StateQuestion(kind, number, StateUnit.CELSIUS);
			case "mph" -> new StateQuestion(kind, number, StateUnit.MILES_PER_HOUR);
			case "m/s" -> new StateQuestion(kind, number, StateUnit.METRES_PER_SECOND);
			case "in" -> new StateQuestion(kind, number, StateUnit.INCHES);
			case "cm" -> new StateQuestion(kind, 10 * number, StateUnit.MILLIMETRES);
			default -> new StateQuestion(kind, number, StateUnit.MILLIMETRES);
		};
	}

}
