package org.leafward.care.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.leafward.measure.DayWindow;
import org.leafward.measure.Explanation;
import org.leafward.measure.Season;

/** The days of a rule for a subject in a season, before they are cut into turns. */
final class Draft {

	private final IndexedRule rule;

	private final Season season;

	private final IndexedRule.TimedBy by;

	private final Ends ends;

	private final DayWindow window;

	private final List<Supplier<Explanation>> more;

	private final long basis;

	private final Lazy<Explanation> reason = new Lazy<>(() -> Reasons.of(this, List.of()));

	private Draft(IndexedRule rule, Season season, IndexedRule.TimedBy by, Ends ends, DayWindow window,
			List<Supplier<Explanation>> more, long basis) {
		this.rule = rule;
		this.season = season;
		this.by = by;
		this.ends = ends;
		this.window = window;
		this.more = more;
		this.basis = basis;
	}

	static Draft of(IndexedRule rule, Season season, IndexedRule.TimedBy by, Ends ends, DayWindow window) {
		return new Draft(rule, season, by, ends, window, List.of(), Basis.mix(rule.basis(), ends.basis()));
	}

	/** The same with other days and one step more, for which a number stands. */
	Draft with(DayWindow other, long number, Supplier<Explanation> step) {
		List<Supplier<Explanation>> steps = new ArrayList<>(this.more);
		steps.add(step);
		return new Draft(this.rule, this.season, this.by, this.ends, other, steps, Basis.mix(this.basis, number));
	}

	IndexedRule rule() {
		return this.rule;
	}

	Season season() {
		return this.season;
	}

	IndexedRule.TimedBy by() {
		return this.by;
	}

	Ends ends() {
		return this.ends;
	}

	DayWindow window() {
		return this.window;
	}

	/** Steps besides the ends. */
	List<Supplier<Explanation>> more() {
		return this.more;
	}

	/** A number that changes when the explanation would. */
	long basis() {
		return this.basis;
	}

	/** The explanation, one for all turns. */
	Lazy<Explanation> reason() {
		return this.reason;
	}

}
