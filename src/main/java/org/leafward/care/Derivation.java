package org.leafward.care;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.leafward.care.core.plan.PlanDiff;
import org.leafward.care.store.ExplanationTable;
import org.leafward.care.store.GapTable;
import org.leafward.care.store.PlanWriter;
import org.leafward.care.store.SiteDiff;
import org.leafward.care.store.SitePlanTable;
import org.leafward.care.store.TaskTable;
import org.leafward.measure.Explanation;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Component;

/**
 * Derives the tasks of some sites in the caller's transaction. While all that a site's
 * plan is made from has the fingerprint that it had the last time, nothing is planned;
 * while the plan has, its tasks are not even read.
 */
@Component
class Derivation {

	private final InputReader inputs;

	private final SitePlanner planner;

	private final TaskTable tasks;

	private final GapTable gaps;

	private final SitePlanTable plans;

	private final PlanWriter writer;

	private final ExplanationTable explanations;

	private final ApplicationEventPublisher events;

	private final Clock clock;

	Derivation(InputReader inputs, SitePlanner planner, TaskTable tasks, GapTable gaps, SitePlanTable plans,
			PlanWriter writer, ExplanationTable explanations, ApplicationEventPublisher events, Clock clock) {
		this.inputs = inputs;
		this.planner = planner;
		this.tasks = tasks;
		this.gaps = gaps;
		this.plans = plans;
		this.writer = writer;
		this.explanations = explanations;
		this.events = events;
		this.clock = clock;
	}

	/**
	 * Derives sites and writes the differences.
	 * @param sites the sites; those that are not there any more are passed over
	 * @return what was written for each site
	 */
	Map<SiteId, PlanDiff> derive(List<SiteId> sites) {
		this.plans.lock(sites);
		SitePlanner.Ready rules = this.planner.latest();
		Instant now = this.clock.instant().truncatedTo(ChronoUnit.SECONDS);
		Map<SiteId, SitePlanTable.Made> before = this.plans.of(sites);
		Map<SiteId, SitePlanTable.Made> after = new HashMap<>();
		List<SiteId> same = new ArrayList<>();
		Map<SiteId, PlanDiff> diffs = new HashMap<>();
		List<SiteDiff> changed = new ArrayList<>();
		Function<Explanation, UUID> nameOf = remembering();
		for (SiteInputs inputs : this.inputs.of(sites, now)) {
			Site site = inputs.site();
			SitePlanTable.Made made = before.get(site.id());
			byte[] from = this.planner.fingerprint(inputs, rules);
			if (made != null && Arrays.equals(from, made.inputs())) {
				same.add(site.id());
				diffs.put(site.id(), PlanDiff.NONE);
				continue;
			}
			SitePlanner.Planned planned = this.planner.plan(inputs, rules.planner());
			after.put(site.id(), new SitePlanTable.Made(planned.hash(), from));
			PlanDiff diff = (made != null && Arrays.equals(planned.hash(), made.hash())) ? PlanDiff.NONE
					: compare(inputs, planned, nameOf);
			diffs.put(site.id(), diff);
			if (!diff.isEmpty()) {
				changed.add(new SiteDiff(site, diff));
			}
		}
		this.writer.write(changed, nameOf, now);
		this.plans.note(after, now);
		this.plans.noteSame(same, now);
		changed.stream().filter((site) -> site.diff().visible()).forEach((site) -> announce(site, now));
		return diffs;
	}

	private PlanDiff compare(SiteInputs inputs, SitePlanner.Planned planned, Function<Explanation, UUID> nameOf) {
		Site site = inputs.site();
		Set<PlantingId> present = inputs.plantings().stream().map(Planting::id).collect(Collectors.toSet());
		if (!planned.plan().gaps().equals(this.gaps.of(site.id()))) {
			this.gaps.replace(site.id(), planned.plan().gaps());
		}
		return PlanDiff.between(this.tasks.stored(site.id()), planned.plan(), present, inputs.today(), nameOf);
	}

	/** Names of explanations, each worked out once: the tasks of a rule share one. */
	private Function<Explanation, UUID> remembering() {
		Map<Explanation, UUID> names = new IdentityHashMap<>();
		return (explanation) -> names.computeIfAbsent(explanation, this.explanations::nameOf);
	}

	private void announce(SiteDiff site, Instant now) {
		PlanDiff diff = site.diff();
		this.events.publishEvent(new PlanChanged(site.site().id().value(), site.site().owner().value(),
				diff.added().size(), diff.changed().size() + diff.reopened().size(), diff.withdrawn().size(), now));
	}

}
