package org.leafward.care.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.leafward.care.core.rule.Condition;
import org.leafward.care.core.rule.Weather;
import org.leafward.care.pack.PackDraft.StateDraft;
import org.leafward.care.pack.PackDraft.WeatherDraft;
import org.leafward.measure.BadInput;

/** Turns conditions of the weather as written into values. */
final class WeatherReader {

	private final Complaints complaints;

	WeatherReader(Complaints complaints) {
		this.complaints = complaints;
	}

	Weather read(@Nullable WeatherDraft draft, String path) {
		if (draft == null) {
			return Weather.ANY;
		}
		return new Weather(states(draft.opens(), path + "/opens"), states(draft.postpones(), path + "/postpones"),
				states(draft.withdraws(), path + "/withdraws"));
	}

	private List<Condition> states(@Nullable List<StateDraft> drafts, String path) {
		List<Condition> conditions = new ArrayList<>();
		if (drafts != null) {
			for (int i = 0; i < drafts.size(); i++) {
				conditions.add(state(drafts.get(i), path + "/" + i));
			}
		}
		return conditions;
	}

	private Condition state(StateDraft draft, String path) {
		String bound = (draft.atMost() != null) ? draft.atMost() : draft.atLeast();
		Condition condition = new Condition(draft.state(), bound, Objects.requireNonNullElse(draft.days(), 0));
		if (StateNeeds.of(draft.state()).check(draft, path, this.complaints)) {
			try {
				condition.question();
			}
			catch (BadInput ex) {
				this.complaints.add(path, ex.what(), ex.mend());
			}
		}
		return condition;
	}

}
