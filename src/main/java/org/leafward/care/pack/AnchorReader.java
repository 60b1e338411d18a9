package org.leafward.care.pack;

import java.time.DateTimeException;
import java.time.MonthDay;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leafward.care.core.rule.Anchor;
import org.leafward.care.core.rule.Bounds;
import org.leafward.care.core.rule.CalendarAnchor;
import org.leafward.care.core.rule.Days;
import org.leafward.care.core.rule.EventAnchor;
import org.leafward.care.core.rule.FixedDay;
import org.leafward.care.core.rule.MarkerAnchor;
import org.leafward.care.core.rule.PhaseAnchor;
import org.leafward.care.core.rule.PlantingDateAnchor;
import org.leafward.care.core.rule.SoilFinding;
import org.leafward.care.core.rule.SoilTestAnchor;
import org.leafward.care.pack.PackDraft.AnchorDraft;
import org.leafward.climate.DayLength;
import org.leafward.climate.HeatGoal;
import org.leafward.climate.MarkerKey;
import org.leafward.climate.MarkerKind;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.plants.SpeciesId;

/** Turns anchors as written into values, and says where they don't hold together. */
final class AnchorReader {

	/** What an anchor can hang on. */
	static final String KINDS = "marker, phase, event, soil-test, planting-date, day-of-year";

	private static final int MEDIAN = 50;

	private final Complaints complaints;

	private final KnownPhases phases;

	private final BySpecies bySpecies;

	/**
	 * Creates a reader for the anchors of one rule.
	 * @param complaints gathers what is wrong
	 * @param phases the names that anchors can hang on
	 * @param bySpecies reads entries by species of that rule
	 */
	AnchorReader(Complaints complaints, KnownPhases phases, BySpecies bySpecies) {
		this.complaints = complaints;
		this.phases = phases;
		this.bySpecies = bySpecies;
	}

	@Nullable Anchor read(AnchorDraft draft, String path) {
		long kinds = Stream
			.of(draft.marker(), draft.phase(), draft.event(), draft.soilTest(), draft.plantingDate(), draft.dayOfYear())
			.filter(Objects::nonNull)
			.count();
		if (kinds != 1) {
			this.complaints.add(path,
					(kinds == 0) ? "the anchor names nothing to hang on" : "the anchor names two things",
					"write one of: " + KINDS);
			return null;
		}
		if (draft.soilTest() == null && !without(draft.lastPart(), path, "last-part", "what hangs on no soil test")) {
			return null;
		}
		if (draft.marker() != null) {
			return marker(draft, draft.marker(), path);
		}
		if (draft.phase() != null) {
			return phase(draft, draft.phase(), path);
		}
		if (draft.event() != null) {
			return event(draft, draft.event(), path);
		}
		if (draft.soilTest() != null) {
			return soilTest(draft, draft.soilTest(), path);
		}
		return (draft.dayOfYear() != null) ? calendar(draft, draft.dayOfYear(), path) : plantingDate(draft, path);
	}

	private @Nullable Anchor marker(AnchorDraft draft, String code, String path) {
		MarkerKind kind = Arrays.stream(MarkerKind.values())
			.filter((one) -> one.code().equals(code))
			.findFirst()
			.orElseThrow();
		boolean sound = without(draft.whyFixed(), path, "why-fixed", "a marker");
		sound &= kind.needsGoal() ? heat(draft, code, path) : temperature(draft, kind, path);
		sound &= daylight(draft, kind, path);
		FixedDay start = bound(draft.start(), path + "/start");
		sound &= (start != null) == (draft.start() != null);
		Bounds bounds = bounds(draft, path);
		Days days = days(draft, path);
		Anchor floor = (draft.noSoonerThan() != null) ? read(draft.noSoonerThan(), path + "/no-sooner-than") : null;
		if (floor != null && !(floor instanceof MarkerAnchor)) {
			this.complaints.add(path + "/no-sooner-than", "only a marker can hold a date back", "name a marker here");
			return null;
		}
		if (!sound || bounds == null || days == null || (floor == null) != (draft.noSoonerThan() == null)) {
			return null;
		}
		HeatGoal goal = (draft.sum() == null) ? null
				: new HeatGoal(draft.sum(), (start != null) ? start.northern() : HeatGoal.USUAL_START);
		Map<SpeciesId, TemperatureThreshold> thresholds = thresholds(draft, path);
		MarkerKey key = new MarkerKey(kind, threshold(kind.needsGoal() ? draft.base() : draft.threshold(), thresholds),
				Objects.requireNonNullElse(draft.probability(), MEDIAN), goal,
				(draft.daylight() != null) ? DayLength.parse(draft.daylight()) : null);
		return MarkerAnchor.at(key, thresholds, days, nextSeason(draft), bounds, (MarkerAnchor) floor);
	}

