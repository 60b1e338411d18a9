package org.leafward.climate.core.place;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.FreezeClimatology;
import org.leafward.climate.FreezeClimatology.Blended;
import org.leafward.climate.FreezeClimatology.Change;
import org.leafward.climate.FreezeClimatology.PeriodRow;
import org.leafward.climate.FreezeClimatology.StationUse;
import org.leafward.climate.NormalsPeriod;
import org.leafward.climate.Place;
import org.leafward.climate.Station;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.climate.core.Neighbour;
import org.leafward.climate.core.StationClimate;

/** Draws up {@link FreezeClimatology}. */
public final class PlaceFreezes {

	/** Most stations that are looked into, those used among them. */
	public static final int MOST_CHECKED = 12;

	private PlaceFreezes() {
	}

	/**
	 * Draws up the freezes of a place.
	 * @param place the place
	 * @param threshold what counts as a freeze
	 * @param period which seasons
	 * @param candidates stations around it; the twelve nearest are looked into
	 * @param open gets a station's record
	 * @return the climatology; curves without points say why
	 */
	public static FreezeClimatology of(Place place, TemperatureThreshold threshold, NormalsPeriod period,
			List<Station> candidates, Function<Station, Optional<StationClimate>> open) {
		List<StationClimate> climates = Neighbour.choose(place, NormalsPeriod.ALL, candidates, open, MOST_CHECKED)
			.stream()
			.map(Neighbour::climate)
			.toList();
		BlendedFreezes blend = BlendedFreezes.of(place, period, threshold, climates);
		List<Neighbour> checked = Neighbour.choose(place, period,
				climates.stream().map(StationClimate::station).toList(),
				(station) -> climates.stream().filter((climate) -> climate.station().equals(station)).findFirst(),
				MOST_CHECKED);
		return new FreezeClimatology(place, threshold, period, blend.spring(), blend.fall(), blend.length(),
				blend.uses(), blend.spread(), LeaveOneOutCheck.of(period, threshold, checked),
				periods(place, threshold, climates));
	}

	private static List<PeriodRow> periods(Place place, TemperatureThreshold threshold, List<StationClimate> climates) {
		BlendedFreezes standard = BlendedFreezes.of(place, NormalsPeriod.LATEST_30, threshold, climates);
		List<PeriodRow> rows = new ArrayList<>();
		for (NormalsPeriod period : NormalsPeriod.values()) {
			BlendedFreezes blend = BlendedFreezes.of(place, period, threshold, climates);
			List<StationUse> uses = blend.uses();
			rows.add(new PeriodRow(period, uses.stream().map(StationUse::from).min(Integer::compare).orElse(null),
					uses.stream().map(StationUse::to).max(Integer::compare).orElse(null), uses.size(),
					change(blend.spring(), standard.spring(), 10), change(blend.spring(), standard.spring(), 50),
					change(blend.fall(), standard.fall(), 50), change(blend.fall(), standard.fall(), 10),
					change(blend.length(), standard.length(), 50)));
		}
		return rows;
	}

	private static Change change(Blended blended, Blended standard, int probability) {
		Double value = blended.at(probability);
		@Nullable Double before = standard.at(probability);
		return new Change(value, (value != null && before != null) ? Double.valueOf(value - before) : null);
	}

}
