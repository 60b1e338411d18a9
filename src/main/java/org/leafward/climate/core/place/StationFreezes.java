package org.leafward.climate.core.place;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.FreezeClimatology;
import org.leafward.climate.MarkerKind;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.climate.core.FreezeTable;
import org.leafward.climate.core.Neighbour;
import org.leafward.climate.core.Sample;
import org.leafward.climate.core.SeasonOutcome;
import org.leafward.measure.Hemisphere;

/**
 * What the record of one station says of the freezes at a place.
 *
 * @param neighbour the station, seen from the place
 * @param spring last spring freezes
 * @param fall first fall freezes
 * @param length frost-free lengths
 */
record StationFreezes(Neighbour neighbour, Sample spring, Sample fall, Sample length) {

	static StationFreezes of(Neighbour neighbour, TemperatureThreshold threshold, Hemisphere hemisphere) {
		List<SeasonOutcome> springs = outcomes(neighbour, MarkerKind.LAST_SPRING_FREEZE, threshold, hemisphere);
		List<SeasonOutcome> falls = outcomes(neighbour, MarkerKind.FIRST_FALL_FREEZE, threshold, hemisphere);
		return new StationFreezes(neighbour, Sample.ofDates(springs), Sample.ofDates(falls),
				FreezeTable.lengths(springs, falls));
	}

	private static List<SeasonOutcome> outcomes(Neighbour neighbour, MarkerKind kind, TemperatureThreshold threshold,
			Hemisphere hemisphere) {
		return neighbour.climate().outcomes(kind, threshold, neighbour.colderBy(kind), hemisphere, neighbour.period());
	}

	static FreezeClimatology.Years years(Sample sample) {
		return new FreezeClimatology.Years(median(sample), sample.used(), sample.without(), sample.leftOut(),
				sample.undefined().orElse(null));
	}

	static @Nullable Double median(Sample sample) {
		return sample.undefined().isPresent() ? null : Double.valueOf(sample.quantile(50));
	}

}
