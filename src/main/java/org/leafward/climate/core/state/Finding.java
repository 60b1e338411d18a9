package org.leafward.climate.core.state;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.Explanation;

/**
 * Whether something holds, with the figures behind it.
 *
 * @param holds null when it isn't known
 * @param steps the figures and the thresholds
 */
record Finding(@Nullable Boolean holds, List<Explanation> steps) {

	static Finding of(@Nullable Boolean holds, Explanation... steps) {
		return new Finding(holds, List.of(steps));
	}

	/** The contrary; of the unknown, the unknown. */
	static @Nullable Boolean not(@Nullable Boolean holds) {
		return (holds != null) ? !holds : null;
	}

	static Explanation figure(String label, @Nullable Double value, String unit) {
		return Explanation.of(label, (value != null) ? number(value, unit) : "not known");
	}

	static Explanation limit(String label, double value, String unit) {
		return Explanation.of(label, number(value, unit));
	}

	private static String number(double value, String unit) {
		return String.format(Locale.ROOT, "%.1f %s", value, unit).replace('-', '\u2212');
	}

}
