package org.leafward.advisories.core.watch;

import org.leafward.advisories.Figure;
import org.leafward.language.Language;
import org.leafward.measure.DayWords;
import org.leafward.measure.NumberWords;

/** Words of figures, with both units as readers have them everywhere. */
public final class FigureWords {

	private static final double INCH = 25.4;

	private static final double MPH = 0.44704;

	private FigureWords() {
	}

	/**
	 * A figure with its unit.
	 * @param value as it is counted
	 * @param kind what is measured
	 * @param language in which words
	 * @return for example "−2 °C (28 °F)"
	 */
	public static String of(double value, ThresholdUnit.Kind kind, Language language) {
		boolean spanish = language == Language.SPANISH;
		return switch (kind) {
			case TEMPERATURE -> minus(round(value) + " °C (" + round(value * 1.8 + 32) + " °F)");
			case STEPS -> minus(fixed(value) + " °C (" + fixed(value * 1.8) + " °F)");
			case DEPTH -> round(value) + " mm (" + fixed(value / INCH) + " in)";
			case SPEED -> round(value) + " m/s (" + round(value / MPH) + " mph)";
			case PERCENT -> round(value) + " %";
			case DAYS -> minus(round(value)) + (spanish ? (Math.round(value) == 1) ? " día" : " días"
					: (Math.round(value) == 1) ? " day" : " days");
			case HEAT -> round(value) + (spanish ? " grados-día de Fahrenheit" : " degree-days of Fahrenheit");
			case YES -> (value >= 0.5) ? spanish ? "sí" : "yes" : "no";
		};
	}

	/**
	 * A range of a figure over several counties.
	 * @param low lowest
	 * @param high highest
	 * @param kind what is measured
	 * @param language in which words
	 * @return one figure when both read the same
	 */
	public static String range(double low, double high, ThresholdUnit.Kind kind, Language language) {
		String first = of(low, kind, language);
		String second = of(high, kind, language);
		return first.equals(second) ? first : first + ((language == Language.SPANISH) ? " a " : " to ") + second;
	}

	/** A temperature that is published in °F. */
	static String fahrenheit(double fahrenheit) {
		return of((fahrenheit - 32) / 1.8, ThresholdUnit.Kind.TEMPERATURE, Language.ENGLISH);
	}

	/**
	 * What a figure says.
	 * @param figure the figure
	 * @param least whether it had to be at least its limit, else at most
	 * @return a sentence in English
	 */
	public static String reason(Figure figure, boolean least) {
		ThresholdUnit.Kind kind = ThresholdUnit.Kind.valueOf(figure.unit());
		String value = of(figure.value(), kind, Language.ENGLISH);
		StringBuilder words = new StringBuilder(figure.label().english());
		if (figure.day() != null) {
			words.append(" on ").append(DayWords.of(figure.day()));
		}
		words.append(": ").append(value);
		if (figure.limit() != null && kind != ThresholdUnit.Kind.YES) {
			words.append(least ? ", at least " : ", at most ").append(of(figure.limit(), kind, Language.ENGLISH));
		}
		return words.append('.').toString();
	}

	private static String round(double value) {
		return String.valueOf(Math.round(value));
	}

	private static String fixed(double value) {
		return NumberWords.fixed(value, 1);
	}

	private static String minus(String text) {
		return text.replace('-', '\u2212');
	}

}
