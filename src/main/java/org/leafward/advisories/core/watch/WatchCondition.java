package org.leafward.advisories.core.watch;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.leafward.advisories.Condition;
import org.leafward.measure.NotThere;

/**
 * Something that is looked out for.
 *
 * @param condition what readers of its proposals need
 * @param why what it is for, in a sentence
 * @param thresholds by name, in the order in which they are shown; {@value #COOL_DOWN} is
 * always one of them
 * @param season when it is looked out for; null for all year
 * @param all what has to hold today
 * @param oneDay what has to hold on a forecast day besides; null for nothing
 * @param lasts days that a proposal without such a day is about
 * @param stages stages of buds, where its figures need them; else null
 * @param texts drafted texts by code of the language
 * @param sources where the knowledge comes from
 * @param moved other values of thresholds that data has for regions and counties
 */
public record WatchCondition(Condition condition, String why, List<Threshold> thresholds, @Nullable WatchSeason season,
		List<Criterion> all, @Nullable OneDay oneDay, int lasts, @Nullable Stages stages,
		Map<String, TextTemplate> texts, List<String> sources, List<Moved> moved) {

	/** Name of the threshold that says for how many days nothing is proposed again. */
	public static final String COOL_DOWN = "cool-down";

	public WatchCondition {
		thresholds = List.copyOf(thresholds);
		all = List.copyOf(all);
		texts = Map.copyOf(texts);
		sources = List.copyOf(sources);
		moved = List.copyOf(moved);
	}

	/**
	 * The season of a condition.
	 *
	 * @param from its first day
	 * @param to its last day
	 */
	public record WatchSeason(SeasonEnd from, SeasonEnd to) {
	}

	/**
	 * A template of the drafted text.
	 *
	 * @param headline one line
	 * @param what what is coming
	 * @param impacts what it does to plants
	 * @param toDo what to do
	 */
	public record TextTemplate(String headline, String what, String impacts, String toDo) {
	}

	/**
	 * Another value of a threshold.
	 *
	 * @param threshold its name
	 * @param scope code of a county, or of a region such as {@code US-MI}
	 * @param value in the threshold's unit
	 */
	public record Moved(String threshold, String scope, double value) {
	}

	public String code() {
		return this.condition.code();
	}

	/**
	 * A threshold.
	 * @param name its name
	 * @return the threshold
	 * @throws NotThere when there is none
	 */
	public Threshold threshold(String name) {
		return this.thresholds.stream()
			.filter((one) -> one.name().equals(name))
			.findFirst()
			.orElseThrow(() -> new NotThere("There is no threshold '%s' of %s.".formatted(name, code())));
	}

}
