package org.leafward.climate.core;

import java.util.List;
import org.leafward.climate.MarkerKind;
import org.leafward.climate.Station;
import org.leafward.measure.Explanation;
import org.leafward.measure.NumberWords;

/**
 * What there is to say of a station, seen from a site, whatever the marker. Written once
 * for all markers of the site.
 */
final class NeighbourWords {

	private final String name;

	private final String listed;

	private final String record;

	private final Explanation carriedAtNight;

	private final Explanation carriedByHalf;

	private final Explanation carried;

	private final String seasons;

	private final String ofSeasons;

	NeighbourWords(Neighbour neighbour) {
		Station station = neighbour.climate().station();
		String where = where(neighbour);
		this.name = station.name() + ", " + where;
		this.listed = station.name() + " (" + where + (station.invented() ? ", invented station)" : ")");
		this.record = station.invented()
				? "Invented station " + station.id().value() + ": its daily record was made up for a demonstration."
				: "Measured daily record of station " + station.id().value() + ".";
		this.carriedAtNight = CarriedExplanation.of(1, neighbour);
		this.carriedByHalf = CarriedExplanation.of(0.5, neighbour);
		this.carried = CarriedExplanation.of(0, neighbour);
		this.seasons = ", from " + neighbour.period().from() + " to " + neighbour.period().to();
		this.ofSeasons = "Of " + neighbour.normals().words() + ", those that the record covers.";
	}

	/** The station's name, distance and height against the site. */
	String name() {
		return this.name;
	}

	/** The same for a list of stations. */
	String listed() {
		return this.listed;
	}

	/** Whether the record was measured. */
	String record() {
		return this.record;
	}

	/** How its temperatures are carried to the site. */
	Explanation carried(MarkerKind kind) {
		double share = kind.nightShare();
		return (share == 1) ? this.carriedAtNight : (share == 0) ? this.carried : this.carriedByHalf;
	}

	/** The seasons that a marker's sample was drawn from. */
	Explanation seasons(Sample sample) {
		String without = (sample.without() > 0) ? " In " + sample.without() + " more it did not come." : "";
		String leftOut = (sample.leftOut() > 0)
				? " Left out: " + sample.leftOut() + ", for more than 10 missing days before it came."
				: " None had to be left out for missing days (more than 10 before it came).";
		return new Explanation("Seasons used", sample.used() + this.seasons, this.ofSeasons + without + leftOut,
				"Missing days after the Utah Climate Center's 10-day rule (at second hand)", List.of());
	}

	/** Distance, and how the station lies in height against the site. */
	private static String where(Neighbour neighbour) {
		long metres = Math.round(Math.abs(neighbour.higherBy()));
		String height = (metres == 0) ? "at the same height"
				: metres + " m " + ((neighbour.higherBy() > 0) ? "lower" : "higher");
		return NumberWords.fixed(neighbour.distance(), 1) + " km away, " + height;
	}

}