	private Map<SpeciesId, TemperatureThreshold> thresholds(AnchorDraft draft, String path) {
		Map<SpeciesId, TemperatureThreshold> thresholds = new HashMap<>();
		this.bySpecies.read(draft.thresholdBySpecies(), true, path + "/threshold-by-species")
			.forEach((species, degrees) -> thresholds.put(species, TemperatureThreshold.parse(degrees)));
		return thresholds;
	}

	/** The one for all plants, else the lowest of those by species. */
	private static @Nullable TemperatureThreshold threshold(@Nullable String degrees,
			Map<SpeciesId, TemperatureThreshold> bySpecies) {
		return (degrees != null) ? TemperatureThreshold.parse(degrees)
				: bySpecies.values()
					.stream()
					.min(Comparator.comparingDouble(TemperatureThreshold::celsius))
					.orElse(null);
	}

	private @Nullable Anchor phase(AnchorDraft draft, String name, String path) {
		boolean sound = withoutMarkerEntries(draft, path, "a phase")
				& without(draft.whyFixed(), path, "why-fixed", "a phase")
				& known(name, this.phases.phases(), path + "/phase", "phase");
		Bounds bounds = bounds(draft, path);
		Days days = days(draft, path);
		return (sound && bounds != null && days != null) ? new PhaseAnchor(name, days, nextSeason(draft), bounds)
				: null;
	}

	private @Nullable Anchor event(AnchorDraft draft, String name, String path) {
		boolean sound = withoutMarkerEntries(draft, path, "an event") & withoutBounds(draft, path, "an event")
				& without(draft.whyFixed(), path, "why-fixed", "an event")
				& without(draft.season(), path, "season", "an event")
				& known(name, this.phases.events(), path + "/event", "event");
		Days days = days(draft, path);
		return (sound && days != null) ? new EventAnchor(name, days) : null;
	}

	private @Nullable Anchor soilTest(AnchorDraft draft, String finding, String path) {
		boolean sound = withoutMarkerEntries(draft, path, "a soil test") & withoutBounds(draft, path, "a soil test")
				& without(draft.whyFixed(), path, "why-fixed", "a soil test")
				& without(draft.season(), path, "season", "a soil test");
		SoilFinding asked = SoilFinding.valueOf(finding.toUpperCase(Locale.ROOT).replace('-', '_'));
		boolean last = Boolean.TRUE.equals(draft.lastPart());
		if (last && asked != SoilFinding.GYPSUM) {
			sound &= without(draft.lastPart(), path, "last-part", "a soil test that doesn't ask for gypsum");
		}
		Days days = days(draft, path);
		return (sound && days != null) ? new SoilTestAnchor(asked, last, days) : null;
	}

	private boolean known(String name, Set<String> names, String path, String what) {
		if (!names.contains(name)) {
			this.complaints
				.add(path, "there is no %s '%s'".formatted(what, name), names.isEmpty() ? "add it in config/phenology"
						: "use one of config/phenology, or add it there: " + String.join(", ", new TreeSet<>(names)));
		}
		return names.contains(name);
	}

	private @Nullable Bounds bounds(AnchorDraft draft, String path) {
		FixedDay notBefore = bound(draft.notBefore(), path + "/not-before");
		FixedDay notAfter = bound(draft.notAfter(), path + "/not-after");
		boolean sound = (notBefore != null) == (draft.notBefore() != null)
				&& (notAfter != null) == (draft.notAfter() != null);
		return sound ? new Bounds(notBefore, notAfter) : null;
	}

	private boolean heat(AnchorDraft draft, String code, String path) {
		String anchor = "'%s'".formatted(code);
		boolean sound = without(draft.threshold(), path, "threshold", anchor)
				& without(draft.thresholdBySpecies(), path, "threshold-by-species", anchor);
		if (draft.base() == null || draft.sum() == null) {
			this.complaints.add(path, anchor + " needs a base and a sum", "add both, for example base: 50F, sum: 200");
			sound = false;
		}
		return sound;
	}

