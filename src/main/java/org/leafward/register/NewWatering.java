package org.leafward.register;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;
import org.leafward.measure.Findings;

/**
 * A watering to be recorded.
 *
 * @param planting whose bed was watered; null for the whole site
 * @param day on which, in the time zone of the site
 * @param millimetres depth over the ground that was watered, above 0 to 200 mm
 * @param note at most 200 characters, may be empty
 */
public record NewWatering(@Nullable PlantingId planting, LocalDate day, double millimetres, String note) {

	/** Deepest watering of a place on a day, mm; more is a slip of the pen. */
	public static final double MOST_MILLIMETRES = 200;

	private static final int LONGEST_NOTE = 200;

	public NewWatering {
		Findings all = new Findings();
		double depth = millimetres;
		String text = note;
		all.check(() -> checkDepth(depth));
		note = all.give(all.read(() -> Words.line("note", text, 0, LONGEST_NOTE)));
	}

	// Written so that it catches NaN too.
	private static void checkDepth(double millimetres) {
		if (!(millimetres > 0 && millimetres <= MOST_MILLIMETRES)) {
			throw new BadInput("a depth of %s mm is outside 0 to %.0f".formatted(millimetres, MOST_MILLIMETRES),
					"amount", "check the amount, its unit and the area");
		}
	}

}
