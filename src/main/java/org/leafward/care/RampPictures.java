package org.leafward.care;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leafward.amounts.light.HardeningRamp;
import org.leafward.care.core.amount.PlantLight;
import org.leafward.care.core.plan.RampDay;
import org.leafward.care.core.plan.Subject;
import org.leafward.care.core.rule.Ramp;
import org.leafward.care.core.rule.RampLight;
import org.leafward.care.core.rule.Rule;
import org.leafward.care.store.TaskTable;
import org.leafward.pages.LightRampPicture;
import org.leafward.plants.Catalogue;
import org.leafward.plants.Species;
import org.leafward.register.Beds;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.springframework.stereotype.Service;

/** The light by day of the ramp that a task belongs to. */
@Service
public class RampPictures {

	private final TaskTable tasks;

	private final RulePacks packs;

	private final Register register;

	private final Beds beds;

	private final Catalogue catalogue;

	RampPictures(TaskTable tasks, RulePacks packs, Register register, Beds beds, Catalogue catalogue) {
		this.tasks = tasks;
		this.packs = packs;
		this.register = register;
		this.beds = beds;
		this.catalogue = catalogue;
	}

	/**
	 * The picture of a ramp, with what was told and held so far.
	 * @param task one of its days
	 * @return empty for all tasks but days of a ramp that goes out into the light
	 */
	public Optional<LightRampPicture> of(CareTask task) {
		PlantingId id = task.planting();
		if (task.kind() != TaskKind.RAMP_DAY || id == null) {
			return Optional.empty();
		}
		List<RampDay> days = this.tasks.rampDays(task.site(), id, task.rule(), task.season());
		return ramp(task, id, days).map((ramp) -> picture(ramp, days)).filter(LightRampPicture::drawable);
	}

	private Optional<HardeningRamp> ramp(CareTask task, PlantingId id, List<RampDay> days) {
		Ramp ramp = this.packs.find(task.rule())
			.map(Rule::timing)
			.filter(Ramp.class::isInstance)
			.map(Ramp.class::cast)
			.orElse(null);
		if (ramp == null || days.isEmpty()) {
			return Optional.empty();
		}
		RampLight light = ramp.light();
		Planting planting = this.register.find(id).orElse(null);
		Site site = this.register.find(task.site()).orElse(null);
		Species species = (planting != null) ? this.catalogue.find(planting.species()).orElse(null) : null;
		if (light == null || site == null || planting == null || species == null) {
			return Optional.empty();
		}
		RampDay first = days.get(0);
		return new PlantLight(this.beds.with(site)).ramp(light, Subject.of(planting, species),
				first.day().minusDays(first.number() - 1L), ramp.days());
	}

	private static LightRampPicture picture(HardeningRamp ramp, List<RampDay> days) {
		double present = ramp.basis().presentMoles();
		return new LightRampPicture("light", present,
				days.stream()
					.filter((day) -> day.step() <= ramp.basis().steps())
					.map((day) -> day(ramp, day, present))
					.toList());
	}

	private static LightRampPicture.Day day(HardeningRamp ramp, RampDay day, double present) {
		org.leafward.amounts.light.RampDay step = ramp.on(day.day(), day.step());
		@Nullable String held = day.held() ? "Kept in" : null;
		return new LightRampPicture.Day(day.day(),
				day.held() ? Math.min(present, step.siteMoles()) : step.targetMoles(), step.siteMoles(),
				day.held() ? "Kept in; step %d waits".formatted(day.step()) : step.words(), held);
	}

}
