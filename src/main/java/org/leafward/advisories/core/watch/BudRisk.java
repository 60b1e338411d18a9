package org.leafward.advisories.core.watch;

import java.util.Comparator;
import java.util.List;
import org.leafward.climate.TemperatureThreshold;

/**
 * How near a cold night comes to killing the buds of a crop.
 *
 * @param crop the crop
 * @param stage the stage that it is in
 * @param margin how far the low lies above what kills one bud in ten, °C; negative when
 * it lies below
 * @param low the low, °C
 */
record BudRisk(Stages.Crop crop, Stages.Stage stage, double margin, double low) {

	/**
	 * The crops by their margin.
	 * @param stages crops and stages
	 * @param sum degree-days up to the night
	 * @param low of the night, °C
	 * @return the nearest first; crops that are still asleep or past it are left out
	 */
	static List<BudRisk> of(Stages stages, double sum, double low) {
		return stages.crops()
			.stream()
			.flatMap((crop) -> crop.at(sum)
				.map((stage) -> new BudRisk(crop, stage, low - celsius(stage.killsTenth()), low))
				.stream())
			.sorted(Comparator.comparingDouble(BudRisk::margin))
			.toList();
	}

	/** Rounded to tenths, as records are, so that 28 °F in the record meets 28 °F. */
	private static double celsius(double fahrenheit) {
		return new TemperatureThreshold(fahrenheit, true).tenthsCelsius() / 10.0;
	}

	/** Whether most buds are lost. */
	boolean killsMost() {
		return this.low <= celsius(this.stage.killsNine());
	}

}