	private boolean temperature(AnchorDraft draft, MarkerKind kind, String path) {
		String anchor = "'%s'".formatted(kind.code());
		boolean sound = without(draft.base(), path, "base", anchor) & without(draft.sum(), path, "sum", anchor)
				& without(draft.start(), path, "start", anchor);
		if (!kind.needsThreshold()) {
			return sound & without(draft.threshold(), path, "threshold", anchor)
					& without(draft.thresholdBySpecies(), path, "threshold-by-species", anchor);
		}
		if (draft.threshold() == null && draft.thresholdBySpecies() == null) {
			this.complaints.add(path, anchor + " needs a threshold", "add one, for example threshold: 32F");
			return false;
		}
		if (draft.threshold() != null && draft.thresholdBySpecies() != null) {
			this.complaints.add(path + "/threshold", "the threshold is written once for all and once by species",
					"keep either threshold or threshold-by-species");
			return false;
		}
		return sound;
	}

	private boolean daylight(AnchorDraft draft, MarkerKind kind, String path) {
		String anchor = "'%s'".formatted(kind.code());
		if (!kind.needsDaylight()) {
			return without(draft.daylight(), path, "daylight", anchor);
		}
		boolean sound = without(draft.probability(), path, "probability", anchor);
		if (draft.daylight() == null) {
			this.complaints.add(path, anchor + " needs a length of the day", "add one, for example daylight: 14h");
			sound = false;
		}
		return sound;
	}

	private @Nullable Anchor plantingDate(AnchorDraft draft, String path) {
		boolean sound = withoutMarkerEntries(draft, path, "the planting date");
		sound &= withoutBounds(draft, path, "the planting date");
		sound &= without(draft.whyFixed(), path, "why-fixed", "the planting date");
		sound &= without(draft.season(), path, "season", "the planting date");
		Days days = days(draft, path);
		return (sound && days != null) ? new PlantingDateAnchor(days) : null;
	}

	private @Nullable Anchor calendar(AnchorDraft draft, String written, String path) {
		boolean sound = withoutMarkerEntries(draft, path, "a day of the year");
		sound &= withoutBounds(draft, path, "a day of the year");
		sound &= without(draft.days(), path, "days", "a day of the year");
		sound &= without(draft.daysBySpecies(), path, "days-by-species", "a day of the year");
		if (draft.whyFixed() == null) {
			this.complaints.add(path, "a day of the year needs a reason",
					"add 'why-fixed', or hang the window on a marker");
			sound = false;
		}
		FixedDay day = bound(written, path + "/day-of-year");
		return (sound && day != null && draft.whyFixed() != null)
				? new CalendarAnchor(day, nextSeason(draft), draft.whyFixed()) : null;
	}

	private boolean withoutMarkerEntries(AnchorDraft draft, String path, String anchor) {
		return without(draft.noSoonerThan(), path, "no-sooner-than", anchor)
				& without(draft.threshold(), path, "threshold", anchor)
				& without(draft.thresholdBySpecies(), path, "threshold-by-species", anchor)
				& without(draft.base(), path, "base", anchor) & without(draft.sum(), path, "sum", anchor)
				& without(draft.start(), path, "start", anchor) & without(draft.daylight(), path, "daylight", anchor)
				& without(draft.probability(), path, "probability", anchor);
	}

	private boolean withoutBounds(AnchorDraft draft, String path, String anchor) {
		return without(draft.notBefore(), path, "not-before", anchor)
				& without(draft.notAfter(), path, "not-after", anchor);
	}

	private boolean without(@Nullable Object value, String path, String entry, String anchor) {
		if (value != null) {
			this.complaints.add(path + "/" + entry, "%s takes no '%s'".formatted(anchor, entry), "remove it");
		}
		return value == null;
	}

	private @Nullable FixedDay bound(@Nullable String written, String path) {
		if (written == null) {
			return null;
		}
		try {
			MonthDay day = MonthDay.parse("--" + written);
			if (day.isValidYear(2001)) {
				return new FixedDay(day);
			}
		}
		catch (DateTimeException ex) {
			// Said below, together with 29 February.
		}
		this.complaints.add(path, "there is no such day in every year: '%s'".formatted(written),
				"write a month and day such as \"11-01\"");
		return null;
	}

	private @Nullable Days days(AnchorDraft draft, String path) {
		if (draft.days() != null && draft.daysBySpecies() != null) {
			this.complaints.add(path + "/days", "the days are written once for all and once by species",
					"keep either days or days-by-species");
			return null;
		}
		return new Days(Objects.requireNonNullElse(draft.days(), 0),
				this.bySpecies.read(draft.daysBySpecies(), true, path + "/days-by-species"));
	}

	private static boolean nextSeason(AnchorDraft draft) {
		return "next".equals(draft.season());
	}

}
