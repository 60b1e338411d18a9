package org.leafward.care.core.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.leafward.care.core.rule.DayByDay;
import org.leafward.care.core.rule.Freezing;
import org.leafward.care.core.rule.Ramp;
import org.leafward.care.core.rule.Span;
import org.leafward.measure.DayWindow;
import org.leafward.measure.DayWords;
import org.leafward.measure.Explanation;
import org.leafward.measure.Season;
import org.leafward.plants.Species;
import org.leafward.register.Planting;

/**
 * The plan of one site as it grows: what several plantings share, the dates of markers
 * and the windows that hang on nothing else, is worked out once.
 */
final class SitePlan {

	private final RuleIndex index;

	private final PlanSite site;

	private final List<Season> seasons;

	private final AnchorDates dates;

	private final Turns turns;

	private final @Nullable AnchorDate[] anchors;

	private final @Nullable Ends[] ends;

	private final @Nullable Draft[] shared;

	private final Map<Freezing, Boolean> freezes = new HashMap<>();

	private final List<PlannedTask> tasks = new ArrayList<>();

	private final List<Gap> gaps = new ArrayList<>();

	SitePlan(RuleIndex index, Estimates estimates, PlanSite site, List<Season> seasons, LocalDate today) {
		this.index = index;
		this.site = site;
		this.seasons = seasons;
		this.dates = new AnchorDates(site, estimates);
		this.turns = new Turns(site, today);
		this.anchors = new AnchorDate[index.slots() * seasons.size()];
		this.ends = new Ends[index.size() * seasons.size()];
		this.shared = new Draft[index.size() * seasons.size()];
	}

	Plan result() {
		return new Plan(this.tasks, this.gaps);
	}

	void add(Subject subject) {
		List<Draft> drafts = new ArrayList<>();
		Planting planting = subject.planting();
		Species species = subject.species();
		if (planting == null || species == null) {
			for (IndexedRule rule : this.index.forSite(this.site.facts())) {
				for (int at = 0; at < this.seasons.size(); at++) {
					draft(rule, at, subject, drafts);
				}
			}
		}
		else {
			int planted = Season.containing(planting.plantedOn(), this.site.hemisphere()).year();
			for (IndexedRule rule : this.index.forPlanting(planting, species, this.site.facts())) {
				for (int at = 0; at < this.seasons.size(); at++) {
					if (rule.concernsIn(this.seasons.get(at).year() - planted)) {
						draft(rule, at, subject, drafts);
					}
				}
			}
		}
		HoldOffs holdOffs = new HoldOffs(drafts);
		for (Draft draft : drafts) {
			if (draft.rule().rule().timing() instanceof DayByDay) {
				this.turns.days(draft, holdOffs, subject, this.tasks);
				continue;
			}
			HoldOffs.Left left = holdOffs.leave(draft);
			Draft kept = left.draft();
			if (kept == null) {
				gap(draft.rule(), draft.season(), subject, left.why());
			}
			else {
				this.turns.of(kept, subject, this.tasks);
			}
		}
	}

	private void gap(IndexedRule rule, Season season, Subject subject, String why) {
		this.gaps.add(new Gap(subject.plantingId(), rule.reference(), rule.rule().title(), season.year(), why));
	}

	private void draft(IndexedRule rule, int at, Subject subject, List<Draft> drafts) {
		IndexedRule.TimedBy by = rule.timedBy(this.site.facts());
		if (by.leftOut() || !freezesEnough(rule)) {
			return;
		}
		Season season = this.seasons.get(at);
		Ends found = ends(rule, by, at, subject);
		if (found.missing() != null) {
			gap(rule, season, subject, found.missing());
		}
		DayWindow window = found.window();
		if (window == null) {
			return;
		}
		DayWindow cut = cut(rule, window, subject.plantedOn());
		if (cut == window) {
			drafts.add(whole(rule, by, at, found, window));
		}
		else if (cut != null) {
			drafts.add(Draft.of(rule, season, by, found, cut)
				.with(cut, cut.from().toEpochDay(),
						() -> Explanation.of("Planted", DayWords.of(cut.from()))
							.withDetail("The window would begin on %s, before the planting."
								.formatted(DayWords.of(window.from())))));
		}
	}

	/** A rule for colder places is not for this one, and nothing is missing. */
	private boolean freezesEnough(IndexedRule rule) {
		Freezing freezing = rule.rule().concern().freezing();
		return freezing == null || this.freezes.computeIfAbsent(freezing, (one) -> one.comesAt(this.site.markers()));
	}

	/** The draft of an uncut window; plantings share it when they share its ends. */
	private Draft whole(IndexedRule rule, IndexedRule.TimedBy by, int at, Ends found, DayWindow window) {
		int place = rule.number() * this.seasons.size() + at;
		Draft known = this.shared[place];
		if (known != null && known.ends() == found) {
			return known;
		}
		Draft draft = Draft.of(rule, this.seasons.get(at), by, found, window);
		if (by.shared()) {
			this.shared[place] = draft;
		}
		return draft;
	}

	/** The days that are left of a window by the planting date; the same when all are. */
	private static @Nullable DayWindow cut(IndexedRule rule, DayWindow window, LocalDate plantedOn) {
		if (rule.rule().timing() instanceof Ramp) {
			return (rule.oncePerPlanting() || !window.from().isBefore(plantedOn)) ? window : null;
		}
		DayWindow left = window;
		boolean untilPlanted = rule.rule().timing() instanceof Span span && span.untilPlanted();
		if (!rule.oncePerPlanting() && !untilPlanted && window.from().isBefore(plantedOn)) {
			if (window.to().isBefore(plantedOn)) {
				return null;
			}
			left = new DayWindow(plantedOn, window.to());
		}
		return (!(rule.rule().timing() instanceof Span span) || span.keeps(left, plantedOn)) ? left : null;
	}

	private Ends ends(IndexedRule rule, IndexedRule.TimedBy by, int at, Subject subject) {
		if (!by.shared()) {
			return resolve(rule, by, at, subject);
		}
		int place = rule.number() * this.seasons.size() + at;
		Ends known = this.ends[place];
		if (known == null) {
			known = resolve(rule, by, at, subject);
			this.ends[place] = known;
		}
		return known;
	}

	private Ends resolve(IndexedRule rule, IndexedRule.TimedBy by, int at, Subject subject) {
		AnchorDate from = anchor(by.from(), at, subject);
		return (rule.rule().timing() instanceof Ramp ramp) ? Ends.of(ramp, from)
				: Ends.between(from, anchor(by.to(), at, subject));
	}

	private AnchorDate anchor(IndexedRule.Slotted anchor, int at, Subject subject) {
		if (anchor.slot() < 0) {
			return this.dates.of(anchor.anchor(), this.seasons.get(at), subject);
		}
		int place = anchor.slot() * this.seasons.size() + at;
		AnchorDate known = this.anchors[place];
		if (known == null) {
			known = this.dates.of(anchor.anchor(), this.seasons.get(at), subject);
			this.anchors[place] = known;
		}
		return known;
	}

}
