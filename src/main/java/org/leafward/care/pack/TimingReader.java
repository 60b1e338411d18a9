package org.leafward.care.pack;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.leafward.care.TaskKind;
import org.leafward.care.core.rule.Anchor;
import org.leafward.care.core.rule.DayByDay;
import org.leafward.care.core.rule.Ramp;
import org.leafward.care.core.rule.RampLight;
import org.leafward.care.core.rule.RampStep;
import org.leafward.care.core.rule.Span;
import org.leafward.care.core.rule.Timing;
import org.leafward.care.pack.PackDraft.AnchorDraft;
import org.leafward.care.pack.PackDraft.RampDraft;
import org.leafward.care.pack.PackDraft.RampLightDraft;
import org.leafward.care.pack.PackDraft.RuleDraft;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.plants.SpeciesId;

/** Turns the timing of rules as written into values. */
final class TimingReader {

	private final Complaints complaints;

	private final AnchorReader anchors;

	private final BySpecies bySpecies;

	TimingReader(Complaints complaints, AnchorReader anchors, BySpecies bySpecies) {
		this.complaints = complaints;
		this.anchors = anchors;
		this.bySpecies = bySpecies;
	}

	@Nullable Timing read(RuleDraft draft, TaskKind kind, String path) {
		if (kind == TaskKind.RAMP_DAY) {
			return ramp(draft, path);
		}
		boolean sound = !wrong(draft.ramp(), path + "/ramp", "only rules of the kind ramp have steps",
				"write kind: ramp, or remove it");
		Anchor from = end(draft.from(), path, "from");
		Anchor to = end(draft.to(), path, "to");
		boolean dayByDay = draft.dayByDay() != null;
		sound &= dayByDay ? picked(draft, kind, path) : !wrong(draft.daysAhead(), path + "/days-ahead",
				"only rules with day-by-day look ahead", "add day-by-day: true, or remove it");
		if (!sound || from == null || to == null) {
			return null;
		}
		return dayByDay ? new DayByDay(from, to, Objects.requireNonNullElse(draft.daysAhead(), 0))
				: new Span(from, to, Objects.requireNonNullElse(draft.everyDays(), 0),
						Objects.requireNonNullElse(draft.shortestDays(), 1), Boolean.TRUE.equals(draft.untilPlanted()));
	}

	/** Whether what is written with day-by-day goes with it. */
	private boolean picked(RuleDraft draft, TaskKind kind, String path) {
		boolean sound = without(draft, path, "day-by-day");
		if (kind == TaskKind.HOLD_OFF) {
			this.complaints.add(path + "/day-by-day", "a hold-off is not picked day by day",
					"write a do or a watch, or remove it");
			sound = false;
		}
		if (draft.weather() == null || draft.weather().opens() == null) {
			this.complaints.add(path + "/day-by-day", "no weather opens the single days",
					"add 'weather' with 'opens', or remove day-by-day");
			sound = false;
		}
		return sound;
	}

	private @Nullable Anchor end(@Nullable AnchorDraft draft, String path, String name) {
		if (draft == null) {
			this.complaints.add(path, "'%s' is missing".formatted(name),
					"add '%s' with one of: %s".formatted(name, AnchorReader.KINDS));
			return null;
		}
		return this.anchors.read(draft, path + "/" + name);
	}

	private @Nullable Timing ramp(RuleDraft draft, String path) {
		AnchorDraft written = (draft.to() != null) ? draft.to() : draft.from();
		RampDraft ramp = draft.ramp();
		boolean sound = true;
		if (ramp == null) {
			this.complaints.add(path, "a ramp needs steps", "add 'ramp' with days and steps");
			sound = false;
		}
		if (written == null || (draft.from() != null && draft.to() != null)) {
			this.complaints.add(path, "a ramp hangs on one end",
					"write 'from' when it begins on the anchor, or 'to' when it ends there, but not both");
			return null;
		}
		sound &= without(draft, path, "a ramp");
		sound &= !wrong(draft.dayByDay(), path + "/day-by-day", "a ramp takes no 'day-by-day'", "remove it");
		sound &= !wrong(draft.daysAhead(), path + "/days-ahead", "a ramp takes no 'days-ahead'", "remove it");
		Anchor anchor = this.anchors.read(written, path + ((draft.to() != null) ? "/to" : "/from"));
		if (ramp == null || anchor == null) {
			return null;
		}
		int sum = ramp.steps().stream().mapToInt(PackDraft.StepDraft::days).sum();
		if (sum != ramp.days()) {
			this.complaints.add(path + "/ramp/days",
					"the ramp has %d days, its steps add up to %d".formatted(ramp.days(), sum),
					"change 'days' or the steps so that they agree");
			sound = false;
		}
		List<RampStep> steps = ramp.steps()
			.stream()
			.map((step) -> new RampStep(step.days(), step.place(), step.hours(), step.text()))
			.toList();
		return sound ? new Ramp(anchor, draft.to() != null, steps, light(ramp.byLight(), path + "/ramp/by-light"))
				: null;
	}

	private @Nullable RampLight light(@Nullable RampLightDraft draft, String path) {
		if (draft == null) {
			return null;
		}
		RampLight.Way way = RampLight.Way
			.valueOf(Objects.requireNonNullElse(draft.way(), "out").toUpperCase(Locale.ROOT));
		boolean nights = way == RampLight.Way.OUT;
		if (!nights) {
			wrong(draft.lowestNight(), path + "/lowest-night", "only a way out looks at nights", "remove it");
			wrong(draft.lowestNightBySpecies(), path + "/lowest-night-by-species", "only a way out looks at nights",
					"remove it");
		}
		else if (draft.lowestNight() == null && draft.lowestNightBySpecies() == null) {
			this.complaints.add(path, "the way out doesn't say which nights are too cold",
					"add 'lowest-night', for example lowest-night: 50F, or 'lowest-night-by-species'");
		}
		Map<SpeciesId, TemperatureThreshold> read = new HashMap<>();
		this.bySpecies
			.read(draft.lowestNightBySpecies(), draft.lowestNight() == null, path + "/lowest-night-by-species")
			.forEach((species, degrees) -> read.put(species, TemperatureThreshold.parse(degrees)));
		return new RampLight(way,
				(draft.lowestNight() != null) ? TemperatureThreshold.parse(draft.lowestNight()) : null, read);
	}

	/** Whether what only whole windows have is left out. */
	private boolean without(RuleDraft draft, String path, String timing) {
		String takesNo = timing + " takes no '%s'";
		return !wrong(draft.everyDays(), path + "/every-days", takesNo.formatted("every-days"), "remove it")
				& !wrong(draft.shortestDays(), path + "/shortest-days", takesNo.formatted("shortest-days"), "remove it")
				& !wrong(draft.untilPlanted(), path + "/until-planted", takesNo.formatted("until-planted"),
						"remove it");
	}

	private boolean wrong(@Nullable Object written, String path, String what, String mend) {
		if (written != null) {
			this.complaints.add(path, what, mend);
		}
		return written != null;
	}

}
