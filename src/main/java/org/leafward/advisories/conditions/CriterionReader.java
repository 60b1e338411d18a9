package org.leafward.advisories.conditions;

import java.time.DateTimeException;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leafward.advisories.core.watch.Criterion;
import org.leafward.advisories.core.watch.FigureKind;
import org.leafward.advisories.core.watch.FigureSpec;
import org.leafward.advisories.core.watch.SeasonEnd;
import org.leafward.advisories.core.watch.Threshold;
import org.leafward.climate.MarkerKey;
import org.leafward.climate.MarkerKind;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.measure.BadInput;

/** Reads what has to hold, and the ends of seasons. */
final class CriterionReader {

	private static final int MEDIAN = 50;

	private final Map<String, Threshold> thresholds;

	private final Set<String> used;

	private final boolean stages;

	private final Complaints complaints;

	/**
	 * Creates a reader for one condition.
	 * @param thresholds its thresholds
	 * @param used is told which of them are asked for
	 * @param stages whether the condition has stages of buds
	 * @param complaints gathers what is wrong
	 */
	CriterionReader(Map<String, Threshold> thresholds, Set<String> used, boolean stages, Complaints complaints) {
		this.thresholds = thresholds;
		this.used = used;
		this.stages = stages;
		this.complaints = complaints;
	}

	List<Criterion> all(List<ConditionDraft.Check> checks, boolean ofDay, String path) {
		List<Criterion> all = new ArrayList<>();
		for (int i = 0; i < checks.size(); i++) {
			Criterion one = read(checks.get(i), ofDay, path + "/" + i);
			if (one != null) {
				all.add(one);
			}
		}
		return all;
	}

	private @Nullable Criterion read(ConditionDraft.Check check, boolean ofDay, String path) {
		if (check.anyOf() != null) {
			if (check.figure() != null) {
				this.complaints.add(path, "both 'any-of' and 'figure' are given", "keep one of the two");
				return null;
			}
			return new Criterion.AnyOf(all(check.anyOf(), ofDay, path + "/any-of"));
		}
		if (check.figure() == null) {
			this.complaints.add(path, "there is neither 'figure' nor 'any-of'", "name the figure to compare");
			return null;
		}
		FigureKind kind = this.complaints.tried(path + "/figure", () -> FigureKind.of(String.valueOf(check.figure())));
		return (kind != null) ? compare(kind, check, ofDay, path) : null;
	}

	private @Nullable Criterion compare(FigureKind kind, ConditionDraft.Check check, boolean ofDay, String path) {
		int before = this.complaints.problems().size();
		if (kind.ofDay() && !ofDay) {
			this.complaints.add(path + "/figure", "'%s' is a figure of a forecast day".formatted(kind.code()),
					"put it under on-one-day");
		}
		if (kind == FigureKind.KILL_MARGIN && !this.stages) {
			this.complaints.add(path + "/figure", "'kill-margin' needs the stages of buds",
					"add 'stages' to the condition");
		}
		if (kind.overDays() != (check.days() != null)) {
			this.complaints.add(path,
					"'%s' %s".formatted(kind.code(),
							kind.overDays() ? "needs a number of days" : "takes no number of days"),
					kind.overDays() ? "add 'days'" : "remove 'days'");
		}
		if ((check.atLeast() != null) == (check.atMost() != null)) {
			this.complaints.add(path, "exactly one of 'at-least' and 'at-most' is needed",
					"name the threshold under one of them");
			return null;
		}
		String name = Objects.requireNonNull((check.atLeast() != null) ? check.atLeast() : check.atMost());
		limit(kind, name, path + ((check.atLeast() != null) ? "/at-least" : "/at-most"));
		FigureSpec spec = spec(kind, check, path);
		return (spec != null && this.complaints.problems().size() == before)
				? new Criterion.Compare(spec, check.atLeast() != null, name) : null;
	}

	private void limit(FigureKind kind, String name, String path) {
		this.used.add(name);
		Threshold threshold = this.thresholds.get(name);
		if (threshold == null) {
			this.complaints.add(path, "there is no threshold '%s'".formatted(name),
					"name one of: " + String.join(", ", this.thresholds.keySet()));
		}
		else if (threshold.unit().kind() != kind.unit()) {
			this.complaints.add(path, "'%s' is no threshold for %s: it is written in '%s'".formatted(name, kind.code(),
					threshold.unit().code()), "give the threshold a unit that measures the same");
		}
	}

	private @Nullable FigureSpec spec(FigureKind kind, ConditionDraft.Check check, String path) {
		int days = (check.days() != null) ? check.days() : 0;
		MarkerKey marker = null;
		if ((kind == FigureKind.DAYS_TO) != (check.marker() != null)) {
			this.complaints.add(path, "'marker' belongs to 'days-to', and to nothing else", "add or remove it");
			return null;
		}
		if (check.marker() != null) {
			marker = marker(check.marker(), path + "/marker");
			if (marker == null) {
				return null;
			}
		}
		if ((kind == FigureKind.DULL_DAYS) != (check.upTo() != null)) {
			this.complaints.add(path, "'up-to' belongs to 'dull-days', and to nothing else", "add or remove it");
			return null;
		}
		boolean heat = kind == FigureKind.DEGREE_DAYS;
		if (heat != (check.base() != null) || heat != (check.start() != null)) {
			this.complaints.add(path, "'base' and 'start' belong to 'degree-days', and to nothing else",
					"add or remove them");
			return null;
		}
		TemperatureThreshold base = heat ? base(String.valueOf(check.base()), path + "/base") : null;
		MonthDay start = heat ? day(String.valueOf(check.start()), path + "/start") : null;
		return (heat && (base == null || start == null)) ? null
				: new FigureSpec(kind, days, marker, base, start, (check.upTo() != null) ? check.upTo() : 0);
	}

	@Nullable TemperatureThreshold base(String text, String path) {
		return this.complaints.tried(path, () -> TemperatureThreshold.parse(text));
	}

	@Nullable MonthDay day(String text, String path) {
		try {
			return MonthDay.parse("--" + text);
		}
		catch (DateTimeException ex) {
			this.complaints.add(path, "'%s' is no day of the year".formatted(text),
					"write month and day in quotes, such as \"03-01\"");
			return null;
		}
	}

	private @Nullable MarkerKey marker(ConditionDraft.End draft, String path) {
		return this.complaints.tried(path, () -> {
			MarkerKind kind = Arrays.stream(MarkerKind.values())
				.filter((one) -> one.code().equals(draft.marker()))
				.findFirst()
				.orElseThrow(() -> new BadInput("there is no marker '%s'".formatted(draft.marker()), "marker",
						"name one such as ground-freeze or first-fall-freeze"));
			return new MarkerKey(kind,
					(draft.threshold() != null) ? TemperatureThreshold.parse(draft.threshold()) : null,
					(draft.probability() != null) ? draft.probability() : MEDIAN);
		});
	}

	@Nullable SeasonEnd end(ConditionDraft.End draft, String path) {
		if ((draft.marker() != null) == (draft.dayOfYear() != null)) {
			this.complaints.add(path, "an end of a season is a marker or a day of the year",
					"write one of 'marker' and 'day-of-year'");
			return null;
		}
		int days = (draft.days() != null) ? draft.days() : 0;
		if (draft.marker() != null) {
			MarkerKey marker = marker(draft, path);
			return (marker != null) ? new SeasonEnd(marker, days, null) : null;
		}
		MonthDay day = day(String.valueOf(draft.dayOfYear()), path + "/day-of-year");
		return (day != null) ? new SeasonEnd(null, 0, day) : null;
	}

}
