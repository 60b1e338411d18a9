package org.leafward.climate;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.leafward.measure.BadInput;

/**
 * A question to the weather: which state, from which threshold on.
 *
 * @param kind which state
 * @param number the threshold; 0 where the kind has none
 * @param unit unit of the threshold, one of the kind's
 */
public record StateQuestion(StateKind kind, double number, StateUnit unit) {

	private static final Pattern THRESHOLD = Pattern.compile("(minus-)?(d?)(\\d{1,4}(?:\\.\\d{1,2})?)?([a-z]*)");

	private static final String MINUS = "minus-";

	public StateQuestion {
		if (!kind.units().contains(unit)) {
			throw new BadInput("%s isn't asked in '%s'".formatted(kind.code(), unit.code()), "state", examples(kind));
		}
		if (!(number >= unit.lowest() && number <= unit.highest()) || (unit.whole() && number != Math.rint(number))) {
			throw new BadInput("%s %s is outside %s to %s".formatted(kind.code(), plain(number), plain(unit.lowest()),
					plain(unit.highest())) + (unit.whole() ? ", or not whole" : ""), "state", examples(kind));
		}
	}

	/**
	 * Reads a question.
	 * @param code as {@link #code} gives it, for example
	 * {@code forecast-min-at-most-34f}, {@code forecast-min-at-most-minus-2.2c},
	 * {@code dry-days-21d}, {@code new-snow-at-least-3in}, {@code drought-at-least-d1} or
	 * {@code hot-dry-wind}
	 * @return the question
	 * @throws BadInput when there is no such kind or threshold
	 */
	public static StateQuestion parse(String code) {
		StateKind kind = Arrays.stream(StateKind.values())
			.filter((one) -> code.equals(one.code()) || code.startsWith(one.code() + "-"))
			.max(Comparator.comparingInt((one) -> one.code().length()))
			.orElseThrow(() -> new BadInput("there is no state '%s'".formatted(code), "state", "begin with one of "
					+ Arrays.stream(StateKind.values()).map(StateKind::code).collect(Collectors.joining(", "))));
		String threshold = code.substring(Math.min(code.length(), kind.code().length() + 1));
		Matcher matcher = THRESHOLD.matcher(threshold);
		if (matcher.matches() && (matcher.group(3) != null) == !kind.units().contains(StateUnit.NONE)) {
			double number = (matcher.group(3) != null) ? Double.parseDouble(matcher.group(3)) : 0;
			boolean drought = !matcher.group(2).isEmpty();
			for (StateUnit unit : kind.units()) {
				boolean form = (unit == StateUnit.DROUGHT) ? drought && matcher.group(4).isEmpty()
						: !drought && matcher.group(4).equals(unit.code());
				if (form) {
					return new StateQuestion(kind, (matcher.group(1) != null) ? -number : number, unit);
				}
			}
		}
		throw new BadInput("'%s' is no threshold of %s".formatted(threshold, kind.code()), "state", examples(kind));
	}

	private static String examples(StateKind kind) {
		return "write " + kind.units()
			.stream()
			.sorted()
			.map((unit) -> new StateQuestion(kind, example(unit), unit).code())
			.collect(Collectors.joining(" or "));
	}

	private static double example(StateUnit unit) {
		return switch (unit) {
			case NONE -> 0;
			case FAHRENHEIT -> 34;
			case CELSIUS, DROUGHT -> 1;
			case DAYS -> 14;
			case INCHES -> 3;
			case MILLIMETRES -> 75;
			case MILES_PER_HOUR -> 10;
			case METRES_PER_SECOND -> 5;
		};
	}

	/**
	 * The question as {@link #parse} reads it.
	 * @return lower case with hyphens
	 */
	public String code() {
		if (this.unit == StateUnit.NONE) {
			return this.kind.code();
		}
		String amount = plain(Math.abs(this.number));
		return this.kind.code() + "-" + ((this.number < 0) ? MINUS : "")
				+ ((this.unit == StateUnit.DROUGHT) ? this.unit.code() + amount : amount + this.unit.code());
	}

	/**
	 * The question for readers.
	 * @return for example "a minimum of 34 °F (1.1 °C) or less ahead"
	 */
	public String words() {
		return this.kind.words(threshold());
	}

	private String threshold() {
		return switch (this.unit) {
			case NONE -> "";
			case FAHRENHEIT, CELSIUS ->
				new TemperatureThreshold(this.number, this.unit == StateUnit.FAHRENHEIT).words();
			case DAYS -> (this.number == 1) ? "a day" : plain(this.number) + " days";
			case DROUGHT -> this.unit.words() + plain(this.number);
			case INCHES -> String.format(Locale.ROOT, "%s in (%.0f mm)", plain(this.number), figure());
			case MILES_PER_HOUR -> String.format(Locale.ROOT, "%s mph (%.1f m/s)", plain(this.number), figure());
			case MILLIMETRES, METRES_PER_SECOND -> plain(this.number) + " " + this.unit.words();
		};
	}

	/**
	 * The threshold as the records count it.
	 * @return see {@link StateUnit#figure}
	 */
	public double figure() {
		return this.unit.figure(this.number);
	}

	private static String plain(double number) {
		return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
	}

}
