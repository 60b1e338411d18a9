package org.leafward.care;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.leafward.care.RulePreview.Counts;
import org.leafward.care.core.plan.Planner;
import org.leafward.care.store.TaskTable;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.springframework.stereotype.Service;

/**
 * Plans sites with rules that are not published yet and compares them with what is
 * stored. What would change without the draft as well is left out. Writes nothing.
 */
@Service
public class RulePreviews {

	/** Most sites of a preview. */
	public static final int MOST_SITES = 2_000;

	private static final Duration LIMIT = Duration.ofSeconds(20);

	private static final int PIECE = 50;

	private static final int MOST_SAMPLES = 24;

	private static final int SAMPLES_OF_SITE = 4;

	private final Register register;

	private final SitePlanner planner;

	private final TaskTable tasks;

	private final InputReader inputs;

	private final Clock clock;

	RulePreviews(Register register, SitePlanner planner, TaskTable tasks, InputReader inputs, Clock clock) {
		this.register = register;
		this.planner = planner;
		this.tasks = tasks;
		this.inputs = inputs;
		this.clock = clock;
	}

	/**
	 * What publishing would do.
	 * @param draft the packs as they would be
	 * @return of all sites, or of the {@value #MOST_SITES} that come first by their
	 * random identifiers, or of fewer when that takes longer than 20 seconds
	 */
	public RulePreview of(RulePacks draft) {
		Planner used = this.planner.latest().planner();
		Planner planned = new Planner(draft.all(), draft.phenology());
		Tally tally = new Tally();
		Instant end = this.clock.instant().plus(LIMIT);
		SiteId last = null;
		while (tally.sites < MOST_SITES && !this.clock.instant().isAfter(end)) {
			List<SiteId> piece = this.register.idsAfter(last, PIECE);
			if (piece.isEmpty()) {
				return tally.result(true, false);
			}
			last = piece.get(piece.size() - 1);
			look(piece, used, planned, tally);
		}
		boolean whole = this.register.idsAfter(last, 1).isEmpty();
		return tally.result(whole, !whole && tally.sites < MOST_SITES);
	}

	private void look(List<SiteId> ids, Planner used, Planner draft, Tally tally) {
		for (SiteInputs inputs : this.inputs.of(ids, this.clock.instant())) {
			SitePlanner.Planned now = this.planner.plan(inputs, used);
			SitePlanner.Planned then = this.planner.plan(inputs, draft);
			tally.sites++;
			if (!Arrays.equals(now.hash(), then.hash())) {
				compare(inputs, now, then, tally);
			}
		}
	}

	private void compare(SiteInputs inputs, SitePlanner.Planned now, SitePlanner.Planned then, Tally tally) {
		Site site = inputs.site();
		PlanComparison compared = PlanComparison.of(inputs, this.tasks.stored(site.id()), now, then);
		tally.add(site, new Counts(compared.added().size(), compared.changed().size(), compared.withdrawn().size()));
		tally.samples(site, compared.all());
	}

	/** Counts while it goes. */
	private static final class Tally {

		private int sites;

		private int touched;

		private Counts total = Counts.NONE;

		private final Map<String, Counts> counties = new TreeMap<>();

		private final Map<String, List<PreviewedChange>> samples = new TreeMap<>();

		void add(Site site, Counts counts) {
			if (counts.any()) {
				this.touched++;
				this.total = this.total.plus(counts);
				this.counties.merge(site.county(), counts, Counts::plus);
			}
		}

		/** The first site of each county with a change speaks for it. */
		void samples(Site site, List<PreviewedChange> changes) {
			if (!changes.isEmpty()) {
				this.samples.putIfAbsent(site.county(), changes.stream().limit(SAMPLES_OF_SITE).toList());
			}
		}

		RulePreview result(boolean whole, boolean outOfTime) {
			return new RulePreview(this.sites, whole, outOfTime, this.touched, this.total, this.counties,
					this.samples.values().stream().flatMap(List::stream).limit(MOST_SAMPLES).toList());
		}

	}

}
