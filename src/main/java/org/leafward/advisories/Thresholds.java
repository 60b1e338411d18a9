package org.leafward.advisories;

import java.time.Clock;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.advisories.conditions.Conditions;
import org.leafward.advisories.core.watch.Threshold;
import org.leafward.advisories.core.watch.WatchCondition;
import org.leafward.advisories.core.watch.WatchCondition.Moved;
import org.leafward.advisories.store.ThresholdTable;
import org.leafward.measure.BadInput;
import org.leafward.measure.Given;
import org.leafward.measure.NotThere;
import org.leafward.regions.Regions;
import org.springframework.stereotype.Service;

/** The thresholds of the watch as specialists set them for their counties. */
@Service
public class Thresholds {

	private static final int LONGEST_NOTE = 300;

	private final Conditions conditions;

	private final ThresholdTable table;

	private final Regions regions;

	private final Clock clock;

	Thresholds(Conditions conditions, ThresholdTable table, Regions regions, Clock clock) {
		this.conditions = conditions;
		this.table = table;
		this.regions = regions;
		this.clock = clock;
	}

	/**
	 * What is set for counties and regions.
	 * @param condition code of the condition
	 * @return the values that hold
	 */
	public List<Moved> set(String condition) {
		return this.table.set(condition);
	}

	/**
	 * Who changed what.
	 * @param condition code of the condition
	 * @param most how many at most
	 * @return the latest first
	 */
	public List<ThresholdChange> history(String condition, int most) {
		return this.table.history(condition, most);
	}

	/**
	 * Sets a threshold for a county or a region.
	 * @param condition code of the condition
	 * @param threshold its name
	 * @param scope code of a county, or of a region that has counties here
	 * @param value in the threshold's unit; null for the usual value again
	 * @param note why, may be empty
	 * @param by who sets it
	 * @throws NotThere when there is no such condition or threshold
	 * @throws BadInput when the value is out of bounds, the place unknown or the note too
	 * long
	 */
	public void put(String condition, String threshold, String scope, @Nullable Double value, String note, Decider by) {
		WatchCondition known = this.conditions.find(condition)
			.orElseThrow(() -> new NotThere("There is no condition '%s'.".formatted(condition)));
		Threshold limit = known.threshold(threshold);
		if (this.regions.counties()
			.stream()
			.noneMatch((one) -> one.code().equals(scope) || one.region().equals(scope))) {
			throw new BadInput("there is no county or region '%s' here".formatted(scope), "scope",
					"choose one from the list");
		}
		if (value != null) {
			limit.checked(value);
		}
		String line = note.isBlank() ? "" : Given.line("note", note.strip());
		if (line.length() > LONGEST_NOTE) {
			throw new BadInput("the note has %d characters".formatted(line.length()), "note",
					"shorten it to %d".formatted(LONGEST_NOTE));
		}
		this.table.add(new ThresholdChange(condition, threshold, scope, value, line, by.name(), this.clock.instant()),
				by);
	}

}
