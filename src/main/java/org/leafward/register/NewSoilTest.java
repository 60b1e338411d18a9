package org.leafward.register;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.Findings;

/**
 * A soil test to be kept.
 *
 * @param planting from whose bed the sample was taken; null for the whole site
 * @param day on which the sample was taken, in the time zone of the site
 * @param figures what the laboratory measured
 * @param depthCentimetres depth to which the sample was taken, cm, 5 to 100
 * @param drainage how water leaves the bed
 * @param note at most 200 characters, may be empty
 */
public record NewSoilTest(@Nullable PlantingId planting, LocalDate day, SoilFigures figures, double depthCentimetres,
		SoilDrainage drainage, String note) {

	/** Depth of a usual sample, 6 inches (common practice), cm. */
	public static final double USUAL_DEPTH = 15;

	private static final int LONGEST_NOTE = 200;

	public NewSoilTest {
		Findings all = new Findings();
		double depth = depthCentimetres;
		String text = note;
		all.check(() -> SoilFigures.within("depth", "depth in cm", depth, 5, 100));
		note = all.give(all.read(() -> Words.line("note", text, 0, LONGEST_NOTE)));
	}

}
